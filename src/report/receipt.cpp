#include "report/receipt.h"

#include <algorithm>
#include <map>
#include <set>

#include "report/counting_notices.h"
#include "report/pieces.h"
#include "report/receipt_page.h"
#include "report/start_notices.h"
#include "words/dues.h"
#include "words/figures.h"
#include "words/names.h"
#include "words/receipts.h"
#include "words/words.h"

namespace report {

namespace {

using document::Json;
using document::Paragraph;
using logbook::CounterKind;
using reckon::Item;
using reckon::Side;

constexpr std::size_t most_told = 10;

// The most that the entries used of the side's clock, on the airframe or at one of its places.
std::int64_t used_by_entries(const Touched& touched, const Side& side) {
  const std::string unit = words::unit_key(side);
  std::string key = unit;
  if (unit == "h") key = "hours";
  if (unit.starts_with("h ")) key = "meter " + unit.substr(2);
  std::int64_t airframe = 0;
  std::map<std::string, std::int64_t> places;
  for (const logbook::UseRow& row : touched.used) {
    if (row.key != key) continue;
    (row.place.empty() ? airframe : places[row.place]) += row.amount;
  }
  for (const auto& [place, amount] : places) airframe = std::max(airframe, amount);
  return airframe;
}

// It was not over before these entries.
bool went_over(const Touched& touched, const Side& side) {
  if (side.is_calendar || !side.left || side.left->raw() >= 0) return false;
  return side.left->raw() + used_by_entries(touched, side) >= 0;
}

bool is_one_flight(const Saved& saved) {
  return saved.entries.size() == 1 && saved.entries.front().said &&
         std::holds_alternative<logbook::Flew>(saved.entries.front().said->fact);
}

void say_over(const Touched& touched, const Saved& saved, document::Document& page) {
  for (const Item& item : touched.items) {
    const Side* side = words::governing(item);
    if (item.state != reckon::State::over || side == nullptr) continue;
    const bool is_by_this = item.mixed == nullptr && went_over(touched, *side);
    say(is_by_this ? words::went_over_text(item, *side, is_one_flight(saved))
                   : words::attention_text(item),
        page);
  }
}

std::string next_of(const Touched& touched) {
  for (const Item& item : touched.items) {
    const bool is_ahead = item.state == reckon::State::ok || item.state == reckon::State::soon ||
                          item.state == reckon::State::due;
    if (is_ahead && item.kind != Item::Kind::on_condition) {
      return " Next: " + words::next_text(item) + ".";
    }
  }
  return {};
}

void say_touched(const Touched& touched, const Saved& saved, document::Document& page) {
  say_over(touched, saved, page);
  say(words::now_has_text(touched.thing, touched.hours, touched.count, touched.counter) +
          next_of(touched),
      page);
}

Json touched_json(const Touched& touched) {
  Json object = Json::object();
  object.set("about", words::thing_name(touched.thing));
  object.set("hours", figure_json(touched.hours, Toward::up));
  object.set("shown", words::figure_used(touched.hours, reckon::service_clock));
  object.set(words::counter_name(touched.counter, false), figure_json(touched.count, Toward::up));
  return object.set("items", items_json(touched.items));
}

Json receipt_json(const Saved& saved, const std::vector<Touched>& touched, const Sheet& sheet) {
  Json entries = Json::array();
  for (const logbook::Entry& entry : saved.entries) {
    Json object = Json::object();
    object.set("entry", words::entry_name(entry.id)).set("sentence", entry.sentence);
    entries.add(std::move(object));
  }
  Json totals = Json::array();
  for (const Touched& one : touched) totals.add(touched_json(one));
  Json notices = Json::array();
  for (const std::string& notice : saved.notices) notices.add(notice);
  Json json = json_head(sheet);
  json.set("saved", std::move(entries)).set("now", std::move(totals));
  return json.set("notices", std::move(notices));
}

// What the frames list: aircraft first; engines and parts only where no aircraft is touched.
std::vector<logbook::Thing> things_of(const Saved& saved, const std::string& class_) {
  std::vector<logbook::Thing> things;
  const auto add = [&](const logbook::Thing& thing) {
    if (std::find(things.begin(), things.end(), thing) == things.end()) things.push_back(thing);
  };
  for (const logbook::Entry& entry : saved.entries) {
    for (const logbook::About& about : entry.frame.about) {
      if (about.class_ != class_ || about.names.empty()) continue;
      if (class_ == "aircraft") add(logbook::Aircraft{{about.names[0]}});
      if (class_ == "engine") add(logbook::Engine{{about.names[0]}, {about.names.at(1)}});
      if (class_ == "part") add(logbook::Part{{about.names[0]}, {about.names.at(1)}});
    }
  }
  return things;
}

std::vector<logbook::Thing> touched_things(const Saved& saved) {
  for (const char* class_ : {"aircraft", "engine", "part"}) {
    auto things = things_of(saved, class_);
    if (!things.empty()) return things;
  }
  return {};
}

std::vector<logbook::UseRow> used_by(const reckon::Histories& histories,
                                     const logbook::Aircraft& aircraft, const Saved& saved) {
  quantity::Day first = saved.today;
  std::set<logbook::EntryId> ids;
  for (const logbook::Entry& entry : saved.entries) {
    if (entry.said) first = std::min(first, entry.said->day);
    ids.insert(entry.id);
  }
  std::vector<logbook::UseRow> rows = histories.derived(aircraft, first).uses;
  std::erase_if(rows, [&](const logbook::UseRow& row) { return !ids.contains(row.entry); });
  return rows;
}

Touched touched_of(const reckon::Histories& histories, const reckon::Standing& standing,
                   const logbook::Thing& thing, const Saved& saved) {
  Touched touched;
  touched.thing = thing;
  touched.hours = histories.total(thing, reckon::service_clock, histories.now()).figure;
  const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
  touched.counter.kind = aircraft != nullptr ? CounterKind::landings : CounterKind::starts;
  if (!std::holds_alternative<logbook::Part>(thing)) {
    touched.count = histories.total(thing, touched.counter, histories.now()).figure;
  }
  if (aircraft == nullptr) return touched;
  touched.items = reckon::due(histories, standing, *aircraft, {});
  touched.used = used_by(histories, *aircraft, saved);
  return touched;
}

std::vector<std::string> rule_notices(const reckon::Histories& histories,
                                      const reckon::Standing& standing, const Saved& saved) {
  std::vector<std::string> notices;
  for (const logbook::Entry& entry : saved.entries) {
    if (!entry.said) continue;
    for (const auto& rule : reckon::unreached(entry.said->fact, histories, standing)) {
      const std::string text = words::unreached_text(rule);
      const bool is_new = std::find(notices.begin(), notices.end(), text) == notices.end();
      if (is_new) notices.push_back(text);
    }
  }
  return notices;
}

}  // namespace

Answer receipt_page(const Saved& saved, const std::vector<Touched>& touched, const Sheet& sheet) {
  Answer answer;
  document::Document& page = answer.document;
  if (saved.entries.size() > most_told) {
    say(words::saved_many_text(saved.entries), page);
  } else {
    for (const logbook::Entry& entry : saved.entries) {
      say(words::saved_text(entry, saved.day_was_left_out), page);
    }
  }
  for (const Touched& one : touched) say_touched(one, saved, page);
  for (const std::string& notice : saved.notices) say(notice, page);
  answer.json = receipt_json(saved, touched, sheet);
  for (const Touched& one : touched) {
    if (wants_attention(one.items)) answer.needs_attention = true;
  }
  return answer;
}

Answer receipt(const reckon::Histories& histories, const reckon::Standing& standing,
               const Saved& saved, const Sheet& sheet) {
  std::vector<Touched> touched;
  for (const logbook::Thing& thing : touched_things(saved)) {
    const auto& things = histories.things();
    if (std::find(things.begin(), things.end(), thing) == things.end()) continue;
    touched.push_back(touched_of(histories, standing, thing, saved));
  }
  Saved told = saved;
  for (std::string& notice : rule_notices(histories, standing, saved)) {
    told.notices.push_back(std::move(notice));
  }
  for (std::string& notice : start_notices(histories, standing, saved)) {
    told.notices.push_back(std::move(notice));
  }
  for (std::string& notice : counting_notices(standing, saved)) {
    told.notices.push_back(std::move(notice));
  }
  return receipt_page(told, touched, sheet);
}

}  // namespace report
