// sentence/walk.h: going through all values of a sentence in the order in which they are written.
#pragma once

#include <functional>

#include "sentence/table.h"

namespace sentence {

// Called for each value that is said, outer ones before what they hold. The sentence inside a
// correction is gone through too.
using Visit = std::function<void(const Sort& sort, const void* value)>;
void walk(const logbook::Said& said, const Visit& visit);

}  // namespace sentence
