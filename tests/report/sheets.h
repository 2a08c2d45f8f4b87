#pragma once
// A sheet of 4 March 2026, and answers as text.

#include <boost/test/unit_test.hpp>
#include <string>

#include "document/render.h"
#include "report/sheet.h"
#include "words/items.h"
#include "words/told.h"

namespace report_test {

inline report::Sheet sheet() {
  report::Sheet sheet;
  sheet.as_of = words_test::day(2026, 3, 4);
  sheet.horizon = {{words_test::entry(1).writer, 130}};
  return sheet;
}

inline std::string text_of(const report::Answer& answer, std::size_t columns = 80) {
  return document::render(answer.document, document::Format::text, columns);
}

inline bool says(const report::Answer& answer, const std::string& words) {
  return text_of(answer, 400).find(words) != std::string::npos;
}

inline bool json_says(const report::Answer& answer, const std::string& words) {
  return answer.json.in_one_line().find(words) != std::string::npos;
}

// How often a text stands in another.
inline std::size_t times(const std::string& text, const std::string& words) {
  std::size_t number = 0;
  for (auto at = text.find(words); at != std::string::npos; at = text.find(words, at + 1)) ++number;
  return number;
}

inline void check_no_banned_word(const report::Answer& answer) {
  const std::string text = text_of(answer, 400);
  BOOST_TEST(words_test::banned_word_in(text).empty(), text);
}

}  // namespace report_test
