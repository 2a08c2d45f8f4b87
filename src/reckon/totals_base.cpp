// Which of the figures that a thing is said to have had a total is reckoned from.
#include <algorithm>
#include <iterator>

#include "reckon/check_hours.h"
#include "reckon/totals.h"

namespace reckon {

namespace {

bool is_at_least(const Figure& figure) { return figure.sureness() == Sureness::at_least; }

}  // namespace

// Where the use between is not known, or only at least, a figure that is no smaller says what it
// was. One that is only rounded outdoes nothing.
bool Totals::is_outdone(const Base& base, const Base& later, const TotalAsked& asked) const {
  const Figure reckoned =
      base.figure + used_between(asked.thing, asked.clock, {base.mark, later.mark});
  if (reckoned.is_unknown()) return later.figure.compare(base.figure) >= 0;
  if (!agree_as_totals(later.figure, reckoned)) return later.figure.compare(reckoned) > 0;
  return is_at_least(reckoned) || !base.is_stated;
}

// What was not known when it came on record is known from the day on which it is brought forward;
// what is said to be unknown later leaves what it had, at least.
std::optional<Base> Totals::ruling(const std::vector<Base>& stated, const TotalAsked& asked) const {
  if (stated.empty()) return std::nullopt;
  Base base = stated.front();
  for (auto later = std::next(stated.begin()); later != stated.end(); ++later) {
    if (base.figure.is_unknown()) {
      if (later->kind == TermKind::brought_forward) base = *later;
    } else if (later->figure.is_unknown()) {
      base.figure = base.figure.as_sure_as(Sureness::at_least);
    } else if (is_outdone(base, *later, asked)) {
      base = *later;
    }
  }
  return base;
}

std::optional<Base> Totals::base(const TotalAsked& asked) const {
  return ruling(bases_.stated(asked.thing, asked.clock, asked.at, asked.since), asked);
}

Total Totals::as_said_before(std::int64_t written, const TotalAsked& asked) const {
  std::vector<Base> stated = bases_.stated(asked.thing, asked.clock, asked.at, asked.since);
  std::erase_if(stated, [&](const Base& base) { return base.written >= written; });
  const std::optional<Base> base = ruling(stated, asked);
  return asked.since == logbook::Basis::overhaul ? since_overhaul_from(base, asked)
                                                 : since_new_from(base, asked);
}

}  // namespace reckon
