// reckon/entry_named.h: which entry a sentence means when it names one by its writer's first
// characters and its number (K7QXM-88).
#pragma once

#include <string>
#include <vector>

#include "logbook/entry.h"
#include "reckon/standing_fact.h"

namespace reckon {

// The first letters of a writer, in the base 32 of the frame.
std::string writer_letters(const logbook::WriterId& writer, std::size_t count);

bool is_named(const logbook::EntryName& name, const logbook::EntryId& id);

// The one standing fact whose chain holds an entry of that name; null: none, or more than one.
const StandingFact* find_named(const std::vector<StandingFact>& facts,
                               const logbook::EntryName& name);

}  // namespace reckon
