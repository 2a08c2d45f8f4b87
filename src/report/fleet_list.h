// report/fleet_list.h: the whole fleet at a glance, the worst first: what falls due next on each
// aircraft, and how the margin of each engine goes.
#pragma once

#include <vector>

#include "reckon/exceedances.h"
#include "reckon/item.h"
#include "reckon/trend/margins.h"
#include "report/sheet.h"

namespace report {

struct FleetAircraft {
  logbook::Aircraft aircraft;
  std::vector<reckon::Item> items;       // what is due, in order
  std::vector<reckon::Exceedance> open;  // that nobody has looked into
};
struct Fleet {
  std::vector<FleetAircraft> aircraft;
  std::vector<reckon::trend::Series> series;
  std::vector<reckon::Exceedance> exceedances;  // that nobody has looked into
  bool charts_too = false;
};
Answer fleet_list(const reckon::Histories& histories, Fleet fleet, const Sheet& sheet);

}  // namespace report
