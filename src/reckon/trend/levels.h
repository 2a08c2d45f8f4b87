// reckon/trend/levels.h: one slope and several levels. A wash lifts the margin and wear goes on as
// before, so the groups of readings between washes share their slope and their scatter, and each
// has a level of its own (the analysis of covariance; formulas from memory).
#pragma once

#include <cstddef>
#include <variant>
#include <vector>

#include "reckon/trend/groups.h"

namespace reckon::trend {

// Each level is a whole line: its own n and means, slope and scatter of all together. The intercept
// is the level at x = 0. Everything that can be asked of a line can be asked of a level.
struct LevelledLine {
  std::size_t n;             // points in all
  std::vector<Line> levels;  // in the order of the groups, one or more

  const Line& newest() const { return levels.back(); }
};

using LevelledFit = std::variant<LevelledLine, Refusal>;

// The line of least squares with a level for each group. Degrees of freedom are points less groups
// less one. No group is empty and every point is finite. Refuses fewer points than leave one degree
// of freedom (fewer_than_three_points, for one group), and groups that each lie at one x.
LevelledFit fit_levels(Groups groups);

// What was gained from one level to the next, measured at the same x: what a wash gave back.
struct Gain {
  double gain;       // C, positive is a better margin after
  double error;      // C, standard error, not widened
  Interval between;  // C, widened
};

// The gains from each level to the next: one fewer than levels.
std::vector<Gain> gains(const LevelledLine& line, Certainty certainty);

// The places, counted through all groups, of readings that decide alone; as deciding_readings of
// line.h. `line` is the fit of `groups`.
std::vector<std::size_t> deciding_readings(Groups groups, const LevelledLine& line,
                                           Certainty certainty);

}  // namespace reckon::trend
