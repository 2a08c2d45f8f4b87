// house/habits.h: calls and types that have no place where they stand.
#pragma once

#include "house/source.h"

namespace house {

// Amounts are whole numbers: double and float live in src/reckon/trend and nowhere else in src.
Findings check_doubles(const Source& source);

// A test that waits is slow or wrong, and one that is switched off shows nothing.
Findings check_tests(const Source& source);

// Names say what a thing is: no get_, no Manager, Helper or Util.
Findings check_names(const Source& source);

}  // namespace house
