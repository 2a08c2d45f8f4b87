#pragma once
// A chart for machines.

#include "document/chart/chart.h"
#include "document/json.h"

namespace document {

// {"kind":"chart","key","title","alt","points_name","size":"full|tile","x":{"name","unit"},"y":…,
// "points":[{"x","y","state":"counted|flagged","reason"}],
// "lines":[{"reach":"fitted|ahead","from":{"x","y"},"to":{"x","y"}}],
// "bands":[{"label","samples":[{"x","lower","upper"}]}],
// "levels":[{"label","y"}],"events":[{"label","x"}]}; every coordinate is the exact text as a
// number, in the unit of its axis.
Json chart_json(const Chart& chart);

}  // namespace document
