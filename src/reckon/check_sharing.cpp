#include "reckon/check_sharing.h"

#include <algorithm>

#include "reckon/entry_named.h"
#include "reckon/rules_in_force.h"

namespace reckon {

namespace {

// The one thing of a scope; empty for a model or part number.
struct OneThing {
  std::optional<logbook::Thing> operator()(const logbook::Model&) const { return std::nullopt; }
  std::optional<logbook::Thing> operator()(const logbook::PartKind&) const { return std::nullopt; }
  template <class Thing>
  std::optional<logbook::Thing> operator()(const Thing& thing) const {
    return logbook::Thing(thing);
  }
};

bool touch(const logbook::Scope& a, const logbook::Scope& b, const NameChecks& names) {
  if (a == b) return true;
  const auto one = std::visit(OneThing{}, a);
  const auto other = std::visit(OneThing{}, b);
  return (one && names.reaches(b, *one)) || (other && names.reaches(a, *other));
}

}  // namespace

void SharingChecks::add(const Placed& placed) {
  if (!sharing_in(placed.said->fact)) return;
  said_.push_back(placed);
  if (placed.said->instead_of) replaced_.push_back(*placed.said->instead_of);
}

bool SharingChecks::is_replaced(const Placed& placed) const {
  return std::any_of(replaced_.begin(), replaced_.end(),
                     [&](const logbook::EntryName& name) { return is_named(name, placed.id); });
}

// Without "instead of" both would stand, and nothing could be told.
void SharingChecks::check(const Placed& placed, const NameChecks& names,
                          Objections& objections) const {
  const auto sharing = sharing_in(placed.said->fact);
  if (!sharing || placed.said->instead_of) return;
  for (const Placed& other : said_) {
    const auto said = sharing_in(other.said->fact);
    const bool is_later = is_same(other, placed) || other.written > placed.written;
    if (is_later || said->how == sharing->how || is_replaced(other)) continue;
    if (!touch(*said->scope, *sharing->scope, names)) continue;
    objections.push_back(doubt(CheckKind::lives_shared_otherwise, ""));
    objections.back().entries = {other.id};
    return;
  }
}

}  // namespace reckon
