// sentence/kinds/shared_words.h: words that kinds of more than one family use.
#pragma once

#include "sentence/declare.h"

namespace sentence {

inline constexpr Word check_words[] = {word(logbook::CheckKind::cruise, "cruise"),
                                       word(logbook::CheckKind::idle, "idle"),
                                       word(logbook::CheckKind::power_check, "power check")};
template <>
inline constexpr Sort sort_of<logbook::CheckKind> = words<logbook::CheckKind>("check", check_words);

}  // namespace sentence
