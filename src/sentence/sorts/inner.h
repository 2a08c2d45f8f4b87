// sentence/sorts/inner.h: the one sentence that stands inside another, in corrections.
#pragma once

#include "sentence/declare.h"

namespace sentence {

bool read_inner(Cursor& cursor, logbook::InnerSaid& inner);
void say_inner(std::string& out, const logbook::InnerSaid& inner);

template <>
inline constexpr Sort sort_of<logbook::InnerSaid> = Leaf<read_inner, say_inner>::sort(
    "dated-sentence", "2026-03-04 aircraft ZZ-KIT flew 1.8 h", "date [ time ] fact");

}  // namespace sentence
