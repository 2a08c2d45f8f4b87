#include "report/history_list.h"

#include <algorithm>
#include <map>

#include "reckon/signing.h"
#include "report/history_page.h"
#include "report/pieces.h"
#include "words/chapters.h"
#include "words/grammar.h"
#include "words/signings.h"
#include "words/words.h"

namespace report {

namespace {

using logbook::Entry;
using logbook::EntryId;
using words::Standing;

bool holds(const reckon::StandingFact& fact, const EntryId& id) {
  return fact.root == id || std::find(fact.chain.begin(), fact.chain.end(), id) != fact.chain.end();
}

const reckon::StandingFact* find_fact(const std::vector<reckon::StandingFact>& facts,
                                      const EntryId& id) {
  const auto found =
      std::find_if(facts.begin(), facts.end(), [&](const auto& fact) { return holds(fact, id); });
  return found == facts.end() ? nullptr : &*found;
}

const logbook::EntryName* named_by(const Entry& entry) {
  if (!entry.said) return nullptr;
  if (const auto* it = std::get_if<logbook::Corrected>(&entry.said->fact)) return &it->entry;
  if (const auto* it = std::get_if<logbook::Struck>(&entry.said->fact)) return &it->entry;
  return nullptr;
}

bool is_strike(const Entry& entry) {
  return entry.said && std::holds_alternative<logbook::Struck>(entry.said->fact);
}

// The entries in the order of their days, each first entry with all that was said about it since.
class Chapters {
 public:
  explicit Chapters(const std::vector<const Entry*>& entries) {
    for (const Entry* entry : entries) by_id_[entry->id] = entry;
    for (const Entry* entry : entries) chapters_[root_of(entry)->id].push_back(entry);
    for (auto& [root, entries_of] : chapters_) order_.push_back(by_id_[root]);
    std::stable_sort(order_.begin(), order_.end(), [](const Entry* a, const Entry* b) {
      const auto key = [](const Entry* entry) {
        return entry->said ? entry->said->day.count() : entry->frame.written.count() / 86'400;
      };
      return key(a) < key(b);
    });
  }
  const std::vector<const Entry*>& roots() const { return order_; }
  const std::vector<const Entry*>& of(const Entry* root) const { return chapters_.at(root->id); }
  // By a strike that stands itself.
  bool is_struck(const Entry& entry) const {
    const auto& chapter = chapters_.at(root_of(&entry)->id);
    return std::any_of(chapter.begin(), chapter.end(), [&](const Entry* other) {
      return is_strike(*other) && target_of(other) == &entry && !is_struck(*other);
    });
  }

 private:
  // What a correction or strike names, as the frame's full ids tell.
  const Entry* target_of(const Entry* entry) const {
    const logbook::EntryName* name = named_by(*entry);
    if (name == nullptr) return nullptr;
    for (const EntryId& id : entry->frame.refers) {
      const auto found = by_id_.find(id);
      if (found != by_id_.end() && id.number == name->number) return found->second;
    }
    return nullptr;
  }
  const Entry* root_of(const Entry* entry) const {
    for (std::size_t steps = by_id_.size(); steps > 0; --steps) {
      const Entry* target = target_of(entry);
      if (target == nullptr) return entry;
      entry = target;
    }
    return entry;
  }

