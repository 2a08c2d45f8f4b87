// reckon/histories.h: every thing's way through the book: where it was fitted, what it used there
// on each clock, and its totals at any place of the history, each with its working.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <vector>

#include "logbook/derived.h"
#include "logbook/entry.h"
#include "reckon/figure.h"
#include "reckon/standing.h"
#include "reckon/stay.h"

namespace reckon {

// Of what a model is on record.
struct Bearers {
  bool engines = false;
  bool aircraft = false;
};

class Histories {
 public:
  // Keeps references to the facts of standing; both must outlive it.
  Histories(const Standing& standing, Day as_of, Ambiguous policy);
  Histories(Histories&&) noexcept;
  ~Histories();

  Day as_of() const;
  const std::vector<logbook::Thing>& things() const;  // every thing on record, sorted
  std::optional<logbook::ModelName> model_of(const logbook::Thing& thing) const;
  Bearers bearers_of(const logbook::ModelName& model) const;
  const std::vector<Stay>& stays(const logbook::Thing& thing) const;  // oldest first
  std::optional<Stay> stay_at(const logbook::Thing& thing, const Mark& mark) const;
  std::optional<Stay> stay_now(const logbook::Thing& thing) const;
  // The stay that holds now, else the last one; none: never fitted.
  std::optional<Stay> newest_stay(const logbook::Thing& thing) const;
  std::vector<Stay> fitted_now(const logbook::Thing& host) const;  // children, by place
  std::optional<logbook::Aircraft> aircraft_now(const logbook::Thing& thing) const;

  // Where the entry stands; for a fact about a thing on an aircraft, in that aircraft's history.
  Mark mark_of(const logbook::EntryId& root) const;
  Mark now() const { return {as_of(), end_of_day}; }

  // Since new: what it had when it first came on record plus all use in its stays (an aircraft: its
  // flights). Unknown where a term is unknown.
  Total total(const logbook::Thing& thing, const Clock& clock, const Mark& at) const;
  // Since the newest overhaul at or before the mark / since the fitting that holds at the mark.
  Total since_overhaul(const logbook::Thing& thing, const Clock& clock, const Mark& at) const;
  Total since_fitting(const logbook::Thing& thing, const Clock& clock, const Mark& at) const;
  // The day the thing was last overhauled / fitted / made …, if on record.
  std::optional<Day> basis_day(const logbook::Thing& thing, logbook::Basis basis) const;

  // The meter's newest reading at the mark, and the clock that is the aircraft's source.
  std::optional<logbook::MeterReading> meter(const logbook::Aircraft& aircraft,
                                             const logbook::MeterName& meter, const Mark& at) const;
  std::optional<logbook::MeterName> source_meter(const logbook::Aircraft& aircraft) const;
  std::optional<Day> last_flight(const logbook::Aircraft& aircraft) const;
  std::optional<Day> brought_forward_day(const logbook::Thing& thing) const;

  // Where the thing was brought forward or came on record by a fitting, oldest first.
  std::vector<Mark> beginnings(const logbook::Thing& thing) const;
  // A total by what was said of the thing before an entry was written (StandingFact::written); and
  // what was used between two marks.
  Figure total_as_said_before(std::int64_t written, const TotalAsked& asked) const;
  Figure used_between(const logbook::Thing& thing, const Clock& clock, const Mark& from,
                      const Mark& to) const;
  // Hours of the aircraft that may have been flown before the mark, and are counted after it.
  quantity::ServiceHours spread_around(const logbook::Aircraft& aircraft, const Mark& mark) const;

  const std::vector<Statement>& statements() const;
  const std::vector<Question>& questions() const;  // order within a day, serial in two places …
  bool has_ambiguous_order() const;

  // What one aircraft flew on each day from a day on, for forecast and the fleet's rates.
  struct DayUse {
    Day day;
    quantity::ServiceHours hours;
    std::int64_t flights = 0;
  };
  std::vector<DayUse> daily_use(const logbook::Aircraft& aircraft, Day from) const;
  // The dearest single flight among the last n flights on a clock, for ready's trip.
  std::optional<Figure> dearest_flight(const logbook::Thing& thing, const Clock& clock,
                                       std::int64_t n) const;

  // The counting rules by which the next flight will count on a counter of a thing that is aboard.
  std::vector<const logbook::CountingRule*> rules_now(const logbook::Thing& thing,
                                                      const logbook::Counter& counter) const;

  // Use rows and running totals of one aircraft, for store.
  logbook::DerivedUse derived(const logbook::Aircraft& aircraft, Day from) const;

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

}  // namespace reckon
