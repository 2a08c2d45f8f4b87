// words/shares.h: lives that several models or counters use up together: how much of the life is
// used, and what is left at the same mix.
#pragma once

#include <string>

#include "reckon/lives.h"

namespace words {

// "0.7", "0.6667": four decimals at most, rounded up.
std::string life_used_text(const reckon::LifeUsed& life);
// The same of a side: "at least 0.7" where its use is no more than that.
std::string life_used_text(const reckon::Side& side);
// "by fractions, 0.7 used", "shorter limit stays", "at the same mix, 0.8 used", of the life; empty
// for limits that share nothing.
std::string sharing_text(const reckon::Item& item, const reckon::Side& side);
// "at the same mix"; of a counter that was not used, "if it alone goes on".
std::string mix_text(const reckon::Side& side);
// by fractions, shorter limit stays; empty if neither.
std::string_view sharing_word(reckon::Sharing sharing);
// "500 full cycles and 2000 abbreviated cycles": of every counter of a mixed limit; else of the one
// side.
std::string all_left_text(const reckon::Item& item, const reckon::Side& side);

}  // namespace words
