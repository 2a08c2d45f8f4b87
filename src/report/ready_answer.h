// report/ready_answer.h: "can I fly this?": the first line says it (at most 80 columns), then what
// bites first, how much may be flown, all other obstacles, freshness, the caution.
#pragma once

#include <string>
#include <vector>

#include "reckon/ready.h"
#include "report/sheet.h"

namespace report {

struct Asked {
  logbook::Aircraft aircraft;
  reckon::Trip trip;
  quantity::Day today;
  std::vector<std::string> engines = {};  // a sentence about each: last start, margin
};

Answer ready_answer(const reckon::Histories& histories, const Asked& asked,
                    const reckon::Ready& ready, const Sheet& sheet);

}  // namespace report
