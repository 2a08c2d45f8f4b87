// store/trouble.h: what is thrown for everything that is wrong with the file or the disk.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <system_error>
#include <utility>
#include <variant>
#include <vector>

#include "logbook/derived.h"
#include "logbook/entry.h"
#include "logbook/trouble.h"

namespace store {

// Thrown for everything that is wrong with the file or the disk; caught only in main.
class Trouble {
 public:
  explicit Trouble(logbook::Trouble trouble) : trouble_(std::move(trouble)) {}
  const logbook::Trouble& what() const { return trouble_; }

 private:
  logbook::Trouble trouble_;
};

// Throws this kind of trouble with the path, in the system's own words for its error number.
[[noreturn]] inline void fail(logbook::TroubleKind kind, const std::string& path, int error) {
  throw Trouble({kind, path, std::generic_category().message(error)});
}

}  // namespace store
