// One typed line: read silently, and explained if it could not be read.
#include <utility>

#include "sentence/explain.h"
#include "sentence/prepare.h"
#include "sentence/reader.h"

namespace sentence {

namespace {

// The sentence without a word of explanation; no said if it could not be read.
Read read_silently(std::string_view text, const Reading& reading) {
  Read result;
  Cursor cursor(text, end_of_language(text), reading);
  cursor.spans_to(&result.spans);
  logbook::Said said;
  if (read_sentence(cursor, MissingDay::is_today, said)) result.said = std::move(said);
  return result;
}

bool has_canonical_size(std::string_view text, const logbook::Said& said) {
  constexpr std::size_t surely_short = 1000;
  return text.size() <= surely_short || say(said).size() <= most_bytes;
}

}  // namespace

Read read(std::string_view text, const Reading& reading) {
  std::vector<Misreading> wrong = faults_of_bytes(text);
  if (!wrong.empty()) return {std::nullopt, std::move(wrong), {}};
  // What can be read without the book is read so: it means the same in every book.
  Read result = read_silently(text, {reading.today, nullptr});
  if (!result.said && reading.known != nullptr) result = read_silently(text, reading);
  if (!result.said) return {std::nullopt, explain(text, reading), {}};
  if (!has_canonical_size(text, *result.said)) return {std::nullopt, {too_long(text)}, {}};
  return result;
}

}  // namespace sentence
