#include "command/named_entry.h"

#include <algorithm>

#include "sentence/frame.h"
#include "text/pieces.h"
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

// The standing correction that names this entry, if there is one.
const Entry* correction_of(const std::vector<Entry>& entries, const Entry& entry) {
  const Entry* newest = nullptr;
  for (const Entry& other : entries) {
    if (!other.said || !std::holds_alternative<logbook::Corrected>(other.said->fact)) continue;
    const auto& refers = other.frame.refers;
    if (std::find(refers.begin(), refers.end(), entry.id) != refers.end()) newest = &other;
  }
  return newest;
}

bool is_struck(const std::vector<Entry>& entries, const Entry& entry) {
  return std::any_of(entries.begin(), entries.end(), [&](const Entry& other) {
    const auto& refers = other.frame.refers;
    return other.said && std::holds_alternative<logbook::Struck>(other.said->fact) &&
           std::find(refers.begin(), refers.end(), entry.id) != refers.end() &&
           !is_struck(entries, other);
  });
}

}  // namespace

NamedEntry entry_named(const std::vector<Entry>& entries, const std::string& name) {
  const auto hyphen = name.rfind('-');
  if (hyphen == std::string::npos || hyphen < 5) return no_entry(name);
  const auto number = quantity::read_whole(name.substr(hyphen + 1));
  if (!number.is_read()) return no_entry(name);
  const std::string writer = text::upper(name.substr(0, hyphen));
  NamedEntry found = no_entry(name);
  for (const Entry& entry : entries) {
    if (entry.id.number != number.value()) continue;
    if (!sentence::say_writer(entry.id.writer).starts_with(writer)) continue;
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
