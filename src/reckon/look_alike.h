// reckon/look_alike.h: names that a person may take for one another.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "logbook/names.h"

namespace reckon {

// The name with all that looks alike made the same: O as 0, I and L as 1, S as 5, B as 8, without
// blanks and hyphens, in capitals. Two names that fold alike look alike.
std::string folded(std::string_view name);
// Of the whole identity: model and serial, part number and serial, registration; with its class.
std::string folded(const logbook::Thing& thing);

// The three candidates nearest to the word, the likeliest first; only those that it may stand for:
// at most a third of its characters, at least one, are typed differently.
std::vector<std::string> nearest_three(std::string_view word,
                                       const std::vector<std::string>& candidates);

}  // namespace reckon
