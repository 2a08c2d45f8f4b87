// report/trend_chart.h: the margins of one engine as a chart: every reading, the line with its band
// over each level, the floor, and what was done to the engine.
#pragma once

#include <optional>
#include <string>

#include "document/document.h"
#include "reckon/trend/margins.h"

namespace report {

// A tile shows the newest segment only, to be compared with other engines. None where no reading
// has a margin.
std::optional<document::Chart> margin_chart(const reckon::trend::Series& series, std::string key,
                                            document::ChartSize size);

}  // namespace report
