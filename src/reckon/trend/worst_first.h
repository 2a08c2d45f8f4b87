// reckon/trend/worst_first.h: in which order a fleet's margins are looked at.
#pragma once

#include <vector>

#include "reckon/trend/series.h"

namespace reckon::trend {

// Past what is allowed first, then at or below the floor, the lowest of them first; then those
// whose early limit is known, the soonest first; then other clear and weak losses; then the
// smallest margin; last those without a line. Never by raw slope: few readings draw steep lines.
void worst_first(std::vector<Series>& all);

}  // namespace reckon::trend
