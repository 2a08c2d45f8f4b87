#pragma once
// Charts as an SVG file of their own, with all their words in it.

#include <string>
#include <vector>

#include "document/chart/chart.h"

namespace document {

// The charts below one another, tiles that follow each other three in a row, each with its title,
// its sentence and its key as text. Without any chart an empty drawing.
std::string picture_file(const std::vector<const Chart*>& charts);

}  // namespace document
