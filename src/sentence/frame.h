// sentence/frame.h: the record line: frame and sentence as bytes. Its form can never change
// (docs/record.md). Digests are worked out by store; here stands what is digested.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "logbook/entry.h"

namespace sentence {

// The fields before the bar, in their order, separated by one blank, "-" when empty.
std::string say_frame(const logbook::Frame& frame);
// One record line without its line feed: frame, " | ", sentence.
std::string say_line(const logbook::Frame& frame, std::string_view sentence);

// A body may be withheld from a copy: its digest stands in the sentence's place.
struct ReadLine {
  logbook::Frame frame;
  std::string sentence;                     // empty when withheld
  std::optional<logbook::Digest> withheld;  // the body digest
};
// What is wrong with a line, as data: which field, and what was read.
struct BadLine {
  std::string field;
  std::string read;
};
std::variant<ReadLine, BadLine> read_line(std::string_view line);
// What stands in the place of a withheld sentence: "withheld " and the body digest.
std::string say_withheld(const logbook::Digest& body);
// The body digest, if the text stands in the place of a withheld sentence. No sentence begins so.
std::optional<logbook::Digest> read_withheld(std::string_view text);

// What is digested: about and the sentence, each followed by a line feed.
std::string body_preimage(const logbook::Frame& frame, std::string_view sentence);
// "timeworn entry", record id, all fields but about, body digest, previous digest, each followed by
// a line feed.
struct EntryPreimage {
  logbook::RecordId record;
  logbook::Digest body;
  logbook::Digest previous;  // 64 zeros before number 1
};
std::string entry_preimage(const logbook::Frame& frame, const EntryPreimage& parts);

std::string say_writer(const logbook::WriterId& writer);  // 26 characters
std::optional<logbook::WriterId> read_writer(std::string_view text);
std::string say_record_id(const logbook::RecordId& record);  // 26 characters, likewise
std::optional<logbook::RecordId> read_record_id(std::string_view text);
// The name people see: the first five characters, more where two writers share them.
std::string short_writer(const logbook::WriterId& writer, std::size_t characters = 5);
// K7QXM-123.
std::string say_entry(const logbook::EntryId& entry, std::size_t characters = 5);
// 64 lower-case hexadecimal digits.
std::string say_digest(const logbook::Digest& digest);
std::optional<logbook::Digest> read_digest(std::string_view text);
// Lists of the frame: joined by commas, "-" when empty. They are in the order of the types' own
// comparison without a double; the readers refuse every other spelling.
std::string say_knows(const std::vector<logbook::Knows>& knows);
std::optional<std::vector<logbook::Knows>> read_knows(std::string_view text);
std::string say_refers(const std::vector<logbook::EntryId>& refers);
std::optional<std::vector<logbook::EntryId>> read_refers(std::string_view text);
std::string say_about(const std::vector<logbook::About>& about);
std::optional<std::vector<logbook::About>> read_about(std::string_view text);

}  // namespace sentence
