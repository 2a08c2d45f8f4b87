#include "command/passphrase.h"

#include <fcntl.h>
#include <termios.h>
#include <unistd.h>

#include <cerrno>
#include <ostream>
#include <utility>

#include "seal/signing.h"
#include "text/unicode.h"

namespace command {

namespace {

constexpr std::size_t least = 8;  // characters
// Bytes: so that no growing leaves a copy behind; a longer passphrase is none.
constexpr std::size_t most = 1024;
constexpr char interrupt = '\x03';  // Ctrl-C

// While it lives, what is typed is not shown. Ctrl-C ends the line instead of the program, so that
// the terminal is put right in any case.
class Unseen {
 public:
  Unseen() {
    is_terminal_ = ::tcgetattr(STDIN_FILENO, &before_) == 0;
    if (!is_terminal_) return;
    termios unseen = before_;
    unseen.c_lflag &= ~static_cast<tcflag_t>(ECHO | ISIG);
    unseen.c_cc[VEOL] = static_cast<cc_t>(interrupt);
    ::tcsetattr(STDIN_FILENO, TCSAFLUSH, &unseen);
  }
  ~Unseen() {
    if (is_terminal_) ::tcsetattr(STDIN_FILENO, TCSAFLUSH, &before_);
  }
  Unseen(const Unseen&) = delete;
  Unseen& operator=(const Unseen&) = delete;

 private:
  termios before_{};
  bool is_terminal_ = false;
};

// The next byte, straight from the descriptor, so that no buffer keeps it.
std::optional<char> next_byte(int descriptor) {
  char byte = 0;
  ssize_t size = 0;
  do {
    size = ::read(descriptor, &byte, 1);
  } while (size < 0 && errno == EINTR);
  return size == 1 ? std::optional(byte) : std::nullopt;
}

// One line from the terminal. False if it was given up.
bool read_unseen(std::string& words) {
  while (const auto byte = next_byte(STDIN_FILENO)) {
    if (*byte == '\n') return true;
    if (*byte == interrupt || words.size() == most) return false;
    words += *byte;
  }
  return false;
}

AskedPassphrase ask_at_terminal(const std::string& question, World& world) {
  Passphrase passphrase;
  tell(*world.err, question + " ");
  world.err->flush();
  bool is_given = false;
  {
    const Unseen unseen;
    is_given = read_unseen(passphrase.words);
  }
  *world.err << "\n";
  if (is_given) return passphrase;
  return NoPassphrase{"No passphrase was given. Nothing was saved.", typed_wrongly};
}

// The first line; false if it is empty or too long.
bool take_line(int descriptor, std::string& words) {
  while (const auto byte = next_byte(descriptor)) {
    if (*byte == '\n') break;
    if (words.size() == most) return false;
    words += *byte;
  }
  if (words.ends_with('\r')) words.pop_back();
  return !words.empty();
}

AskedPassphrase read_from(const std::string& file) {
  Passphrase passphrase;
  if (file == "-") {
    if (take_line(STDIN_FILENO, passphrase.words)) return passphrase;
    return NoPassphrase{"Standard input holds no passphrase. Nothing was saved.", typed_wrongly};
  }
  const int descriptor = ::open(file.c_str(), O_RDONLY | O_CLOEXEC);
  if (descriptor < 0) {
    return NoPassphrase{"The file " + file + " cannot be read. Nothing was saved.", no_such};
  }
  const bool is_taken = take_line(descriptor, passphrase.words);
  ::close(descriptor);
  if (is_taken) return passphrase;
  return NoPassphrase{"The first line of " + file + " is no passphrase. Nothing was saved.",
                      typed_wrongly};
}

}  // namespace

Passphrase::Passphrase() { words.reserve(most); }
Passphrase::Passphrase(Passphrase&& other) noexcept = default;
Passphrase& Passphrase::operator=(Passphrase&& other) noexcept {
  std::swap(words, other.words);
  return *this;
}
Passphrase::~Passphrase() { seal::wipe(words); }

AskedPassphrase ask_passphrase(const std::string& question, const Typed& typed, World& world) {
  if (const auto file = typed.text("--passphrase-file")) return read_from(*file);
  if (world.can_ask) return ask_at_terminal(question, world);
  return NoPassphrase{
      "The passphrase is asked for at a terminal, or read with --passphrase-file FILE. Nothing "
      "was saved.",
      typed_wrongly};
}

AskedPassphrase ask_new_passphrase(const std::string& question, const Typed& typed, World& world) {
  AskedPassphrase asked = ask_passphrase(question, typed, world);
  auto* const first = std::get_if<Passphrase>(&asked);
  if (first == nullptr) return asked;
  if (!text::is_valid_utf8(first->words)) {
    return NoPassphrase{"A passphrase is text in UTF-8, and this is not. Nothing was saved.",
                        typed_wrongly};
  }
  if (text::characters(first->words).size() < least) {
    return NoPassphrase{"A passphrase has 8 characters at least. Nothing was saved.",
                        typed_wrongly};
  }
  if (typed.has("--passphrase-file")) return asked;
  const AskedPassphrase again = ask_passphrase("The same again:", typed, world);
  const auto* const second = std::get_if<Passphrase>(&again);
  if (second != nullptr && second->words == first->words) return asked;
  return NoPassphrase{"The two passphrases differ. Nothing was saved.", typed_wrongly};
}

}  // namespace command
