#include "store/mark.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/file.h>
#include <unistd.h>

#include <array>
#include <cerrno>

#include "quantity/figure.h"
#include "sentence/frame.h"
#include "store/file.h"
#include "store/trouble.h"

namespace store {
namespace {

using logbook::TroubleKind;

constexpr std::string_view title = "timeworn mark\n";
constexpr std::size_t writer_size = 26;
constexpr std::size_t number_size = 18;
constexpr std::size_t digest_size = 64;
constexpr std::size_t mark_size = title.size() + writer_size + number_size + digest_size + 3;

constexpr int patience_milliseconds = 5000;
constexpr int longest_pause_milliseconds = 10;

// A descriptor that is closed at the end of its scope.
class Opened {
 public:
  Opened(const std::string& path, int flags)
      : descriptor_(::open(path.c_str(), flags | O_CLOEXEC, 0600)) {}
  ~Opened() {
    if (descriptor_ >= 0) ::close(descriptor_);
  }
  Opened(const Opened&) = delete;
  Opened& operator=(const Opened&) = delete;
  int descriptor() const { return descriptor_; }

 private:
  int descriptor_;
};

// Always of the same length, so that writing it over the old one touches one block of the disk.
std::string say(const Mark& mark) {
  return std::string(title) + sentence::say_writer(mark.writer) + '\n' +
         quantity::say_digits(mark.number, number_size) + '\n' + sentence::say_digest(mark.digest) +
         '\n';
}

std::optional<Mark> read_mark(std::string_view text) {
  if (text.size() != mark_size || !text.starts_with(title)) return std::nullopt;
  const std::string_view number = text.substr(title.size() + writer_size + 1, number_size);
  const auto writer = sentence::read_writer(text.substr(title.size(), writer_size));
  const auto digest = sentence::read_digest(text.substr(mark_size - digest_size - 1, digest_size));
  if (!writer || !digest || !quantity::is_all_digits(number)) return std::nullopt;
  const Mark mark{*writer, quantity::value_of_digits(number), *digest};
  return say(mark) == text ? std::optional(mark) : std::nullopt;
}

// True when it is held; false after others held it all the time.
bool lock_alone(int descriptor) {
  int waited = 0;
  for (int pause = 1; ::flock(descriptor, LOCK_EX | LOCK_NB) != 0;) {
    if (errno != EWOULDBLOCK && errno != EINTR) return false;
    if (waited >= patience_milliseconds) return false;
    ::poll(nullptr, 0, pause);
    waited += pause;
    pause = pause < longest_pause_milliseconds ? pause + 1 : pause;
  }
  return true;
}

int locked_file(const std::string& path) {
  const int descriptor = ::open(path.c_str(), O_RDWR | O_CREAT | O_CLOEXEC, 0600);
  if (descriptor < 0) fail(TroubleKind::no_place_for_mark, path, errno);
  if (lock_alone(descriptor)) return descriptor;
  const int error = errno;
  ::close(descriptor);
  if (error != EWOULDBLOCK && error != EINTR) fail(TroubleKind::no_place_for_mark, path, error);
  fail(TroubleKind::in_use, path, error);
}

std::string stem_in(const std::string& state_folder, const logbook::RecordId& record) {
  return state_folder + '/' + sentence::say_record_id(record);
}

std::string mark_file(const std::string& stem, const logbook::WriterId& writer) {
  return stem + '-' + sentence::say_writer(writer) + ".mark";
}

std::optional<Mark> read_mark_in(const std::string& path, const logbook::WriterId& writer) {
  const Opened file(path, O_RDONLY);
  if (file.descriptor() < 0) return std::nullopt;
  std::array<char, mark_size + 1> bytes{};
  const ssize_t size = ::read(file.descriptor(), bytes.data(), bytes.size());
  if (size < 0) return std::nullopt;
  const std::optional<Mark> mark = read_mark({bytes.data(), static_cast<std::size_t>(size)});
  return mark && mark->writer == writer ? mark : std::nullopt;
}

// False if not all of it could be written; errno tells why.
bool write_whole(int descriptor, std::string_view text) {
  off_t at = 0;
  while (!text.empty()) {
    const ssize_t written = ::pwrite(descriptor, text.data(), text.size(), at);
    if (written < 0 && errno == EINTR) continue;
    if (written <= 0) return false;
    at += written;
    text.remove_prefix(static_cast<std::size_t>(written));
  }
  return true;
}

std::string made(const std::string& folder) {
  try {
    make_folder(folder);
  } catch (const Trouble& trouble) {
    throw Trouble({TroubleKind::no_place_for_mark, folder, trouble.what().detail});
  }
  return folder;
}

}  // namespace

std::optional<Mark> glance_at_mark(const std::string& state_folder, const logbook::RecordId& record,
                                   const logbook::WriterId& writer) {
  return read_mark_in(mark_file(stem_in(state_folder, record), writer), writer);
}

Marks::Marks(const std::string& state_folder, const logbook::RecordId& record)
    : stem_(stem_in(made(state_folder), record)), lock_(locked_file(stem_ + ".lock")) {}

Marks::~Marks() { ::close(lock_); }

std::string Marks::path_of(const logbook::WriterId& writer) const {
  return mark_file(stem_, writer);
}

std::optional<Mark> Marks::read(const logbook::WriterId& writer) const {
  return read_mark_in(path_of(writer), writer);
}

void Marks::write(const Mark& mark) const {
  const std::string path = path_of(mark.writer);
  const Opened file(path, O_WRONLY | O_CREAT);
  const std::string text = say(mark);
  if (file.descriptor() < 0) fail(TroubleKind::no_place_for_mark, path, errno);
  if (!write_whole(file.descriptor(), text)) {
    const int error = errno;
    // Half a mark would tell of an entry that nobody wrote; without one the book counts as a copy.
    ::unlink(path.c_str());
    fail(TroubleKind::no_place_for_mark, path, error);
  }
  if (mark.number > 0) return;
  if (::fdatasync(file.descriptor()) != 0) fail(TroubleKind::no_place_for_mark, path, errno);
  make_durable(folder_of(path));
}

void Marks::remove(const logbook::WriterId& writer) const noexcept {
  ::unlink(path_of(writer).c_str());
}

}  // namespace store
