// command/passphrase.h: asks for a passphrase: at a terminal without showing it, else from a file.
// Never from an option or the environment, where others could read it.
#pragma once

#include <string>
#include <variant>

#include "command/command.h"

namespace command {

// A secret that is wiped when it ends.
class Passphrase {
 public:
  Passphrase();
  Passphrase(Passphrase&& other) noexcept;
  Passphrase& operator=(Passphrase&& other) noexcept;
  Passphrase(const Passphrase&) = delete;
  Passphrase& operator=(const Passphrase&) = delete;
  ~Passphrase();

  std::string words;
};

inline constexpr Option passphrase_option{
    "--passphrase-file", "FILE|-",
    "the passphrase, in the first line of a file or of standard input"};

// Why there is none, as a sentence with its exit code.
struct NoPassphrase {
  std::string sentence;
  ExitCode code = typed_wrongly;
};
using AskedPassphrase = std::variant<Passphrase, NoPassphrase>;

// For an existing key.
AskedPassphrase ask_passphrase(const std::string& question, const Typed& typed, World& world);
// For a new key: long enough, and at a terminal typed twice.
AskedPassphrase ask_new_passphrase(const std::string& question, const Typed& typed, World& world);

}  // namespace command
