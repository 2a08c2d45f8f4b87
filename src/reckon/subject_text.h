// reckon/subject_text.h: short stable names of items, for programs that read our answers and for
// comparing one list with another. They are no sentences.
#pragma once

#include <string>

#include "logbook/entry.h"

namespace reckon {

std::string subject_text(const logbook::Thing& thing);  // ZZ-KIT; TS-40 E-1001; PN-4411 B-88
std::string class_text(logbook::TaskClass class_);      // task, inspection, storage step …
std::string entry_text(const logbook::EntryId& id);     // the writer's five letters and the number

}  // namespace reckon
