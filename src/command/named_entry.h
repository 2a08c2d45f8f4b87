// command/named_entry.h: which entry a person means by a name such as K7QXM-123.
#pragma once

#include <string>
#include <vector>

#include "logbook/entry.h"
#include "sentence/sentence.h"

namespace command {

struct NamedEntry {
  const logbook::Entry* entry = nullptr;
  logbook::EntryName name;  // as it stands in sentences
  std::string refusal;      // a sentence, if there is no such entry or more than one
};

NamedEntry entry_named(const std::vector<logbook::Entry>& entries, const std::string& name);
// The newest correction of the chain to which the named entry belongs, or the entry itself.
NamedEntry newest_of_chain(const std::vector<logbook::Entry>& entries, const std::string& name);

// What is wrong with the words of a change, pointing at them.
std::string words_of_a_bad_change(const std::string& clauses, const sentence::Read& read);

}  // namespace command
