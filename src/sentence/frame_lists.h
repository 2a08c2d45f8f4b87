// sentence/frame_lists.h: the pieces that a record line's first field and its lists are made of.
#pragma once

#include <cstdint>
#include <optional>
#include <string_view>

#include "logbook/entry.h"

namespace sentence {

// A whole number from 1 on, of at most 18 digits, without zeros in front.
std::optional<std::int64_t> read_number(std::string_view text);

// The beginning "writer-number"; rest is what follows the next hyphen, empty if none does.
struct Numbered {
  logbook::WriterId writer;
  std::int64_t number = 0;
  std::string_view rest;
};
std::optional<Numbered> read_numbered(std::string_view text);

}  // namespace sentence
