// report/history_list.h: every entry about one thing, oldest day first, as its canonical sentence;
// corrected and struck ones stay readable with what took their place and why; where it was fitted.
#pragma once

#include <vector>

#include "reckon/standing.h"
#include "report/sheet.h"

namespace report {

struct HistoryOf {
  std::string title_of;                        // "aircraft ZZ-KIT"
  std::vector<const logbook::Entry*> entries;  // about it, and what corrects or strikes them
};
Answer history_list(const reckon::Histories& histories, const reckon::Standing& standing,
                    const HistoryOf& of, const Sheet& sheet);

}  // namespace report
