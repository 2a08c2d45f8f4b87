#include "words/workings.h"

#include "words/dues.h"
#include "words/figures.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/words.h"

namespace words {

namespace {

using reckon::Term;
using reckon::TermKind;

std::string host_text(const Term& term) {
  if (!term.host) return {};
  std::string text = " on " + thing_name(*term.host);
  if (term.place) text += ", " + term.place->text + ",";
  return text;
}

std::string span_text(const Term& term) {
  std::string text;
  if (term.from) text += " from " + quantity::say_long(*term.from);
  if (term.to) text += " to " + quantity::say_long(*term.to);
  return text;
}

std::string on_day_text(const Term& term) {
  const auto day = term.from ? term.from : term.to;
  return day ? " on " + quantity::say_long(*day) : std::string();
}

std::string what_text(const Term& term) {
  switch (term.kind) {
    case TermKind::brought_forward:
      return "brought forward" + on_day_text(term);
    case TermKind::had_when_fitted:
      return "it had when fitted" + host_text(term) + on_day_text(term);
    case TermKind::used_in_stay:
      return "used" + host_text(term) + span_text(term);
    case TermKind::flown:
      return "flown" + span_text(term);
    case TermKind::stated:
      return "total stated" + on_day_text(term);
    case TermKind::limit:
      return "limit";
    case TermKind::at_done:
      return "total when last done" + on_day_text(term);
    case TermKind::excess:
      return "flown past the last due point";
    case TermKind::missing:
      return "missing hours, counted" + span_text(term);
  }
  return {};
}

std::string entries_of(const Term& term) {
  if (!term.first && !term.last) return {};
  const std::string first = entry_name(term.first ? *term.first : *term.last);
  const std::string last = entry_name(term.last ? *term.last : *term.first);
  return first == last ? " (" + first + ")" : fill(" ({} to {})", {first, last});
}

}  // namespace

std::string term_text(const Term& term) {
  std::string text = what_text(term);
  if (text.ends_with(',')) text.pop_back();
  if (term.flights > 0) text += ", " + counted(term.flights, "flight", "flights");
  if (!term.source.empty()) text += ", " + in_quotes(term.source);
  return text + entries_of(term);
}

std::string limit_term_text(const reckon::Item& item, const reckon::Side& side) {
  std::string text = item.task != nullptr ? "interval of " + item_name(item) : item_name(item);
  if (item.limit != nullptr && item.limit->on_model) {
    text += " on model " + written_name(item.limit->on_model->text);
  }
  if (side.after) {
    text += " after " + quantity::say_long(*side.after);
  } else if (side.since) {
    text += " " + std::string(basis_text(*side.since));
  }
  if (!item.source.empty()) text += ", " + in_quotes(item.source);
  return text + " (" + entry_name(item.entry) + ")";
}

std::string part_amount_text(const reckon::PartUsed& part, const reckon::Clock& clock) {
  const std::string whole = figure_exact(part.whole, clock);
  if (part.term.figure.is_unknown()) return fill("? of {}", {whole});
  return fill("{} of {}", {figure_exact(part.term.figure, clock), whole});
}

std::string part_text(const reckon::PartUsed& part) {
  const bool is_a_sum = part.term.kind == TermKind::stated && !part.term.first;
  if (is_a_sum) return "used; on which model is not told apart, so the smallest limit counts";
  const std::string text = term_text(part.term);
  if (part.term.kind == TermKind::used_in_stay) return text;
  return fill("{}; on which model is not on record, so the smallest limit counts", {text});
}

std::string calendar_sentence(const reckon::Item& item, const reckon::Side& side) {
  if (!side.last_legal) return fill("By the calendar: not known, since {}.", {lack_text(side)});
  const std::string left = left_text(side);
  const std::string tail = side.left && side.left->raw() < 0 ? left : left + " left";
  if (!side.basis_day) {
    return fill("By the calendar: the last legal day is {}, as stated; {}.",
                {due_text(side), tail});
  }
  const std::string from = quantity::say_long(*side.basis_day);
  const std::string because =
      item.last_done ? fill(" ({})", {entry_name(*item.last_done)}) : std::string();
  return fill("By the calendar: {} from {}{}; the last legal day is {}, {}.",
              {limit_text(side), from, because, due_text(side), tail});
}

}  // namespace words
