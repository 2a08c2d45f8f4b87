// command/enter.h: the spine of every writing command. Typed words become facts once; under the
// write lock they are checked against the record, appended, read back and committed; then the
// receipt.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "command/command.h"
#include "logbook/entry.h"
#include "seal/signing.h"
#include "sentence/sentence.h"

namespace command {

// One line as typed, with where it came from for messages ("flights.txt, line 12: ").
struct Line {
  std::string text;
  std::string where;
};

// What a line is turned into once the record is at hand: a correction needs the old sentence.
// Gives the fact, or a sentence that says why not.
struct Meant {
  sentence::Read read;
  std::string refusal;  // set: the line cannot be meant, whatever its words
  bool day_was_left_out = false;
};
using Meaning = Meant (*)(const Line& line, const std::vector<logbook::Entry>& entries,
                          const sentence::Reading& reading);

// The ordinary meaning: the line is a sentence.
Meant plain_meaning(const Line& line, const std::vector<logbook::Entry>& entries,
                    const sentence::Reading& reading);

// All lines or none. may_leave_out_the_day: typed by a person at a terminal or as an argument.
struct Entering {
  std::vector<Line> lines;
  bool may_leave_out_the_day = false;
  Meaning meaning = plain_meaning;
  std::optional<std::string> because;    // --because: accepts the doubts of this command
  const seal::SecretKey* key = nullptr;  // signs the one line, which says that it is signed
};
ExitCode enter(const Entering& entering, const Typed& typed, World& world);

// Said by every command that began a new writer, because the book is a copy or was restored.
inline constexpr std::string_view copy_notice =
    "This book is a copy or was restored: from here on its entries have a name of their own.";

// Names in the entries, for short forms and hints.
sentence::Known known_names(const std::vector<logbook::Entry>& entries);

}  // namespace command
