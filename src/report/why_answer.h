// report/why_answer.h: the working of one limit or due point as a short sum, each term naming its
// entries.
#pragma once

#include <vector>

#include "reckon/lives.h"
#include "report/sheet.h"

namespace report {

// The items of one thing or one task; the one that governs first.
Answer why_answer(const reckon::Histories& histories, const std::vector<reckon::Item>& items,
                  const Sheet& sheet);

}  // namespace report
