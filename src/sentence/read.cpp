// One typed line: read silently, and explained if it could not be read.
#include <utility>

#include "sentence/explain.h"
#include "sentence/prepare.h"
#include "sentence/reader.h"

namespace sentence {

Read read(std::string_view text, const Reading& reading) {
  Read result;
  result.wrong = faults_of_bytes(text);
  if (!result.wrong.empty()) return result;
  Cursor cursor(text, end_of_language(text), reading);
  cursor.spans_to(&result.spans);
  logbook::Said said;
  if (!read_sentence(cursor, MissingDay::is_today, said)) {
    result.spans.clear();
    result.wrong = explain(text, reading);
    return result;
  }
  constexpr std::size_t surely_short = 1000;
  if (text.size() > surely_short && say(said).size() > most_bytes) {
    result.spans.clear();
    result.wrong = {too_long(text)};
    return result;
  }
  result.said = std::move(said);
  return result;
}

}  // namespace sentence
