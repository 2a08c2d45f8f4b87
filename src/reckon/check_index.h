// reckon/check_index.h: the standing facts, arranged so that the next fact is checked against those
// alone that it touches.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "reckon/check_fittings.h"
#include "reckon/check_names.h"
#include "reckon/check_sharing.h"
#include "reckon/check_tasks.h"
#include "reckon/check_uses.h"
#include "reckon/standing.h"

namespace reckon {

// The aircraft whose flights or meters a fact is about; empty for all other kinds.
std::optional<logbook::Aircraft> aircraft_flown(const logbook::Fact& fact);

class CheckIndex {
 public:
  void add(const Placed& placed);
  // All checks that need no totals.
  void check(const Placed& placed, Against against, Objections& objections) const;

  const UseChecks* uses_of(const logbook::Aircraft& aircraft) const;
  std::int64_t next_written() const { return next_written_; }

 private:
  void check_move(const Placed& placed, Objections& objections) const;

  std::map<logbook::Aircraft, UseChecks> uses_;
  NameChecks names_;
  TaskChecks tasks_;
  SharingChecks sharings_;
  FittingChecks fittings_;
  std::int64_t next_written_ = 0;
};

// All standing facts, but for one chain.
CheckIndex index_of(const Standing& standing,
                    const std::optional<logbook::EntryId>& but = std::nullopt);
Placed placed(const StandingFact& fact);

}  // namespace reckon
