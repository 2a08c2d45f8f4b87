// reckon/totals.h: totals of a thing at a mark, each with the terms that it was made of.
#pragma once

#include <optional>
#include <vector>

#include "reckon/base.h"
#include "reckon/tally.h"

namespace reckon {

class Totals {
 public:
  // Keeps references to all of them.
  Totals(const Timeline& timeline, const Fittings& fittings, const CountingRules& rules,
         const Bases& bases);

  Total since_new(const logbook::Thing& thing, const Clock& clock, const Mark& at) const;
  Total since_overhaul(const logbook::Thing& thing, const Clock& clock, const Mark& at) const;
  Total since_fitting(const logbook::Thing& thing, const Clock& clock, const Mark& at) const;

  // The newest overhaul at or before the mark, and the stay that holds there (else the last one).
  const WorkEvent* overhaul_at(const logbook::Thing& thing, const Mark& at) const;
  const Stay* stay_at(const logbook::Thing& thing, const Mark& at) const;

  // The line of a ledger on which a ride is counted, and an aircraft's own.
  Line line_of(const logbook::Thing& thing, const Ride& ride, const Clock& clock) const;
  Line line_of(const Ledger& ledger, const Clock& clock) const;
  const Tally& tally() const { return tally_; }

 private:
  // Use between two marks, term by term.
  struct Sum;
  Sum used(const logbook::Thing& thing, const Clock& clock, const Span& span) const;
  Sum flown(const Ledger& ledger, const Clock& clock, const Span& span) const;
  void add_ride(const logbook::Thing& thing, const Ride& ride, const Span& span, Sum& sum) const;
  std::optional<Figure> before_flights(const Ride& ride, const Span& span,
                                       const Clock& clock) const;
  std::optional<Figure> airframe_before(const Ledger& ledger, const Mark& mark) const;
  Total before_the_book(const logbook::Aircraft& aircraft, const Clock& clock,
                        const Mark& at) const;
  Total by_difference(const logbook::Thing& thing, const Clock& clock, const Mark& at,
                      const std::optional<Figure>& start) const;

  const Timeline& timeline_;
  const Fittings& fittings_;
  const CountingRules& rules_;
  const Bases& bases_;
  Tally tally_;
  std::map<logbook::Thing, std::vector<const WorkEvent*>> overhauls_;
  std::map<logbook::Aircraft, std::vector<const WorkEvent*>> stated_;  // airframe totals, by mark
};

}  // namespace reckon
