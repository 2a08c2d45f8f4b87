// report/history_page.h: the history of one thing from plain values, for history_list and its
// tests.
#pragma once

#include <vector>

#include "reckon/standing.h"
#include "reckon/stay.h"
#include "report/sheet.h"
#include "report/totals.h"

namespace report {

struct HistoryPage {
  std::string title_of;
  std::vector<const logbook::Entry*> entries;
  std::vector<reckon::Stay> stays;
  std::vector<ThingTotal> totals;
  // Totals that its entries state, and that are others now.
  std::vector<reckon::Statement> moved = {};
};
Answer history_page(const HistoryPage& about, const reckon::Standing& standing, const Sheet& sheet);

}  // namespace report
