// report/due_page.h: the due list from plain values, for due_list and its tests.
#pragma once

#include <vector>

#include "reckon/lives.h"
#include "report/sheet.h"

namespace report {

struct DuePage {
  logbook::Aircraft aircraft;
  std::optional<quantity::Day> last_flight;
  std::vector<reckon::Question> questions;
};
Answer due_page(const DuePage& about, const std::vector<reckon::Item>& items, const Sheet& sheet);

}  // namespace report
