// report/engine_trend.h: whether an engine is losing temperature margin, as graded words with the
// figures beside them; every reading with its reason where it was left out.
#pragma once

#include <vector>

#include "reckon/trend/margins.h"
#include "report/sheet.h"

namespace report {

// readings_too: list every reading of the newest segment, not only the finding.
Answer engine_trend(const std::vector<reckon::trend::Series>& all, const std::string& title_of,
                    bool readings_too, const Sheet& sheet);

}  // namespace report
