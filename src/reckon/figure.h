// reckon/figure.h: a figure on some clock with how surely it is known, and the terms it was made
// of. Figures of different units neither add nor compare: that is a broken promise.
#pragma once

#include <compare>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "logbook/amounts.h"
#include "logbook/entry.h"
#include "quantity/amount.h"
#include "quantity/calendar.h"
#include "quantity/counts.h"
#include "quantity/hours.h"

namespace reckon {

using quantity::Day;
using quantity::Sureness;

// What is counted on: hours of service, hours on one meter, or a counter.
struct HoursClock {
  std::optional<logbook::MeterName> meter;  // absent: time in service, the airframe's source clock
  auto operator<=>(const HoursClock&) const = default;
  bool operator==(const HoursClock&) const = default;
};
using Clock = std::variant<HoursClock, logbook::Counter>;
inline const Clock service_clock = HoursClock{};

enum class Unit { hours, count, days };

// Hours in thousandths of a second, counts in thousandths, days whole.
class Figure {
 public:
  Figure() = default;
  Figure(quantity::ServiceHours hours, Sureness sureness = Sureness::exact)
      : unit_(Unit::hours), raw_(hours.count()), sureness_(sureness) {}
  Figure(quantity::Cycles count, Sureness sureness = Sureness::exact)
      : unit_(Unit::count), raw_(count.count()), sureness_(sureness) {}
  Figure(quantity::Days days) : unit_(Unit::days), raw_(days.count()) {}

  Unit unit() const { return unit_; }
  std::int64_t raw() const { return raw_; }
  Sureness sureness() const { return sureness_; }
  bool is_unknown() const { return sureness_ == Sureness::unknown; }
  Figure as_sure_as(Sureness sureness) const;
  quantity::ServiceHours hours() const;
  quantity::Cycles count() const;
  quantity::Days days() const;

  Figure operator+(const Figure& other) const;  // same unit, else a broken promise
  Figure operator-(const Figure& other) const;
  Figure operator-() const;
  // Compares the values alone, of one unit.
  std::strong_ordering compare(const Figure& other) const;
  bool operator==(const Figure& other) const = default;

 private:
  Unit unit_ = Unit::hours;
  std::int64_t raw_ = 0;
  Sureness sureness_ = Sureness::exact;
};

// Zero on a clock, and an amount on it (thousandths of a second, or of a count).
Figure zero(const Clock& clock);
Figure figure_on(const Clock& clock, quantity::Known<std::int64_t> amount);

// One term of a figure's working; words says it ("310.0 h flown in M-4 since then, 212 flights").
enum class TermKind {
  brought_forward,  // + what the thing had when the book began
  had_when_fitted,  // + stated at its first fitting
  used_in_stay,     // + used on a host from one point to another
  flown,            // + an aircraft's own flights
  stated,           // a stated total that takes the place of the sum
  limit,            // + the limit or interval
  at_done,          // + the total at the place where a task was last done
  excess,           // - flown past the due point (14 CFR 91.409(b))
  missing,          // + hours unaccounted for
};
struct Term {
  TermKind kind = TermKind::flown;
  Figure figure;
  bool subtract = false;
  std::optional<logbook::Thing> host;
  std::vector<logbook::Thing> hosts;  // used_in_stay: its host first, the aircraft last
  std::optional<logbook::PlaceName> place;
  std::optional<Day> from;
  std::optional<Day> to;
  std::int64_t flights = 0;
  std::optional<logbook::EntryId> first;  // the entries it rests on
  std::optional<logbook::EntryId> last;
  std::string source;
};

// A total with its working.
struct Total {
  Figure figure;
  std::vector<Term> because;
};

}  // namespace reckon
