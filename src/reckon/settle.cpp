#include "reckon/settle.h"

#include <algorithm>

#include "quantity/expect.h"
#include "reckon/wide.h"

namespace reckon {
namespace {

bool is_over(const Side& side) { return side.state == State::over; }
bool has_run_out(const Side& side) { return is_over(side) || side.state == State::due; }
bool is_unknown(const Side& side) { return !side.left; }

// The limit that a part left is measured against: at least one smallest unit.
Wide measure(const Side& side) {
  const std::int64_t limit = side.limit ? side.limit->raw() : side.left->raw();
  return std::max<std::int64_t>(limit, 1);
}

bool can_be_told_by_days(const std::vector<Side>& sides) {
  return std::all_of(sides.begin(), sides.end(),
                     [](const Side& side) { return is_over(side) || side.expected; });
}

// Whether a runs out before b; both are known.
bool runs_out_before(const Side& a, const Side& b, bool by_days) {
  if (is_over(a) != is_over(b)) return is_over(a);
  const bool is_same_clock =
      a.is_calendar == b.is_calendar && (a.is_calendar || a.clock == b.clock);
  if (is_same_clock) return a.left->raw() < b.left->raw();
  if (is_over(a) || !by_days) return has_less_of_its_limit_left(a, b);
  if (*a.expected != *b.expected) return *a.expected < *b.expected;
  return !a.is_calendar && b.is_calendar;  // the last legal day may be flown to its end
}

int first_of(const std::vector<Side>& sides, bool (*holds)(const Side&)) {
  const auto found = std::find_if(sides.begin(), sides.end(), holds);
  return found == sides.end() ? -1 : static_cast<int>(found - sides.begin());
}

bool is_at_most(const Side& side) { return side.lack == Lack::total_at_least; }

int badness(State state) {
  switch (state) {
    case State::ok:
      return 0;
    case State::soon:
      return 1;
    case State::not_known:
      return 2;
    case State::due:
      return 3;
    case State::over:
      break;
  }
  return 4;
}

// Over before due before not known before soon before ok.
State worse_state(State a, State b) { return badness(a) < badness(b) ? b : a; }

int extreme(const Item& item) {
  const bool by_days = can_be_told_by_days(item.sides);
  std::size_t best = 0;
  for (std::size_t i = 1; i < item.sides.size(); ++i) {
    const bool is_before = runs_out_before(item.sides[i], item.sides[best], by_days);
    const bool is_after = runs_out_before(item.sides[best], item.sides[i], by_days);
    if (item.combine == logbook::Combine::first ? is_before : is_after) best = i;
  }
  return static_cast<int>(best);
}

// The side that is over by the largest part of its limit, else one that is due, whatever else is
// not known.
int most_run_out(const std::vector<Side>& sides) {
  int most = -1;
  for (std::size_t i = 0; i < sides.size(); ++i) {
    if (!has_run_out(sides[i])) continue;
    const bool is_more =
        most < 0 || has_less_of_its_limit_left(sides[i], sides[static_cast<std::size_t>(most)]);
    if (is_more) most = static_cast<int>(i);
  }
  return most;
}

void settle_run_out(Item& item, int side) {
  const Side& governing = item.sides[static_cast<std::size_t>(side)];
  item.governs = side;
  item.state = governing.state;
  if (!is_over(governing)) item.expected = governing.expected;
}

void settle_not_known(Item& item, int side) {
  item.governs = side;
  item.state = State::not_known;
  item.lack = item.sides[static_cast<std::size_t>(side)].lack;
}

void settle_known(Item& item) {
  item.governs = extreme(item);
  const Side& governing = item.sides[static_cast<std::size_t>(item.governs)];
  item.state = governing.state;
  const bool is_first = item.combine == logbook::Combine::first;
  for (const Side& side : item.sides) {
    if (is_first || is_at_most(side)) item.state = worse_state(item.state, side.state);
  }
  if (item.state == State::not_known) item.lack = Lack::total_at_least;
  const bool may_come_earlier = is_over(governing) || is_at_most(governing);
  if (!may_come_earlier) item.expected = governing.expected;
}

}  // namespace

bool is_settled_by_sides(const Item& item) {
  const bool is_open = item.lack == Lack::shared_lives || item.lack == Lack::two_policies ||
                       item.lack == Lack::not_shareable || item.lack == Lack::model;
  return !item.sides.empty() && !is_open && item.mixed == nullptr;
}

bool has_less_of_its_limit_left(const Side& a, const Side& b) {
  return a.left->raw() * measure(b) < b.left->raw() * measure(a);
}

void settle(Item& item) {
  EXPECT(!item.sides.empty());
  item.expected.reset();
  item.lack = Lack::nothing;
  const int run_out = most_run_out(item.sides);
  const int unknown = first_of(item.sides, is_unknown);
  if (item.combine == logbook::Combine::first && run_out >= 0) {
    const Side& side = item.sides[static_cast<std::size_t>(run_out)];
    if (is_over(side) || unknown >= 0) return settle_run_out(item, run_out);
  }
  if (unknown >= 0) return settle_not_known(item, unknown);
  settle_known(item);
}

void settle_together(Item& item) {
  const Side governing = item.sides[static_cast<std::size_t>(item.governs)];
  for (Side& side : item.sides) side.state = governing.state;
  item.state = governing.state;
  item.lack = Lack::nothing;
  item.expected = governing.expected;
  if (item.state != State::not_known) return;
  item.expected.reset();
  const auto lacking = std::find_if(item.sides.begin(), item.sides.end(),
                                    [](const Side& side) { return side.lack != Lack::nothing; });
  if (lacking != item.sides.end()) item.lack = lacking->lack;
}

}  // namespace reckon
