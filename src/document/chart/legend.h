#pragma once
// What a chart says in words: the same sentences beside every drawing of it, on the terminal and
// on paper, with each figure that is not in the table of its points.

#include <cstddef>
#include <string>
#include <vector>

#include "document/chart/chart.h"

namespace document {

// What stands beside the words: the mark as the pen draws it, or the number of an event.
enum class LegendMark { counted, flagged, line, ahead, band, level, event, absent };

struct LegendEntry {
  LegendMark mark;
  std::size_t number;  // of an event on the chart, from 1; else 0
  std::string words;
};

// Points counted; flagged ones by their reason, each with its place; lines, bands, levels; events
// from left to right, those far off the chart too. A tile has room for less: flagged points are
// counted and not listed, lines and bands have no figures. Not made visible or escaped: pens do
// that.
std::vector<LegendEntry> legend(const Chart& chart);

// The events on the chart from left to right, in the order of their numbers in the legend.
std::vector<const ChartEvent*> numbered_events(const Chart& chart);

}  // namespace document
