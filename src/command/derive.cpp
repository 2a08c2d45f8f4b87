#include "command/derive.h"

#include <algorithm>
#include <set>

#include "reckon/histories.h"
#include "reckon/standing.h"

namespace command {

namespace {

const quantity::Day beginning = *quantity::make_day({1900, 1, 1});

// A definition, fitting, correction or strike may reach back: then everything is made anew.
bool only_adds_use(const logbook::Entry& entry) {
  return entry.said && (std::holds_alternative<logbook::Flew>(entry.said->fact) ||
                        std::holds_alternative<logbook::Ran>(entry.said->fact) ||
                        std::holds_alternative<logbook::Tried>(entry.said->fact) ||
                        std::holds_alternative<logbook::Unaccounted>(entry.said->fact));
}

bool changes_no_use(const logbook::Entry& entry) {
  return entry.said && (std::holds_alternative<logbook::Started>(entry.said->fact) ||
                        std::holds_alternative<logbook::Reading>(entry.said->fact) ||
                        std::holds_alternative<logbook::Exceeded>(entry.said->fact) ||
                        std::holds_alternative<logbook::LookedInto>(entry.said->fact) ||
                        std::holds_alternative<logbook::Done>(entry.said->fact) ||
                        std::holds_alternative<logbook::Task>(entry.said->fact) ||
                        std::holds_alternative<logbook::Signed>(entry.said->fact) ||
                        std::holds_alternative<logbook::PersonHolds>(entry.said->fact) ||
                        std::holds_alternative<logbook::PersonEnds>(entry.said->fact) ||
                        std::holds_alternative<logbook::KeyEnds>(entry.said->fact) ||
                        std::holds_alternative<logbook::CountsWork>(entry.said->fact) ||
                        std::holds_alternative<logbook::Reviewed>(entry.said->fact) ||
                        std::holds_alternative<logbook::EngineEvent>(entry.said->fact));
}

struct Reach {
  bool everything = false;
  bool nothing = true;
  quantity::Day from;
  std::set<std::string> aircraft;
};

quantity::Day first_day(const logbook::Said& said) {
  const auto* flew = std::get_if<logbook::Flew>(&said.fact);
  return flew != nullptr && flew->since ? std::min(*flew->since, said.day) : said.day;
}

Reach reach_of(const std::vector<logbook::Entry>& fresh) {
  Reach reach;
  for (const logbook::Entry& entry : fresh) {
    if (changes_no_use(entry)) continue;
    if (!only_adds_use(entry)) reach.everything = true;
    const quantity::Day day = entry.said ? first_day(*entry.said) : beginning;
    reach.from = reach.nothing ? day : std::min(reach.from, day);
    reach.nothing = false;
    for (const logbook::About& about : entry.frame.about) {
      if (about.class_ == "aircraft") reach.aircraft.insert(about.names.front());
    }
  }
  return reach;
}

}  // namespace

void put_derived(const std::vector<logbook::Entry>& all, const std::vector<logbook::Entry>& fresh,
                 quantity::Day today, store::Pen& pen) {
  if (pen.must_derive_anew()) return put_all_derived(all, today, pen);
  const Reach reach = reach_of(fresh);
  if (reach.nothing) return;
  if (reach.everything) return put_all_derived(all, today, pen);
  const reckon::Standing standing = reckon::standing(all, today);
  const reckon::Histories histories(standing, today, reckon::Ambiguous::early);
  for (const std::string& registration : reach.aircraft) {
    pen.replace(histories.derived(logbook::Aircraft{{registration}}, reach.from));
  }
}

void put_all_derived(const std::vector<logbook::Entry>& all, quantity::Day today, store::Pen& pen) {
  const reckon::Standing standing = reckon::standing(all, today);
  const reckon::Histories histories(standing, today, reckon::Ambiguous::early);
  for (const logbook::Thing& thing : histories.things()) {
    const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
    if (aircraft != nullptr) pen.replace(histories.derived(*aircraft, beginning));
  }
}

}  // namespace command
