#include "command/the_signed.h"

#include <algorithm>
#include <set>

#include "command/named_entry.h"
#include "reckon/aboard.h"
#include "reckon/entry_named.h"
#include "reckon/signing.h"
#include "reckon/work.h"
#include "sentence/frame.h"
#include "text/pieces.h"

namespace command {

namespace {

using logbook::Entry;
using logbook::EntryId;

constexpr std::string_view range_mark = "..";

TheSigned refused_with(std::string sentence) { return {{}, std::move(sentence)}; }

void put_in_order(TheSigned& these) {
  auto& entries = these.entries;
  std::sort(entries.begin(), entries.end(),
            [](const Entry* a, const Entry* b) { return a->id < b->id; });
  entries.erase(std::unique(entries.begin(), entries.end()), entries.end());
}

// Adds every entry from the first to the last; a sentence if that is no range.
std::string add_range(const BookView& view, const std::string& names, TheSigned& these) {
  const std::size_t mark = names.find(range_mark);
  const NamedEntry first = entry_named(view.entries, names.substr(0, mark));
  if (first.entry == nullptr) return first.refusal;
  const NamedEntry last = entry_named(view.entries, names.substr(mark + range_mark.size()));
  if (last.entry == nullptr) return last.refusal;
  if (!logbook::is_range(first.name, last.name)) {
    return "\"" + names +
           "\" is no range: it ends at a later entry of the same base and holds 1000 at most.";
  }
  for (const Entry& entry : view.entries) {
    const bool is_inside = entry.id.writer == first.entry->id.writer &&
                           entry.id.number >= first.entry->id.number &&
                           entry.id.number <= last.entry->id.number;
    if (is_inside) these.entries.push_back(&entry);
  }
  return {};
}

std::string add_named(const BookView& view, const std::string& name, TheSigned& these) {
  if (name.find(range_mark) != std::string::npos) return add_range(view, name, these);
  const NamedEntry named = entry_named(view.entries, name);
  if (named.entry == nullptr) return named.refusal;
  these.entries.push_back(named.entry);
  return {};
}

const Entry* entry_of(const BookView& view, const EntryId& id) {
  const auto found = std::find_if(view.entries.begin(), view.entries.end(),
                                  [&](const Entry& entry) { return entry.id == id; });
  return found == view.entries.end() ? nullptr : &*found;
}

// Where the work was done; looking into an entry was done where that entry happened.
std::optional<logbook::Aircraft> place_of(const BookView& view, const reckon::StandingFact& fact) {
  if (const auto* looked = std::get_if<logbook::LookedInto>(&fact.said->fact)) {
    const auto* into = reckon::find_named(view.standing.facts, looked->entry);
    return into != nullptr ? place_of(view, *into) : std::nullopt;
  }
  const logbook::Fact& what = fact.said->fact;
  if (!reckon::work_in(what) && !reckon::is_work_that_resets(what)) return std::nullopt;
  return reckon::aircraft_at(view.histories(), reckon::subject_of_work(what),
                             view.histories().mark_of(fact.root));
}

// Whether this person signed it well enough: what was signed on paper and does not count yet may
// still be signed with a key.
bool has_signed(const reckon::StandingFact& fact, const logbook::Signed& who) {
  return std::any_of(
      fact.signatures.begin(), fact.signatures.end(), [&](const reckon::SignatureOn& one) {
        const bool is_enough = fact.is_counted || who.how == one.fact->how ||
                               one.fact->how == logbook::SignedHow::with_key;
        return one.why_not == reckon::Unsigned::nothing && one.fact->by == who.by && is_enough;
      });
}

// As many letters as tell the writers of these entries from all others.
std::size_t letters_needed(const std::vector<Entry>& all) {
  std::set<logbook::WriterId> writers;
  for (const Entry& entry : all) writers.insert(entry.id.writer);
  for (std::size_t letters = 5;; ++letters) {
    std::set<std::string> names;
    for (const auto& writer : writers) names.insert(sentence::short_writer(writer, letters));
    if (names.size() == writers.size()) return letters;
  }
}

// Where a run of entries with one number after the other begins, and how many they are.
struct Run {
  std::size_t first = 0;
  std::size_t size = 1;
};

Run longest_run(const std::vector<const Entry*>& entries) {
  Run longest;
  Run now;
  for (std::size_t i = 1; i < entries.size(); ++i) {
    const EntryId& id = entries[i]->id;
    const EntryId& before = entries[i - 1]->id;
    const bool goes_on = id.writer == before.writer && id.number == before.number + 1 &&
                         static_cast<std::int64_t>(now.size) < logbook::most_in_a_range;
    now = goes_on ? Run{now.first, now.size + 1} : Run{i, 1};
    if (now.size > longest.size) longest = now;
  }
  return longest;
}

}  // namespace

TheSigned named_to_sign(const BookView& view, const std::vector<std::string>& names) {
  TheSigned these;
  for (const std::string& name : names) {
    std::string refusal = add_named(view, name, these);
    if (!refusal.empty()) return refused_with(std::move(refusal));
  }
  put_in_order(these);
  return these;
}

TheSigned work_of_visit(const BookView& view, const logbook::Aircraft& aircraft, quantity::Day day,
                        const logbook::Signed& who) {
  TheSigned these;
  for (const reckon::StandingFact& fact : view.standing.facts) {
    const bool is_meant = fact.said->day == day && reckon::wants_signature(fact.said->fact) &&
                          !has_signed(fact, who) && place_of(view, fact) == aircraft;
    if (!is_meant) continue;
    if (const Entry* entry = entry_of(view, fact.chain.back())) these.entries.push_back(entry);
  }
  put_in_order(these);
  if (!these.entries.empty()) return these;
  return refused_with("No work of " + quantity::say(day) + " on " + aircraft.registration.text +
                      " waits for a signature of " + who.by.text + ".");
}

void name_in(logbook::Signed& fact, const TheSigned& these, const std::vector<Entry>& all) {
  const std::size_t letters = letters_needed(all);
  const auto name_of = [&](const Entry* entry) {
    return logbook::EntryName{sentence::short_writer(entry->id.writer, letters), entry->id.number};
  };
  const auto& entries = these.entries;
  const Run run = longest_run(entries);
  fact.entry = name_of(entries[run.first]);
  if (run.size > 1) fact.through = name_of(entries[run.first + run.size - 1]);
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const bool is_in_run = i >= run.first && i < run.first + run.size;
    if (!is_in_run) fact.also.push_back(name_of(entries[i]));
  }
}

}  // namespace command
