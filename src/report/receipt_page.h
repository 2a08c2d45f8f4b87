// report/receipt_page.h: the receipt from plain values, for receipt and its tests.
#pragma once

#include <optional>
#include <vector>

#include "reckon/lives.h"
#include "report/saved.h"

namespace report {

// One thing that the entries touch, as it stands after them.
struct Touched {
  logbook::Thing thing;
  reckon::Figure hours;
  logbook::Counter counter;             // landings of an aircraft, starts of an engine
  std::optional<reckon::Figure> count;  // absent: not told
  std::vector<reckon::Item> items;      // what is due, in order
  std::vector<logbook::UseRow> used;    // by the saved entries, on its aircraft
};
Answer receipt_page(const Saved& saved, const std::vector<Touched>& touched, const Sheet& sheet);

}  // namespace report
