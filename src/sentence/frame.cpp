#include "sentence/frame.h"

#include <algorithm>
#include <array>

#include "quantity/expect.h"
#include "quantity/figure.h"
#include "sentence/frame_lists.h"
#include "sentence/sorts/entry_shape.h"
#include "text/binary.h"
#include "text/pieces.h"
#include "text/unicode.h"

namespace sentence {
namespace {

constexpr std::size_t field_count = 7;
constexpr std::string_view bar = " | ";
constexpr std::string_view withheld_word = "withheld ";

std::string first_field(const logbook::Frame& frame) {
  return say_writer(frame.writer) + '-' + std::to_string(frame.number);
}

std::string or_dash(const std::string& text) { return text.empty() ? "-" : text; }

std::string each_on_its_line(const std::vector<std::string>& lines) {
  return text::join(lines, "\n") + '\n';
}

// What stands behind the bar: UTF-8 in one line. Which characters a sentence may hold beyond that
// is the language's to say, since lines of newer languages are kept and passed on.
bool is_one_line(std::string_view words) {
  const bool has_low = std::any_of(words.begin(), words.end(), [](char c) {
    const auto byte = static_cast<unsigned char>(c);
    return byte < 0x20 || byte == 0x7F;
  });
  return !words.empty() && !has_low && text::is_valid_utf8(words);
}

bool read_first(std::string_view text, logbook::Frame& frame) {
  const std::optional<Numbered> numbered = read_numbered(text);
  if (!numbered || !numbered->rest.empty()) return false;
  frame.writer = numbered->writer;
  frame.number = numbered->number;
  return true;
}

bool read_written(std::string_view text, logbook::Frame& frame) {
  const auto instant = quantity::read_instant(text);
  if (!instant.is_read() || say(instant.value()) != text) return false;
  frame.written = instant.value();
  return true;
}

bool read_language(std::string_view text, logbook::Frame& frame) {
  const std::optional<std::int64_t> language = read_number(text);
  if (!language) return false;
  frame.language = *language;
  return true;
}

template <class List>
bool take(std::optional<List> list, List& into) {
  if (!list) return false;
  into = *std::move(list);
  return true;
}

bool read_about_field(std::string_view text, logbook::Frame& frame) {
  return take(read_about(text), frame.about);
}

bool read_knows_field(std::string_view text, logbook::Frame& frame) {
  return take(read_knows(text), frame.knows);
}

bool read_refers_field(std::string_view text, logbook::Frame& frame) {
  return take(read_refers(text), frame.refers);
}

bool read_signature_field(std::string_view text, logbook::Frame& frame) {
  if (text == "-") return true;
  if (!read_signature(text)) return false;
  frame.signature = text;
  return true;
}

struct Field {
  std::string_view name;
  bool (*read)(std::string_view, logbook::Frame&);
};

constexpr std::array<Field, field_count> fields = {
    Field{"entry", read_first},
    Field{"written", read_written},
    Field{"language", read_language},
    Field{"about", read_about_field},
    Field{"knows", read_knows_field},
    Field{"refers", read_refers_field},
    Field{"signature", read_signature_field},
};

BadLine bad(std::string_view field, std::string_view read) {
  return {std::string(field), std::string(read)};
}

}  // namespace

std::string say_frame(const logbook::Frame& frame) {
  EXPECT(frame.number >= 1 && frame.language >= 1);
  return text::join({first_field(frame), say(frame.written), std::to_string(frame.language),
                     say_about(frame.about), say_knows(frame.knows), say_refers(frame.refers),
                     or_dash(frame.signature)},
                    " ");
}

std::string say_line(const logbook::Frame& frame, std::string_view sentence) {
  return say_frame(frame).append(bar).append(sentence);
}

std::string say_withheld(const logbook::Digest& body) {
  return std::string(withheld_word) + say_digest(body);
}

std::optional<logbook::Digest> read_withheld(std::string_view text) {
  if (!text.starts_with(withheld_word)) return std::nullopt;
  return read_digest(text.substr(withheld_word.size()));
}

std::variant<ReadLine, BadLine> read_line(std::string_view line) {
  const std::size_t end = line.find(bar);
  if (end == line.npos) return bad("bar", line);
  const std::vector<std::string_view> read = text::split(line.substr(0, end), ' ');
  if (read.size() != field_count) return bad("fields", line.substr(0, end));

  ReadLine result;
  for (std::size_t i = 0; i < field_count; ++i) {
    if (!fields[i].read(read[i], result.frame)) return bad(fields[i].name, read[i]);
  }
  const std::string_view sentence = line.substr(end + bar.size());
  if (!is_one_line(sentence)) return bad("sentence", sentence);
  result.withheld = read_withheld(sentence);
  if (!result.withheld) result.sentence = sentence;
  // A withheld body takes what it was about with it.
  if (result.withheld && !result.frame.about.empty()) return bad("about", read[3]);
  return result;
}

std::string body_preimage(const logbook::Frame& frame, std::string_view sentence) {
  return each_on_its_line({say_about(frame.about), std::string(sentence)});
}

std::string entry_preimage(const logbook::Frame& frame, const EntryPreimage& parts) {
  return each_on_its_line(
      {"timeworn entry", say_record_id(parts.record), first_field(frame), say(frame.written),
       std::to_string(frame.language), say_knows(frame.knows), say_refers(frame.refers),
       or_dash(frame.signature), say_digest(parts.body), say_digest(parts.previous)});
}

std::string signature_preimage(const logbook::Frame& frame, const logbook::RecordId& record,
                               const logbook::Digest& body) {
  return each_on_its_line({"timeworn signature", say_record_id(record), first_field(frame),
                           say(frame.written), std::to_string(frame.language),
                           say_knows(frame.knows), say_refers(frame.refers), say_digest(body)});
}

std::string short_writer(const logbook::WriterId& writer, std::size_t characters) {
  return say_writer(writer).substr(0, characters);
}

std::string say_entry(const logbook::EntryId& entry, std::size_t characters) {
  return short_writer(entry.writer, characters) + '-' + std::to_string(entry.number);
}

std::optional<logbook::EntryName> read_entry_name(std::string_view typed) {
  std::string name = text::upper(typed);
  std::replace(name.begin(), name.end(), 'O', '0');
  std::replace_if(
      name.begin(), name.end(), [](char c) { return c == 'I' || c == 'L'; }, '1');
  if (!has_entry_shape(name)) return std::nullopt;
  const std::size_t hyphen = name.rfind('-');
  return logbook::EntryName{name.substr(0, hyphen),
                            quantity::value_of_digits(std::string_view(name).substr(hyphen + 1))};
}

}  // namespace sentence
