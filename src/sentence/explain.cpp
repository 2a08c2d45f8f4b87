#include "sentence/explain.h"

#include <algorithm>
#include <optional>
#include <utility>

#include "quantity/figure.h"
#include "sentence/explain_clauses.h"
#include "sentence/explain_head.h"
#include "sentence/prepare.h"
#include "sentence/sorts/times.h"

namespace sentence {
namespace {

// A word that was meant as a day, though it is none: 2026-3-4.
bool is_like_a_day(std::string_view word) {
  return word.find_first_not_of("0123456789-/.") == std::string_view::npos && !word.empty() &&
         quantity::is_digit(word.front()) && word.find_first_of("-/.") != std::string_view::npos;
}

Misreading day_missing(std::size_t at) {
  Misreading misreading = missing_at(at, {"date such as 2026-03-04"});
  misreading.fault = Fault::day_missing;
  return misreading;
}

// The faults of one sentence, found from left to right.
class Explained {
 public:
  Explained(const Cursor& cursor, MissingDay missing) : cursor_(cursor), missing_(missing) {
    cursor_.spans_to(nullptr);
  }

  std::vector<Misreading> faults() {
    explain_day();
    explain_time();
    const HeadFound found = explain_head(cursor_, wrong_);
    if (found.kind != nullptr) explain_clauses(cursor_, found, wrong_);
    return std::move(wrong_);
  }

 private:
  void explain_day() {
    Trace trace;
    cursor_.trace_to(&trace);
    quantity::Day day;
    const std::size_t start = cursor_.skip_blanks();
    if (read_value(cursor_, sort_of<quantity::Day>, &day)) return;
    const std::string_view word = cursor_.peek_word();
    if (trace.refused || is_like_a_day(word)) {
      wrong_.push_back(misreading_of(cursor_, trace));
      cursor_.go_to(trace.refused ? trace.refused->to : start + word.size());
    } else if (missing_ == MissingDay::is_wrong) {
      wrong_.push_back(day_missing(start));
    }
  }

  void explain_time() {
    Trace trace;
    cursor_.trace_to(&trace);
    logbook::Said said;
    const std::size_t start = cursor_.skip_blanks();
    if (read_time(cursor_, said)) return;
    wrong_.push_back(misreading_of(cursor_, trace));
    cursor_.go_to(start + cursor_.peek_word().size());
  }

  Cursor cursor_;
  MissingDay missing_;
  std::vector<Misreading> wrong_;
};

// The line was refused, so something is wrong even where nothing was found.
Misreading not_understood(Cursor cursor) {
  Misreading misreading;
  misreading.fault = Fault::unknown_kind;
  const std::size_t from = cursor.skip_blanks();
  misreading.from = static_cast<std::uint16_t>(from);
  misreading.to = static_cast<std::uint16_t>(cursor.end());
  misreading.read = std::string(cursor.text().substr(from, cursor.end() - from));
  return misreading;
}

}  // namespace

std::vector<Misreading> explain(std::string_view text, const Reading& reading) {
  const Cursor cursor(text, end_of_language(text), reading);
  const MissingDay missing = reading.today ? MissingDay::is_today : MissingDay::is_wrong;
  std::vector<Misreading> wrong = Explained(cursor, missing).faults();
  if (wrong.empty()) wrong.push_back(not_understood(cursor));
  std::stable_sort(wrong.begin(), wrong.end(),
                   [](const auto& a, const auto& b) { return a.from < b.from; });
  return wrong;
}

bool explain_inner(Cursor& cursor) {
  logbook::Said said;
  Cursor silent = cursor;
  silent.trace_to(nullptr);
  silent.spans_to(nullptr);
  if (read_inner_sentence(silent, said)) {
    cursor.go_to(silent.at());
    return true;
  }
  std::vector<Misreading> wrong = Explained(cursor, MissingDay::is_wrong).faults();
  if (wrong.empty()) wrong.push_back(not_understood(cursor));
  cursor.trace()->inner = std::move(wrong);
  return false;
}

Misreading too_long(std::string_view text) {
  Misreading misreading;
  misreading.fault = Fault::too_long;
  misreading.to = static_cast<std::uint16_t>(text.size());
  return misreading;
}

}  // namespace sentence
