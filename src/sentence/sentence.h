// sentence/sentence.h: between facts and canonical sentences. One reader and one writer, both made
// from the declarations in sentence/kinds. Laws: read(say(f)) is f; say(read(t)) is t for every
// canonical t. The reader is pure: what is known of the book only widens the short forms it takes.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "logbook/entry.h"
#include "logbook/fact.h"
#include "logbook/misreading.h"

namespace sentence {

// The version of the language that this program writes, and the newest it reads.
inline constexpr std::int64_t language = 1;

using logbook::Fault;
using logbook::Misreading;

// Where a clause stands in the text as typed, so that an objection can point at its words. The slot
// is the member's name in the declaration (hours, meters, landed …).
struct ClauseSpan {
  std::string_view slot;
  std::uint16_t from = 0;
  std::uint16_t to = 0;
};

struct Read {
  std::optional<logbook::Said> said;  // set exactly if wrong is empty
  std::vector<Misreading> wrong;      // all faults of the line
  std::vector<ClauseSpan> spans;
};

// Names in the book, for short forms and hints only.
struct Known {
  std::vector<logbook::Thing> things;
  std::vector<std::pair<logbook::TaskClass, logbook::TaskName>> tasks;
  std::vector<logbook::ModelName> models;
  std::vector<logbook::PartNumber> part_numbers;
  std::vector<logbook::PersonName> people;
};

struct Reading {
  std::optional<quantity::Day> today;  // absent: a missing day is a misreading
  const Known* known = nullptr;        // absent: canonical subjects only
};

Read read(std::string_view text, const Reading& reading);
// The clauses of a correction, without day and subject: what was said before, with these clauses in
// the place of its own. A repeated clause replaces the one with its key (counter and place, meter).
Read amend(std::string_view clauses, const logbook::Said& old, const Reading& reading);
// The canonical sentence, with its final point. Never fails.
std::string say(const logbook::Said& said);

// Everything the sentence touches, sorted, for the frame's field "about".
std::vector<logbook::About> about(const logbook::Said& said);
// The entries that the sentence names, in its order, then those inside its range.
std::vector<logbook::EntryName> named_entries(const logbook::Said& said);
// The name of the kind ("flew"), stable for ever.
std::string_view kind_name(const logbook::Fact& fact);

// Made from the declarations, for docs/record.md, help and tests.
struct KindText {
  std::string name;
  std::string purpose;
  std::vector<std::string> examples;  // canonical
  std::vector<std::string> clauses;   // "took off {took_off}": "left the surface"
};
std::vector<KindText> kinds();
std::string ebnf();

}  // namespace sentence
