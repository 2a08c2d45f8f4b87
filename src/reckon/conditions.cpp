#include "reckon/conditions.h"

#include <algorithm>
#include <map>

namespace reckon {
namespace {

using Need = logbook::Need;

bool is_engine(const logbook::Thing& thing) {
  return std::holds_alternative<logbook::Engine>(thing);
}

Missing about(Condition condition, const logbook::Thing& thing) {
  Missing missing;
  missing.condition = condition;
  missing.thing = thing;
  return missing;
}

// An airframe's total begins with what is brought forward, also when that is nothing.
bool has_total(const Asked& asked, const logbook::Thing& thing) {
  const Histories& histories = asked.view.histories;
  const bool is_aircraft = std::holds_alternative<logbook::Aircraft>(thing);
  if (is_aircraft && !histories.brought_forward_day(thing)) return false;
  return !histories.total(thing, service_clock, asked.view.now()).figure.is_unknown();
}

void add_totals(const Asked& asked, std::vector<Missing>& missing) {
  for (const logbook::Thing& thing : asked.aboard) {
    const bool is_needed = is_engine(thing) || std::holds_alternative<logbook::Aircraft>(thing);
    if (is_needed && !has_total(asked, thing)) missing.push_back(about(Condition::totals, thing));
  }
}

bool is_general(const logbook::Scope& scope) {
  return std::holds_alternative<logbook::Model>(scope) ||
         std::holds_alternative<logbook::PartKind>(scope);
}

// The places of a host; what is said of the one thing stands over what is said of its model.
std::map<logbook::PlaceName, Need> places_of(const Asked& asked, const logbook::Thing& host) {
  std::map<logbook::PlaceName, Need> places;
  for (const bool wants_general : {true, false}) {
    for (const StandingFact& fact : asked.view.standing.facts) {
      const auto* place = std::get_if<logbook::HasPlace>(&fact.said->fact);
      if (place == nullptr || is_general(place->scope) != wants_general) continue;
      if (reaches(asked.view.histories, place->scope, host)) places[place->place] = place->need;
    }
  }
  return places;
}

void add_empty_places(const Asked& asked, const logbook::Thing& host,
                      std::vector<Missing>& missing) {
  const std::vector<Stay> fitted = asked.view.histories.fitted_now(host);
  for (const auto& wanted : places_of(asked, host)) {
    const auto is_there = [&](const Stay& stay) { return stay.place == wanted.first; };
    if (wanted.second == Need::optional) continue;
    if (std::any_of(fitted.begin(), fitted.end(), is_there)) continue;
    missing.push_back(about(Condition::places, host));
    missing.back().place = wanted.first;
  }
}

void add_places(const Asked& asked, std::vector<Missing>& missing) {
  const std::size_t before = missing.size();
  for (const logbook::Thing& host : asked.aboard) add_empty_places(asked, host, missing);
  const bool has_engine = std::any_of(asked.aboard.begin(), asked.aboard.end(), is_engine);
  if (!has_engine && missing.size() == before) {
    missing.push_back(about(Condition::places, asked.aircraft));
  }
}

// An inspection of anything aboard, or a task on the aircraft or its model.
bool is_of_programme(const Asked& asked, const TaskInForce& rule) {
  const auto reaches_thing = [&](const logbook::Thing& thing) {
    return reaches(asked.view.histories, rule.task->scope, thing);
  };
  if (rule.task->class_ == logbook::TaskClass::inspection) {
    return std::any_of(asked.aboard.begin(), asked.aboard.end(), reaches_thing);
  }
  return rule.task->class_ == logbook::TaskClass::task && reaches_thing(asked.aircraft);
}

// For what an item is not known, or one of its sides while another is due or over.
Lack lack_of(const Item& item) {
  if (item.state == State::not_known) return item.lack;
  const auto side = std::find_if(item.sides.begin(), item.sides.end(),
                                 [](const Side& one) { return one.lack != Lack::nothing; });
  return side == item.sides.end() ? Lack::nothing : side->lack;
}

bool is_lacking(const Item& item) {
  return item.state == State::not_known || lack_of(item) != Lack::nothing;
}

bool wants_a_done(const Item& item) {
  const Lack lack = lack_of(item);
  return item.kind == Item::Kind::task && (lack == Lack::last_done || lack == Lack::due_point);
}

// The side for whose lack the item is not known, else the one that governs.
const Side* lacking_side(const Item& item) {
  const Lack lack = lack_of(item);
  const bool is_governing = item.state == State::not_known && lack != Lack::total_at_least;
  for (const Side& side : item.sides) {
    if (!is_governing && side.lack == lack) return &side;
  }
  return item.governs < 0 ? nullptr : &item.sides[static_cast<std::size_t>(item.governs)];
}

Missing about_item(Condition condition, const Item& item) {
  Missing missing = about(condition, item.thing);
  missing.lack = lack_of(item);
  missing.entries = {item.entry};
  if (item.task != nullptr) {
    missing.task = item.task->name;
    missing.task_class = item.task->class_;
  }
  const Side* side = lacking_side(item);
  if (side == nullptr) return missing;
  missing.since = side->since;
  if (!side->is_calendar) missing.clock = side->clock;
  return missing;
}

void add_programme(const Asked& asked, std::vector<Missing>& missing) {
  const auto& tasks = asked.view.rules.tasks;
  const bool has_programme = std::any_of(tasks.begin(), tasks.end(), [&](const TaskInForce& rule) {
    return is_of_programme(asked, rule);
  });
  if (!has_programme) missing.push_back(about(Condition::programme, asked.aircraft));
  for (const Item& item : asked.items) {
    if (wants_a_done(item)) missing.push_back(about_item(Condition::programme, item));
  }
}

void add_limits(const Asked& asked, std::vector<Missing>& missing) {
  const View& view = asked.view;
  for (const logbook::Thing& thing :
       things_without_limit(view.histories, view.standing, asked.aircraft)) {
    missing.push_back(about(Condition::limits, thing));
  }
}

void add_unknown(const Asked& asked, std::vector<Missing>& missing) {
  for (const Item& item : asked.items) {
    if (!is_lacking(item) || wants_a_done(item)) continue;
    missing.push_back(about_item(Condition::unknown_read, item));
  }
}

}  // namespace

std::vector<Missing> missing_of_aircraft(const Asked& asked) {
  std::vector<Missing> missing;
  add_totals(asked, missing);
  add_places(asked, missing);
  add_programme(asked, missing);
  add_limits(asked, missing);
  add_unknown(asked, missing);
  return missing;
}

}  // namespace reckon
