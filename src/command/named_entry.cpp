#include "command/named_entry.h"

#include <algorithm>

#include "reckon/entry_named.h"
#include "sentence/frame.h"
#include "words/words.h"

namespace command {

namespace {

using logbook::Entry;

NamedEntry no_entry(const std::string& name) {
  NamedEntry none;
  none.refusal = "There is no entry \"" + name +
                 "\". An entry's name looks like K7QXM-123; timeworn history shows them.";
  return none;
}

NamedEntry named(const Entry& entry) {
  return {&entry, {sentence::short_writer(entry.id.writer), entry.id.number}, {}};
}

// Whether the other entry corrects or strikes this one. The sentence inside a correction may name
// entries as well, so that its frame refers to more than it corrects.
template <class Amendment>
bool amends(const Entry& other, const Entry& entry) {
  const auto* amendment = other.said ? std::get_if<Amendment>(&other.said->fact) : nullptr;
  const auto& refers = other.frame.refers;
  return amendment != nullptr && reckon::is_named(amendment->entry, entry.id) &&
         std::find(refers.begin(), refers.end(), entry.id) != refers.end();
}

// The newest correction that names this entry, if there is one.
const Entry* correction_of(const std::vector<Entry>& entries, const Entry& entry) {
  const auto newest = std::find_if(entries.rbegin(), entries.rend(), [&](const Entry& other) {
    return amends<logbook::Corrected>(other, entry);
  });
  return newest == entries.rend() ? nullptr : &*newest;
}

bool is_struck(const std::vector<Entry>& entries, const Entry& entry) {
  return std::any_of(entries.begin(), entries.end(), [&](const Entry& other) {
    return amends<logbook::Struck>(other, entry) && !is_struck(entries, other);
  });
}

}  // namespace

NamedEntry entry_named(const std::vector<Entry>& entries, const std::string& name) {
  const auto read = sentence::read_entry_name(name);
  NamedEntry found = no_entry(name);
  if (!read) return found;
  for (const Entry& entry : entries) {
    if (!reckon::is_named(*read, entry.id)) continue;
    if (found.entry != nullptr) {
      found.entry = nullptr;
      found.refusal = "\"" + name + "\" can mean two entries. Write more letters of it.";
      return found;
    }
    found = named(entry);
  }
  return found;
}

NamedEntry newest_of_chain(const std::vector<Entry>& entries, const std::string& name) {
  NamedEntry found = entry_named(entries, name);
  if (found.entry == nullptr) return found;
  for (const Entry* next = correction_of(entries, *found.entry); next != nullptr;
       next = correction_of(entries, *next)) {
    if (is_struck(entries, *next)) break;
    found = named(*next);
  }
  return found;
}

std::string words_of_a_bad_change(const std::string& clauses, const sentence::Read& read) {
  return words::misreadings_text(clauses, read.wrong);
}

}  // namespace command
