// reckon/tally.h: sums of use between two marks of an aircraft, from running sums that are made
// once for each clock, place and set of counting rules that is asked about.
#pragma once

#include <cstddef>
#include <map>
#include <optional>
#include <tuple>
#include <vector>

#include "reckon/counting.h"
#include "reckon/ledger.h"

namespace reckon {

// One line of an aircraft's ledger: a clock, at the airframe or at a place.
struct Line {
  const Ledger* ledger = nullptr;
  Clock clock;
  std::optional<logbook::PlaceName> place;
  RulesOnTheWay rules = {};
  auto operator<=>(const Line&) const = default;
};

// Marks (from, to]: what happened at from is left out, what happened at to is in.
struct Span {
  Mark from;
  Mark to;
};

struct Used {
  Amount amount;
  std::int64_t flights = 0;
  std::optional<logbook::EntryId> first;
  std::optional<logbook::EntryId> last;
};

class Tally {
 public:
  Used used(const Line& line, const Span& span) const;
  // Hours of "unaccounted" entries within the span.
  Amount missing(const Line& line, const Span& span) const;
  // Whether any use on the aircraft, or a rule, speaks of the clock at all.
  bool is_counted(const Line& line) const;
  // One use on a line.
  static Amount amount(const Line& line, const Use& use);

 private:
  struct Column {
    std::vector<std::int64_t> sums;      // before each use, and after the last
    std::vector<std::int64_t> at_least;  // how many amounts were at least
    std::vector<std::int64_t> flights;
    std::vector<std::size_t> unaccounted;
    bool is_counted = false;
  };
  const Column& column(const Line& line) const;
  static Column make_column(const Line& line);

  mutable std::map<Line, Column> columns_;  // made when first asked for
};

}  // namespace reckon
