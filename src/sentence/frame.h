// sentence/frame.h: the record line: frame and sentence as bytes. Its form can never change
// (docs/record.md). Digests are worked out by store; here stands what is digested.
#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <variant>

#include "logbook/entry.h"
#include "sentence/frame_lists.h"

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
// What a signature is over: "timeworn signature", record id, all fields before it but about, and
// the body digest, each followed by a line feed. refers holds the digests of what is signed.
std::string signature_preimage(const logbook::Frame& frame, const logbook::RecordId& record,
                               const logbook::Digest& body);

// The name people see: the first five characters, more where two writers share them.
std::string short_writer(const logbook::WriterId& writer, std::size_t characters = 5);
// K7QXM-123.
std::string say_entry(const logbook::EntryId& entry, std::size_t characters = 5);
// Such a name as people copy it from paper: small letters count as capital ones, and O, I and L,
// which no name holds, as 0 and 1. Absent if it is none.
std::optional<logbook::EntryName> read_entry_name(std::string_view typed);

}  // namespace sentence
