// cases/rows.h: one row of an answer's items, obstacles or totals against what a case expects of
// it.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "cases/figures.h"

namespace cases {

// `item "annual inspection" | left 112 days | due 2025-06-30 | governs` over the rows of a list.
// Empty: exactly one row answers to the name and the unit, and it is as expected.
std::string against_rows(const std::vector<std::string>& pieces, const nlohmann::json& rows);

// `4323.3 h`, `at least 2310 starts`, `unknown landings`, with `since overhaul` behind it.
std::string against_totals(const std::string& expectation, const nlohmann::json& totals);

// A JSON figure in the amounts of case files: seconds, days, thousandths of a count.
std::optional<std::int64_t> amount_of(const nlohmann::json& figure, const std::string& unit);

}  // namespace cases
