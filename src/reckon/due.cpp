#include "reckon/due.h"

#include <algorithm>
#include <tuple>

#include "reckon/aboard.h"
#include "reckon/limit_item.h"
#include "reckon/settle.h"
#include "reckon/task_item.h"

namespace reckon {
namespace {

int rank(State state) {
  switch (state) {
    case State::over:
      return 0;
    case State::due:
      return 1;
    case State::not_known:
      return 2;
    case State::soon:
    case State::ok:
      break;
  }
  return 3;
}

const Side* governing(const Item& item) {
  return item.governs < 0 ? nullptr : &item.sides[static_cast<std::size_t>(item.governs)];
}

bool comes_before(const Item& a, const Item& b) {
  const auto key = [](const Item& item) {
    const Side* side = governing(item);
    const std::int64_t days = side == nullptr ? 0 : side->days_left;
    const std::int64_t left = side == nullptr || !side->left ? 0 : side->left->raw();
    return std::tuple(rank(item.state), days, left, item.id);
  };
  return key(a) < key(b);
}

// Not known is worse than any left with which it is neither due nor over.
bool is_harsher(const Side& a, const Side& b) {
  if (!a.left || !b.left) return rank(a.state) < rank(b.state);
  if (a.left->raw() == b.left->raw()) return a.left_is_at_most && !b.left_is_at_most;
  return a.left->raw() < b.left->raw();
}

// Of two readings of a side the one with less left; it is no better known than either.
void take_harsher(Side& side, const Side& other) {
  const bool is_open = side.state == State::not_known || other.state == State::not_known;
  if (is_harsher(other, side)) side = other;
  if (!is_open || rank(side.state) <= rank(State::not_known)) return;
  side.state = State::not_known;
  side.lack = Lack::total_at_least;
  side.left_is_at_most = true;
}

bool have_the_same_sides(const Item& a, const Item& b) {
  return std::equal(a.sides.begin(), a.sides.end(), b.sides.begin(), b.sides.end(),
                    [](const Side& one, const Side& other) {
                      return one.is_calendar == other.is_calendar && one.clock == other.clock;
                    });
}

// The sides of a mixed limit are not told apart.
bool is_worse(const Item& a, const Item& b) {
  if (rank(a.state) != rank(b.state)) return rank(a.state) < rank(b.state);
  const Side* side = governing(a);
  const Side* other = governing(b);
  return a.mixed != nullptr && side != nullptr && other != nullptr && is_harsher(*side, *other);
}

void take_harsher(Item& item, const Item& other) {
  if (!have_the_same_sides(item, other) || !is_settled_by_sides(item)) {
    if (is_worse(other, item)) item = other;
    return;
  }
  for (std::size_t i = 0; i < item.sides.size(); ++i) {
    take_harsher(item.sides[i], other.sides[i]);
  }
  settle(item);
}

// A limit or task that was corrected to other terms.
bool have_other_terms(const Item& a, const Item& b) {
  if (a.sides.empty() || b.sides.empty()) return false;
  return a.combine != b.combine || !have_the_same_sides(a, b);
}

// By terms that differ both are told.
void add_harsher(std::vector<Item>& items, Item other) {
  const auto same = std::find_if(items.begin(), items.end(),
                                 [&](const Item& item) { return item.id == other.id; });
  if (same == items.end()) {
    items.push_back(std::move(other));
  } else if (have_other_terms(*same, other)) {
    other.id += ":otherwise";
    add_harsher(items, std::move(other));
  } else {
    take_harsher(*same, other);
  }
}

}  // namespace

std::vector<Item> due(const Histories& histories, const Standing& standing,
                      const logbook::Aircraft& aircraft, const Soon& soon) {
  const View view = view_of(histories, standing, soon);
  std::vector<Item> items;
  for (const logbook::Thing& thing : aboard(histories, aircraft)) {
    for (Item& item : task_items(view, thing)) items.push_back(std::move(item));
    for (Item& item : limit_items(view, thing)) items.push_back(std::move(item));
  }
  sort_by_what_comes_first(items);
  return items;
}

std::vector<Item> harsher(std::vector<Item> one, std::vector<Item> other) {
  for (Item& item : other) add_harsher(one, std::move(item));
  sort_by_what_comes_first(one);
  return one;
}

void sort_by_what_comes_first(std::vector<Item>& items) {
  std::stable_sort(items.begin(), items.end(), comes_before);
}

}  // namespace reckon
