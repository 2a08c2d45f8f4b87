// reckon/totals.h: totals of a thing at a mark, each with the terms that it was made of.
#pragma once

#include <optional>
#include <utility>
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

  // What a total is reckoned from. Of several figures the larger rules: what is stated later never
  // makes a thing younger. Empty: nobody stated one.
  std::optional<Base> base(const TotalAsked& asked) const;
  // The total by what was said of the thing before an entry was written: its place among all.
  Total as_said_before(std::int64_t written, const TotalAsked& asked) const;
  // Hours of the aircraft that may have been flown before the mark, and are counted after it.
  quantity::ServiceHours spread_around(const logbook::Aircraft& aircraft, const Mark& mark) const;
  // Used within the span, whatever it had before.
  Figure used_between(const logbook::Thing& thing, const Clock& clock, const Span& span) const;

  // The newest overhaul at or before the mark, and the stay that holds there (else the last one).
  const WorkEvent* overhaul_at(const logbook::Thing& thing, const Mark& at) const;
  const Stay* stay_at(const logbook::Thing& thing, const Mark& at) const;

  // The line of a ledger on which a ride is counted, and an aircraft's own.
  Line line_of(const logbook::Thing& thing, const Ride& ride, const Clock& clock) const;
  Line line_of(const Ledger& ledger, const Clock& clock) const;
  const Tally& tally() const { return tally_; }

 private:
  // Use between two marks: one term for each stay and way up to an aircraft. is_counted: some
  // aircraft that it rode on speaks of the clock. spread: what was counted of uses that lie on both
  // sides of a ride's ends.
  struct Sum {
    Clock clock;
    std::vector<Term> terms;
    std::map<std::pair<std::size_t, std::vector<logbook::Thing>>, std::size_t> of_stay;
    bool is_counted = true;
    std::map<std::pair<const Ledger*, std::size_t>, std::int64_t> spread;
  };
  Sum used(const logbook::Thing& thing, const Clock& clock, const Span& span) const;
  Sum flown(const Ledger& ledger, const Clock& clock, const Span& span) const;
  void add_ride(const logbook::Thing& thing, const Ride& ride, const Span& span, Sum& sum) const;
  // What a ride has of the uses that lie on both sides of its ends, beside what the tally gives.
  Used at_the_ends(const Line& line, const Ride& ride, const Span& part, Sum& sum) const;
  std::optional<std::int64_t> amount_before(const Line& line, std::size_t use,
                                            const Mark& mark) const;
  // A stated total, and what is counted of it so far.
  struct Beyond {
    quantity::ServiceHours stated;
    Figure counted;
  };
  std::optional<Beyond> stated_beyond(const Ledger& ledger, const WorkEvent& event) const;
  std::optional<quantity::ServiceHours> hours_before(const Ledger& ledger, std::size_t use,
                                                     const Mark& mark) const;
  std::optional<Figure> before_flights(const Ride& ride, const Span& span,
                                       const Clock& clock) const;
  std::optional<Figure> airframe_before(const Ledger& ledger, const Mark& mark) const;
  Total before_the_book(const logbook::Aircraft& aircraft, const Clock& clock,
                        const Mark& at) const;
  // Whether what is stated later takes the place of the base before it.
  bool is_outdone(const Base& base, const Base& later, const TotalAsked& asked) const;
  std::optional<Base> ruling(const std::vector<Base>& stated, const TotalAsked& asked) const;
  Total since_new_from(const std::optional<Base>& base, const TotalAsked& asked) const;
  Total since_overhaul_from(const std::optional<Base>& base, const TotalAsked& asked) const;
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
