// words/chapters.h: how an entry of a history stands: whether it counts, what took its place and
// why.
#pragma once

#include <string>

#include "logbook/entry.h"
#include "reckon/histories.h"

namespace words {

enum class Standing { counts, corrected, struck, not_counted };

// counts is left unsaid; "corrected", "struck", "not counted".
std::string_view standing_word(Standing standing);
// Of a correction or strike: "corrected by K7QXM-530 on 12 March 2026 because "typed 1.3", by "A.
// Fenwick"". Its sentence for any other kind.
std::string chapter_text(const logbook::Entry& entry);
// "engine 1 of aircraft ZZ-KIT from 2 May 2024 (K7QXM-88) to 4 March 2026 (K7QXM-120)".
std::string stay_text(const reckon::Stay& stay);
// "aircraft ZZ-KIT in K7QXM-88: written 4300.0 h, now 4300.5 h since K7QXM-530."
std::string moved_text(const reckon::Statement& statement);

}  // namespace words