  std::map<EntryId, const Entry*> by_id_;
  std::map<EntryId, std::vector<const Entry*>> chapters_;
  std::vector<const Entry*> order_;
};

Standing standing_of(const Entry& entry, const Chapters& chapters,
                     const reckon::Standing& standing) {
  if (chapters.is_struck(entry) || find_fact(standing.struck, entry.id) != nullptr) {
    return Standing::struck;
  }
  if (is_strike(entry)) return Standing::counts;
  const reckon::StandingFact* fact = find_fact(standing.facts, entry.id);
  if (fact == nullptr) return Standing::not_counted;
  const bool is_newest = fact->chain.empty() || fact->chain.back() == entry.id;
  if (!is_newest) return Standing::corrected;
  return fact->is_counted ? Standing::counts : Standing::not_counted;
}

// What the entry says now: what was corrected or struck, and a strike, say nothing that is signed.
const reckon::StandingFact* said_by(const Entry& entry, Standing how,
                                    const reckon::Standing& standing) {
  const bool says_it = how == Standing::counts || how == Standing::not_counted;
  return says_it && !is_strike(entry) ? find_fact(standing.facts, entry.id) : nullptr;
}

// Of a sentence that stands: how it was signed. Flights and readings are signed by nobody, so
// nothing is said of them unless somebody did.
std::string signed_words(const Entry& entry, Standing how, const reckon::Standing& standing) {
  const reckon::StandingFact* fact = said_by(entry, how, standing);
  if (fact == nullptr) return {};
  const bool is_told = !fact->signatures.empty() || reckon::wants_signature(fact->said->fact);
  return is_told ? words::signed_text(*fact) : std::string();
}

std::vector<document::Cell> row_of(const Entry& entry, Standing how,
                                   const reckon::Standing& standing) {
  std::vector<document::Cell> row = {words_cell(words::entry_name(entry.id)),
                                     words_cell(words::chapter_text(entry)),
                                     words_cell(std::string(words::standing_word(how)))};
  if (standing.has_signing) row.push_back(words_cell(signed_words(entry, how, standing)));
  return row;
}

document::Table table_of(const Chapters& chapters, const HistoryPage& about,
                         const reckon::Standing& standing) {
  document::Table table{"entries",
                        {{"entry", "Entry", document::Align::left},
                         {"sentence", "What it says", document::Align::left},
                         {"standing", "Standing", document::Align::left}},
                        {},
                        words::fill("No entry is about {}.", {about.title_of})};
  if (standing.has_signing) {
    table.columns.push_back({"signed", "Signed", document::Align::left});
  }
  for (const Entry* root : chapters.roots()) {
    for (const Entry* entry : chapters.of(root)) {
      table.rows.push_back(row_of(*entry, standing_of(*entry, chapters, standing), standing));
    }
  }
  return table;
}

document::Json signatures_json(const reckon::StandingFact* fact) {
  document::Json array = document::Json::array();
  if (fact == nullptr) return array;
  for (const reckon::SignatureOn& signature : fact->signatures) {
    document::Json object = document::Json::object();
    object.set("entry", words::entry_name(signature.entry)).set("by", signature.fact->by.text);
    object.set("certificate", signature.fact->certificate.value_or(""));
    object.set("day", quantity::say(signature.day));
    object.set("page", signature.fact->page.value_or(""));
    object.set("counts", signature.why_not == reckon::Unsigned::nothing);
    array.add(object.set("why_not", words::why_not_text(signature.why_not)));
  }
  return array;
}

// Only the newest entry of a chain is signed: what stood before it has no state of its own.
void set_signed(const Entry& entry, Standing how, const reckon::Standing& standing,
                document::Json& object) {
  const reckon::StandingFact* fact = said_by(entry, how, standing);
  object.set("signed", fact != nullptr ? document::Json(words::sign_state_word(fact->sign_state))
                                       : document::Json());
  object.set("signatures", signatures_json(fact));
}

document::Json entries_json(const Chapters& chapters, const reckon::Standing& standing) {
  document::Json array = document::Json::array();
  for (const Entry* root : chapters.roots()) {
    for (const Entry* entry : chapters.of(root)) {
      const Standing how = standing_of(*entry, chapters, standing);
      document::Json object = document::Json::object();
      object.set("entry", words::entry_name(entry->id));
      object.set("day",
                 entry->said ? document::Json(quantity::say(entry->said->day)) : document::Json());
      object.set("sentence", entry->sentence).set("about_entry", words::entry_name(root->id));
      object.set("standing", how == Standing::counts ? "counts" : words::standing_word(how));
      set_signed(*entry, how, standing, object);
      array.add(object.set("written", quantity::say(entry->frame.written)));
    }
  }
  return array;
}

document::Json stays_json(const std::vector<reckon::Stay>& stays) {
  document::Json array = document::Json::array();
  for (const reckon::Stay& stay : stays) {
    document::Json object = document::Json::object();
    object.set("host", words::thing_name(stay.host)).set("place", stay.place.text);
    object.set("from", quantity::say(stay.from.day));
    object.set("to", stay.to ? day_json(stay.to->day) : document::Json());
    array.add(std::move(object));
  }
  return array;
}

document::Json moved_json(const std::vector<reckon::Statement>& moved) {
  document::Json array = document::Json::array();
  for (const reckon::Statement& one : moved) {
    document::Json object = document::Json::object();
    object.set("entry", words::entry_name(one.entry)).set("thing", words::thing_name(one.thing));
    object.set("written", figure_json(one.stated, Toward::up));
    object.set("now", figure_json(one.reckoned, Toward::up));
    object.set("since",
               one.moved_by ? document::Json(words::entry_name(*one.moved_by)) : document::Json());
    array.add(std::move(object));
  }
  return array;
}

void add_moved(const std::vector<reckon::Statement>& moved, document::Document& page) {
  if (!moved.empty()) page.blocks.emplace_back(document::Heading{"Totals that have moved since"});
  for (const reckon::Statement& one : moved) {
    page.blocks.emplace_back(document::Paragraph{words::capital(words::moved_text(one))});
  }
}

// Those that agreed with the book when they were written.
std::vector<reckon::Statement> moved_of(const reckon::Histories& histories,
                                        const std::vector<const Entry*>& entries) {
  std::vector<reckon::Statement> moved;
  for (const reckon::Statement& one : histories.statements()) {
    const bool has_moved = one.agreed_when_written && one.stated.raw() != one.reckoned.raw();
    const bool is_here = std::any_of(entries.begin(), entries.end(),
                                     [&](const Entry* entry) { return entry->id == one.entry; });
    if (has_moved && one.moved_by && is_here) moved.push_back(one);
  }
  return moved;
}

}  // namespace

Answer history_page(const HistoryPage& about, const reckon::Standing& standing,
                    const Sheet& sheet) {
  const Chapters chapters(about.entries);
  Answer answer;
  document::Document& page = answer.document;
  page.title = words::fill("History of {}", {about.title_of});
  page.head = {as_of_line(sheet)};
  if (!about.totals.empty()) {
    page.blocks.emplace_back(document::Paragraph{totals_text(about.totals)});
  }
  page.blocks.emplace_back(table_of(chapters, about, standing));
  if (!about.stays.empty()) page.blocks.emplace_back(document::Heading{"Where it was fitted"});
  for (const reckon::Stay& stay : about.stays) {
    page.blocks.emplace_back(document::Paragraph{words::stay_text(stay)});
  }
  add_moved(about.moved, page);
  add_foot(page, sheet);
  answer.json = json_head(sheet);
  answer.json.set("about", about.title_of).set("entries", entries_json(chapters, standing));
  answer.json.set("moved", moved_json(about.moved));
  answer.json.set("stays", stays_json(about.stays)).set("totals", totals_json(about.totals));
  return answer;
}

Answer history_list(const reckon::Histories& histories, const reckon::Standing& standing,
                    const HistoryOf& of, const Sheet& sheet) {
  HistoryPage about{of.title_of, of.entries, {}, {}, moved_of(histories, of.entries)};
  for (const logbook::Thing& thing : histories.things()) {
    if (words::thing_name(thing) != of.title_of) continue;
    about.stays = histories.stays(thing);
    about.totals = totals_of(histories, thing);
  }
  return history_page(about, standing, sheet);
}

}  // namespace report
