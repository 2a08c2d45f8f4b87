#include "sentence/sorts/times.h"

#include <utility>

#include "quantity/figure.h"
#include "sentence/sorts/figures.h"
#include "text/pieces.h"

namespace sentence {
namespace {

// The letters, digits and marks of a day, time or instant, from the cursor on.
std::string_view take_run(Cursor& cursor, std::string_view marks) {
  const std::size_t start = cursor.skip_blanks();
  const std::string_view line = cursor.text().substr(0, cursor.end());
  std::size_t i = start;
  while (i < line.size()) {
    const char c = line[i];
    const bool is_letter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
    if (!is_letter && !quantity::is_digit(c) && marks.find(c) == std::string_view::npos) break;
    ++i;
  }
  while (i > start && line[i - 1] == '.') --i;
  cursor.go_to(i);
  return line.substr(start, i - start);
}

bool is_short_number(std::string_view text) {
  return quantity::is_all_digits(text) && text.size() <= 2;
}

bool hand_over_day(Cursor& cursor, std::string_view typed_text,
                   const quantity::Typed<quantity::Day>& typed, quantity::Day& day) {
  return is_figure(typed) && hand_over(cursor, typed_text, typed, day);
}

bool read_day_word(Cursor& cursor, quantity::Day& day) {
  const std::string word = text::upper(take_run(cursor, ""));
  const std::optional<quantity::Day> today = cursor.reading().today;
  if (!today || (word != "TODAY" && word != "YESTERDAY")) return false;
  day = word == "TODAY" ? *today : quantity::day_before(*today);
  return true;
}

// 4 Mar 2026.
bool read_day_in_words(Cursor& cursor, quantity::Day& day) {
  const std::size_t start = cursor.at();
  const std::string_view number = take_run(cursor, "");
  if (!is_short_number(number)) return false;
  const std::string month(take_run(cursor, ""));
  const std::string_view year = take_run(cursor, "");
  const std::string_view all = cursor.text().substr(start, cursor.at() - start);
  const std::string words = std::string(number) + ' ' + month + ' ' + std::string(year);
  return hand_over_day(cursor, all, quantity::read_day(words), day);
}

template <class Value>
bool hand_over_run(Cursor& cursor, std::string_view run, const quantity::Typed<Value>& typed,
                   Value& value) {
  if (typed.is_read()) {
    value = typed.value();
    return true;
  }
  const bool is_figure = typed.misread().why != quantity::Misreading::not_a_number;
  return is_figure && refuse_figure(cursor, run, typed.misread());
}

bool refuse_without_offset(Cursor& cursor, std::string_view run) {
  Misreading misreading;
  misreading.fault = Fault::missing;
  misreading.to = static_cast<std::uint16_t>(cursor.at());
  misreading.from = static_cast<std::uint16_t>(cursor.at() - run.size());
  misreading.read = std::string(run);
  misreading.expected = {"a time with its offset such as 09:11-07:00 or 09:11Z"};
  return cursor.refuse(std::move(misreading));
}

}  // namespace

bool read_day(Cursor& cursor, quantity::Day& day) {
  const std::size_t start = cursor.skip_blanks();
  if (read_day_word(cursor, day)) return true;
  cursor.go_to(start);
  if (read_day_in_words(cursor, day)) return true;
  cursor.go_to(start);
  const std::string_view run = take_run(cursor, "-/.");
  return hand_over_day(cursor, run, quantity::read_day(run), day);
}

bool read_clock_time(Cursor& cursor, quantity::ClockTime& time) {
  const std::string_view run = take_run(cursor, ":+-");
  const bool is_time = run.find(':') != std::string_view::npos && quantity::is_digit(run.front());
  if (!is_time) return false;
  const bool has_offset = run.find_first_not_of("0123456789:") != std::string_view::npos;
  if (!has_offset) return refuse_without_offset(cursor, run);
  return hand_over_run(cursor, run, quantity::read_clock_time(run), time);
}

bool read_instant(Cursor& cursor, quantity::Instant& instant) {
  const std::string_view run = take_run(cursor, ":-");
  return hand_over_run(cursor, run, quantity::read_instant(text::upper(run)), instant);
}

bool read_quarter(Cursor& cursor, quantity::Quarter& quarter) {
  const std::string_view run = take_run(cursor, "");
  return hand_over_run(cursor, run, quantity::read_quarter(run), quarter);
}

void say_day(std::string& out, const quantity::Day& day) { out += quantity::say(day); }
void say_clock_time(std::string& out, const quantity::ClockTime& time) {
  out += quantity::say(time);
}
void say_instant(std::string& out, const quantity::Instant& instant) {
  out += quantity::say(instant);
}
void say_quarter(std::string& out, const quantity::Quarter& quarter) {
  out += quantity::say(quarter);
}

}  // namespace sentence
