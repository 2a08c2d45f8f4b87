// report/history_list.h: every entry about one thing, oldest day first, as its canonical sentence;
// corrected and struck ones stay readable with what took their place and why; where it was fitted.
#pragma once

#include <vector>

#include "reckon/standing.h"
#include "report/sheet.h"

namespace report {

Answer history_list(const reckon::Histories& histories, const reckon::Standing& standing,
                    const std::vector<const logbook::Entry*>& entries, const std::string& title_of,
                    const Sheet& sheet);

}  // namespace report
