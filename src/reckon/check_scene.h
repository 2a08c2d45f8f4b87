// reckon/check_scene.h: a record as it stands, with one chain left out if a correction is to take
// its place: all that a fact is checked against. Totals are reckoned only when they are asked for.
#pragma once

#include <memory>
#include <optional>
#include <set>

#include "reckon/check_index.h"
#include "reckon/check_late.h"

namespace reckon {

class CheckScene {
 public:
  // The standing must outlive the scene.
  CheckScene(const Standing& standing, Day today,
             const std::optional<logbook::EntryId>& but = std::nullopt);

  void add(const Placed& placed);
  // Totals are from now on those of this standing, which holds all that was added.
  void take_totals_from(const Standing& standing);
  bool has_newest_totals() const { return has_newest_totals_; }
  bool needs_totals(const Placed& placed) const;
  void check(const Placed& placed, Objections& objections);
  std::int64_t next_written() const { return index_.next_written(); }

 private:
  void note_begun(const logbook::Fact& fact);
  const Histories& histories();
  void check_totals(const Placed& placed, Objections& objections);
  void check_late(const Placed& placed, Objections& objections);

  const Standing* standing_;
  Day today_;
  std::optional<logbook::EntryId> but_;
  CheckIndex index_;
  LateChecks late_;
  std::set<logbook::Thing> begun_;  // brought forward, or fitted
  bool has_newest_totals_ = true;
  std::unique_ptr<Standing> past_;  // what the histories are made of
  std::unique_ptr<Histories> histories_;
};

}  // namespace reckon
