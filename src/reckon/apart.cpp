#include "reckon/apart.h"

#include <algorithm>

#include "reckon/settle.h"
#include "reckon/side.h"

namespace reckon {

namespace {

constexpr std::size_t most_ways = 16;

bool are_few(const std::vector<MadeApart>& apart) {
  std::size_t ways = 1;
  for (const MadeApart& one : apart) {
    ways *= one.corrections.size();
    if (ways > most_ways) return false;
  }
  return true;
}

// Each decision so far with each of one more dispute.
std::vector<Decided> each_with(const std::vector<Decided>& so_far, const MadeApart& more) {
  std::vector<Decided> ways;
  for (const Decided& way : so_far) {
    for (const logbook::EntryId& taken : more.corrections) {
      ways.push_back(way);
      ways.back()[more.root] = taken;
    }
  }
  return ways;
}

bool has_run_short(const Side& side) {
  return side.state == State::over || side.state == State::due;
}

bool is_same(const Side& a, const Side& b) {
  return a.left == b.left && a.left_is_at_most == b.left_is_at_most && a.state == b.state;
}

// What one of the other ways says otherwise is not known, unless it has run out.
void leave_undecided(Item& item, const std::vector<Item>& others) {
  const bool is_mix = item.mixed != nullptr && !item.sides.empty();
  if (!is_settled_by_sides(item) && !is_mix) return;
  const auto other = std::find_if(others.begin(), others.end(),
                                  [&](const Item& one) { return one.id == item.id; });
  const bool is_there = other != others.end() && other->sides.size() == item.sides.size();
  const bool are_all_same =
      is_there && std::equal(item.sides.begin(), item.sides.end(), other->sides.begin(), is_same);
  for (std::size_t i = 0; i < item.sides.size(); ++i) {
    // The counters of a mix use up one life: what one of them leaves open is open for all.
    if (is_mix ? are_all_same : is_there && is_same(item.sides[i], other->sides[i])) continue;
    if (!has_run_short(item.sides[i])) set_lack(item.sides[i], Lack::undecided);
  }
  if (is_mix) return settle_together(item);
  settle(item);
}

}  // namespace

WaysToDecide ways_to_decide(const std::vector<MadeApart>& apart) {
  if (!are_few(apart)) {
    Decided other_end;
    Decided nothing;
    for (const MadeApart& one : apart) {
      other_end[one.root] = one.corrections.front();
      nothing[one.root] = std::nullopt;
    }
    return {{other_end, nothing}, false};
  }
  std::vector<Decided> ways{{}};
  for (const MadeApart& one : apart) ways = each_with(ways, one);
  ways.pop_back();  // the newest of each: by that the facts stand
  return {std::move(ways), true};
}

std::vector<Item> with_least_left(std::vector<std::vector<Item>> by_way, bool are_all) {
  std::vector<Item> least = std::move(by_way.front());
  const std::vector<Item> first = are_all ? std::vector<Item>{} : least;
  for (std::size_t way = 1; way < by_way.size(); ++way) {
    if (are_all || way == 1) least = harsher(std::move(least), by_way[way]);
  }
  if (are_all) return least;
  by_way.front() = first;
  for (const std::vector<Item>& way : by_way) {
    for (Item& item : least) leave_undecided(item, way);
  }
  sort_by_what_comes_first(least);
  return least;
}

}  // namespace reckon
