// How counts and periods are read and written.
#include "sentence/sorts/amounts.h"
#include "sentence/sorts/counters.h"
#include "text/pieces.h"

namespace sentence {
namespace {

struct PeriodWord {
  logbook::PeriodUnit unit;
  std::string_view plural;
  std::string_view singular;
};
constexpr std::array<PeriodWord, 4> period_words = {{
    {logbook::PeriodUnit::days, "days", "day"},
    {logbook::PeriodUnit::months, "months", "month"},
    {logbook::PeriodUnit::calendar_months, "calendar months", "calendar month"},
    {logbook::PeriodUnit::years, "years", "year"},
}};

// Either number of a word; only the plural is told as wanted.
template <class WordPair>
bool take_either(Cursor& cursor, const WordPair& pair) {
  return take_unit(cursor, {pair.plural, pair.singular});
}

const CounterWord* take_counter_word(Cursor& cursor) {
  for (const CounterWord& word : counter_words) {
    if (take_either(cursor, word)) return &word;
  }
  Trace* trace = cursor.trace();
  cursor.trace_to(nullptr);
  const CounterWord* found = nullptr;
  for (const CounterWord& word : typed_counter_words) {
    if (found == nullptr && take_either(cursor, word)) found = &word;
  }
  cursor.trace_to(trace);
  return found;
}

// A quoted counter that is one of the trade's own words is that counter.
logbook::Counter named_counter(const std::string& name) {
  for (const CounterWord& word : counter_words) {
    const bool is_it = text::upper(word.plural) == text::upper(name) ||
                       text::upper(word.singular) == text::upper(name);
    if (is_it) return {word.kind, {}};
  }
  return {logbook::CounterKind::own, name};
}

quantity::Typed<quantity::Cycles> amount_of(std::string_view figure,
                                            const logbook::Counter& counter) {
  return logbook::takes_fractions(counter) ? quantity::read_cycles(figure)
                                           : quantity::read_whole_count(figure);
}

}  // namespace

bool read_counter(Cursor& cursor, logbook::Counter& counter) {
  if (opens_quote(cursor.text(), cursor.skip_blanks())) {
    std::string name;
    if (!read_quoted_name(cursor, name)) return false;
    counter = named_counter(name);
    return true;
  }
  const CounterWord* word = take_counter_word(cursor);
  if (word == nullptr) return false;
  counter = {word->kind, {}};
  return true;
}

void say_counter(std::string& out, const logbook::Counter& counter) {
  for (const CounterWord& word : counter_words) {
    if (word.kind == counter.kind) out += word.plural;
  }
  if (counter.kind == logbook::CounterKind::own) say_quoted(out, counter.own_name);
}

bool read_count(Cursor& cursor, logbook::Count& count) {
  const std::string_view figure = cursor.take_signed_number();
  if (figure.empty() || !read_counter(cursor, count.counter)) return false;
  const auto typed = amount_of(figure, count.counter);
  if (!typed.is_read()) return refuse_figure(cursor, figure, typed.misread());
  count.amount = typed.value();
  return true;
}

void say_count(std::string& out, const logbook::Count& count) {
  out += quantity::say(count.amount);
  out += ' ';
  const std::size_t start = out.size();
  say_counter(out, count.counter);
  if (count.amount != quantity::whole_cycles(1)) return;
  for (const CounterWord& word : counter_words) {
    if (word.kind == count.counter.kind) out.replace(start, word.plural.size(), word.singular);
  }
}

namespace {

// Typed without a blank the stroke would pass for a part of the word: cycles/5000.
bool read_counter_before_stroke(Cursor& cursor, logbook::Counter& counter) {
  const std::size_t stroke = cursor.text().find('/', cursor.skip_blanks());
  if (stroke == std::string_view::npos || stroke >= cursor.end()) return false;
  Cursor before(cursor.text(), stroke, cursor.reading());
  before.go_to(cursor.at());
  if (!read_counter(before, counter) || !before.is_at_end()) return false;
  cursor.go_to(stroke);
  return true;
}

// It need not stand by itself.
bool take_stroke(Cursor& cursor) {
  const std::size_t at = cursor.skip_blanks();
  if (at < cursor.end() && cursor.text()[at] == '/') {
    cursor.go_to(at + 1);
    return true;
  }
  cursor.want(at, "/", "/");
  return false;
}

}  // namespace

bool read_part_of_life(Cursor& cursor, logbook::PartOfLife& part) {
  const std::size_t start = cursor.skip_blanks();
  if (!read_counter_before_stroke(cursor, part.counter)) {
    cursor.go_to(start);
    if (!read_counter(cursor, part.counter)) return false;
  }
  if (!take_stroke(cursor)) return false;
  cursor.skip_blanks();
  const std::string_view figure = cursor.take_number();
  if (figure.empty()) return false;
  const auto typed = amount_of(figure, part.counter);
  if (!hand_over(cursor, figure, typed, part.limit)) return false;
  const bool is_life = !part.limit.is_zero();
  return is_life || refuse_figure(cursor, figure, {quantity::Misreading::out_of_range, {}, {}});
}

void say_part_of_life(std::string& out, const logbook::PartOfLife& part) {
  say_counter(out, part.counter);
  out += " / ";
  out += quantity::say(part.limit);
}

bool read_period(Cursor& cursor, logbook::Period& period) {
  const std::string_view figure = cursor.take_number();
  if (figure.empty()) return false;
  for (const PeriodWord& word : period_words) {
    if (!take_either(cursor, word)) continue;
    const auto typed = quantity::read_period_number(figure);
    if (!typed.is_read()) return refuse_figure(cursor, figure, typed.misread());
    period = {typed.value(), word.unit};
    return true;
  }
  return false;
}

void say_period(std::string& out, const logbook::Period& period) {
  out += std::to_string(period.number);
  for (const PeriodWord& word : period_words) {
    if (word.unit != period.unit) continue;
    out += ' ';
    out += period.number == 1 ? word.singular : word.plural;
  }
}

}  // namespace sentence
