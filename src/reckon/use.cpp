#include "reckon/use.h"

#include <algorithm>

namespace reckon {
namespace {

bool is_beginning(TermKind kind) {
  return kind == TermKind::brought_forward || kind == TermKind::had_when_fitted ||
         kind == TermKind::stated;
}

bool is_exactly_nothing(const Figure& figure) {
  return figure.raw() == 0 && figure.sureness() == Sureness::exact;
}

// Of days that lie on both sides of the mark, off and on again within them, what it may have flown
// before is counted after the mark too: there it counts from what was flown for certain.
Figure certain_at(const Histories& histories, const logbook::Thing& thing, const Clock& clock,
                  const Mark& mark) {
  const Figure then = plain(histories.total(thing, clock, mark).figure);
  if (histories.now() < mark) return then;
  const Figure now = plain(histories.total(thing, clock, histories.now()).figure);
  const Figure since = plain(histories.used_between(thing, clock, mark, histories.now()));
  const Figure certain = now - since;
  return certain.compare(then) < 0 ? certain : then;
}

}  // namespace

Figure plain(const Figure& figure) { return figure.as_sure_as(Sureness::exact); }

std::optional<Mark> first_on_record(const Histories& histories, const logbook::Thing& thing) {
  std::optional<Mark> first;
  if (const auto day = histories.brought_forward_day(thing)) first = Mark{*day, 0};
  const std::vector<Stay>& stays = histories.stays(thing);
  if (!stays.empty() && (!first || stays.front().from < *first)) first = stays.front().from;
  return first;
}

std::optional<Figure> place_on_clock(const Histories& histories, const logbook::Thing& thing,
                                     const Clock& clock, const Mark& mark) {
  const std::optional<Mark> first = first_on_record(histories, thing);
  if (!first || *first <= mark) return certain_at(histories, thing, clock, mark);
  const Figure at_first = histories.total(thing, clock, *first).figure;
  const bool is_same_day = mark.day == first->day;
  const bool is_the_night_before =
      mark.order == end_of_day && quantity::day_after(mark.day) == first->day;
  if (is_exactly_nothing(at_first) || is_same_day || is_the_night_before) return plain(at_first);
  return std::nullopt;
}

Sureness sureness_of_use(const Total& total) {
  if (total.because.empty()) return total.figure.sureness();
  Sureness sureness = Sureness::exact;
  for (const Term& term : total.because) {
    if (!is_beginning(term.kind)) sureness = quantity::worse(sureness, term.figure.sureness());
  }
  return sureness;
}

Total used_after(const Histories& histories, const logbook::Thing& thing, const Clock& clock,
                 const Mark& mark) {
  Total used = histories.total(thing, clock, histories.now());
  const std::optional<Figure> start = place_on_clock(histories, thing, clock, mark);
  if (!start) {
    used.figure = used.figure.as_sure_as(Sureness::unknown);
    return used;
  }
  const Figure difference = plain(used.figure) - *start;
  used.figure = difference.as_sure_as(sureness_of_use(used));
  Term at_start;
  at_start.kind = TermKind::at_done;
  at_start.figure = *start;
  at_start.subtract = true;
  at_start.to = mark.day;
  used.because.push_back(std::move(at_start));
  return used;
}

}  // namespace reckon
