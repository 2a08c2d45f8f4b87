#include "reckon/check_work.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/check_hours.h"
#include "reckon/check_names.h"
#include "reckon/use.h"
#include "reckon/work.h"

namespace reckon {

namespace {

using logbook::Engine;
using logbook::Had;
using logbook::Thing;

const std::vector<Had>& had_in(const logbook::Fact& fact) {
  static const std::vector<Had> none;
  if (const auto* fitted = std::get_if<logbook::Fitted>(&fact)) return fitted->with;
  if (const auto* removed = std::get_if<logbook::Removed>(&fact)) return removed->with;
  if (const auto* overhauled = std::get_if<logbook::Overhauled>(&fact)) return overhauled->had;
  return none;
}
const std::vector<logbook::Count>& counts_in(const logbook::Fact& fact) {
  static const std::vector<logbook::Count> none;
  const auto* done = std::get_if<logbook::Done>(&fact);
  return done != nullptr ? done->counts : none;
}
std::optional<Thing> fitted_thing(const logbook::Fact& fact) {
  if (const auto* fitted = std::get_if<logbook::Fitted>(&fact)) return fitted->thing;
  if (const auto* removed = std::get_if<logbook::Removed>(&fact)) return removed->thing;
  if (const auto* overhauled = std::get_if<logbook::Overhauled>(&fact)) return overhauled->thing;
  return std::nullopt;
}

// The places of the day at which the fact may stand: the start, after each flight, the end. An
// entry on record has its place.
std::vector<Mark> places_of(const Placed& placed, const WorkPast& past) {
  if (!is_new(placed)) return {past.histories.mark_of(placed.id)};
  const Day day = placed.said->day;
  const auto stated = work_in(placed.said->fact);
  if (stated && stated->is_before_first) return {{day, 0}};
  if (stated && stated->is_after_last) return {{day, end_of_day}};
  std::vector<Mark> places{{day, 0}};
  if (past.uses != nullptr) {
    for (const Placed& use : past.uses->on(day)) places.push_back(past.histories.mark_of(use.id));
  }
  places.push_back({day, end_of_day});
  return places;
}

struct WorkCheck {
  const Placed& placed;
  const WorkPast& past;
  std::vector<Mark> places;
  Objections& objections;

  const Histories& histories() const { return past.histories; }
  const Mark& last_place() const { return places.back(); }
};

enum class Since { new_, overhaul };
struct Stated {
  Thing thing;
  Clock clock;
  Figure figure;
  Since since = Since::new_;
  logbook::Grade grade = logbook::Grade::exact;
};

bool is_on_record(const Histories& histories, const Thing& thing) {
  const auto& things = histories.things();
  return std::binary_search(things.begin(), things.end(), thing);
}

Figure reckoned_at(const WorkCheck& work, const Stated& stated, const Mark& mark) {
  const Total total = stated.since == Since::new_
                          ? work.histories().total(stated.thing, stated.clock, mark)
                          : work.histories().since_overhaul(stated.thing, stated.clock, mark);
  return total.figure;
}

bool is_met_by(const Stated& stated, const Figure& reckoned) {
  if (agree_as_totals(stated.figure, reckoned)) return true;
  const bool is_below = reckoned.compare(stated.figure) < 0;
  if (stated.grade == logbook::Grade::at_least) return !is_below;
  return reckoned.sureness() == Sureness::at_least && is_below;
}

// What the record has at the fact's place, unless it is met there, or nothing is known there.
std::optional<Figure> unmet(const WorkCheck& work, const Stated& stated) {
  if (!is_on_record(work.histories(), stated.thing)) return std::nullopt;
  if (stated.grade == logbook::Grade::by_default) return std::nullopt;
  for (const Mark& mark : work.places) {
    const Figure reckoned = reckoned_at(work, stated, mark);
    if (reckoned.is_unknown() || is_met_by(stated, reckoned)) return std::nullopt;
  }
  return reckoned_at(work, stated, work.last_place());
}

// Before its brought-forward day an aircraft has no flights: stated figures are the source there.
bool has_history(const WorkCheck& work, const Thing& thing) {
  const std::optional<Day> begins = work.histories().brought_forward_day(thing);
  return !begins || work.placed.said->day >= *begins;
}

constexpr std::int64_t near_hours_raw = std::int64_t{24} * 3600 * 1000;

// A figure far from its own clock and near what another shows was read on the wrong one.
std::optional<logbook::MeterName> meter_read_instead(const WorkCheck& work, const Stated& stated,
                                                     const Figure& reckoned) {
  const auto* aircraft = std::get_if<logbook::Aircraft>(&stated.thing);
  if (aircraft == nullptr || apart(stated.figure, reckoned).raw() <= near_hours_raw) {
    return std::nullopt;
  }
  if (work.past.uses == nullptr) return std::nullopt;
  for (const logbook::MeterName& meter : work.past.uses->meters().names()) {
    const auto reading = work.histories().meter(*aircraft, meter, work.last_place());
    if (!reading) continue;
    const Figure shown = reading_figure(reading->reading);
    if (apart(stated.figure, shown).raw() <= near_hours_raw) return meter;
  }
  return std::nullopt;
}

void check_airframe(WorkCheck& work, const logbook::Aircraft& aircraft, quantity::Hours hours) {
  if (!has_history(work, aircraft)) return;
  const Stated stated{aircraft, service_clock, hours_figure(hours)};
  const auto reckoned = unmet(work, stated);
  if (!reckoned) return;
  const auto meter = meter_read_instead(work, stated, *reckoned);
  work.objections.push_back(with_figures(
      doubt(meter ? CheckKind::wrong_clock : CheckKind::stated_total_differs, "airframe"),
      stated.figure, *reckoned));
  if (meter) work.objections.back().names = {meter->text};
}

void check_meter(WorkCheck& work, const logbook::Aircraft& aircraft,
                 const logbook::MeterReading& reading) {
  const logbook::Fact& fact = work.placed.said->fact;
  const Figure stated = reading_figure(reading.reading);
  const bool ends_the_meter = std::holds_alternative<logbook::MeterChanged>(fact) ||
                              std::holds_alternative<logbook::MeterLost>(fact);
  if (work.past.uses != nullptr && !ends_the_meter) {
    work.past.uses->meters().check_stated(work.placed, reading, work.objections);
  }
  // Once it is on record, the meter shown in its place is the new one already.
  if (ends_the_meter && !is_new(work.placed)) return;
  const auto shown = work.histories().meter(aircraft, reading.meter, work.last_place());
  const Figure airframe = work.histories().total(aircraft, service_clock, work.last_place()).figure;
  if (!shown || airframe.is_unknown()) return;
  const Figure reckoned = reading_figure(shown->reading);
  if (apart(stated, reckoned).raw() <= near_hours_raw) return;
  if (apart(stated, airframe).raw() > near_hours_raw) return;
  std::erase_if(work.objections, [](const Objection& each) { return each.slot == "meter"; });
  work.objections.push_back(with_figures(doubt(CheckKind::wrong_clock, "meter"), stated, reckoned));
  work.objections.back().names = {reading.meter.text};
}

std::vector<Engine> engines_on(const WorkCheck& work, const logbook::Aircraft& aircraft) {
  std::vector<Engine> engines;
  for (const Thing& thing : work.histories().things()) {
    const auto* engine = std::get_if<Engine>(&thing);
    if (engine == nullptr) continue;
    if (aircraft_at(work.histories(), thing, work.last_place()) == aircraft) {
      engines.push_back(*engine);
    }
  }
  return engines;
}

// The engine that a stated engine total is about: the thing itself, the one around it, or the only
// one aboard.
void check_engine(WorkCheck& work, const Thing& subject, quantity::Hours hours) {
  auto engine = std::holds_alternative<Engine>(subject)
                    ? std::optional(std::get<Engine>(subject))
                    : engine_at(work.histories(), subject, work.last_place());
  const auto aircraft = aircraft_at(work.histories(), subject, work.last_place());
  if (!engine && aircraft) {
    const std::vector<Engine> engines = engines_on(work, *aircraft);
    if (engines.size() > 1) {
      work.objections.push_back(doubt(CheckKind::not_on_a_twin, "engine"));
      work.objections.back().stated = hours_figure(hours);
      for (const Engine& each : engines) work.objections.back().names.push_back(thing_text(each));
    }
    if (engines.size() == 1) engine = engines.front();
  }
  if (!engine) return;
  const Stated stated{*engine, service_clock, hours_figure(hours)};
  if (const auto reckoned = unmet(work, stated)) {
    work.objections.push_back(
        with_figures(doubt(CheckKind::stated_total_differs, "engine"), stated.figure, *reckoned));
  }
}

void check_count(WorkCheck& work, const Thing& thing, const logbook::Count& count) {
  if (!has_history(work, thing)) return;
  const Stated stated{thing, count.counter, Figure(count.amount)};
  if (const auto reckoned = unmet(work, stated)) {
    work.objections.push_back(
        with_figures(doubt(CheckKind::stated_total_differs, "counts"), stated.figure, *reckoned));
  }
}

Stated stated_by(const Thing& thing, const Had& had) {
  const Since since = had.since == logbook::Basis::overhaul ? Since::overhaul : Since::new_;
  if (const auto* hours = std::get_if<logbook::ClockHours>(&had.amount)) {
    return {thing, HoursClock{hours->meter}, hours_figure(hours->hours), since, had.grade};
  }
  const auto& count = std::get<logbook::Count>(had.amount);
  return {thing, count.counter, Figure(count.amount), since, had.grade};
}

// An engine that came with the airframe, and with no more hours, cannot have more later. Gives the
// airframe's total where it has.
std::optional<Figure> airframe_outdone(const WorkCheck& work, const Stated& stated) {
  if (!std::holds_alternative<Engine>(stated.thing) || stated.clock != service_clock ||
      stated.since != Since::new_) {
    return std::nullopt;
  }
  const std::vector<Stay>& stays = work.histories().stays(stated.thing);
  if (stays.size() != 1) return std::nullopt;
  const Thing& airframe = stays.front().host;
  if (!std::holds_alternative<logbook::Aircraft>(airframe)) return std::nullopt;
  const Histories& histories = work.histories();
  const Figure then = histories.total(airframe, service_clock, stays.front().from).figure;
  const Figure own = histories.total(stated.thing, service_clock, stays.front().from).figure;
  const Figure now = histories.total(airframe, service_clock, work.last_place()).figure;
  if (then.is_unknown() || own.is_unknown() || now.is_unknown()) return std::nullopt;
  if (own.compare(then) > 0 || stated.figure.compare(now) <= 0) return std::nullopt;
  return now;
}

// What a thing has when it first comes on record is no statement: it is the source.
bool is_first_word(const WorkCheck& work, const Thing& thing) {
  const auto first = first_on_record(work.histories(), thing);
  if (!first) return true;
  const bool begins_here = !work.histories().stays(thing).empty() &&
                           work.histories().stays(thing).front().fitted == work.placed.id;
  return begins_here || work.last_place() < *first;
}

void check_had(WorkCheck& work, const Thing& thing, const Had& had) {
  const bool is_overhauled = std::holds_alternative<logbook::Overhauled>(work.placed.said->fact);
  if (is_overhauled && had.since == logbook::Basis::overhaul) return;
  const Stated stated = stated_by(thing, had);
  const auto reckoned = unmet(work, stated);
  if (!reckoned) return;
  const auto airframe = airframe_outdone(work, stated);
  const CheckKind kind = airframe ? CheckKind::engine_older_than_airframe : CheckKind::had_differs;
  work.objections.push_back(with_figures(doubt(kind, is_overhauled ? "had" : "with"), stated.figure,
                                         airframe.value_or(*reckoned)));
  work.objections.back().names = {thing_text(thing)};
}

}  // namespace

bool states_totals(const logbook::Fact& fact) {
  if (!had_in(fact).empty() || !counts_in(fact).empty()) return true;
  if (std::holds_alternative<logbook::Reading>(fact)) return false;
  const auto stated = work_in(fact);
  return stated && (stated->airframe || stated->engine || stated->meter);
}

void check_work(const Placed& placed, const WorkPast& past, Objections& objections) {
  const logbook::Fact& fact = placed.said->fact;
  const Thing subject = subject_of_work(fact);
  const auto thing = fitted_thing(fact);
  if (!is_on_record(past.histories, subject)) return;
  WorkCheck work{placed, past, places_of(placed, past), objections};
  const auto aircraft = aircraft_at(past.histories, subject, work.last_place());
  if (const auto stated = work_in(fact)) {
    if (stated->airframe && aircraft) check_airframe(work, *aircraft, *stated->airframe);
    if (stated->meter && aircraft) check_meter(work, *aircraft, *stated->meter);
    const bool is_its_own = thing && std::holds_alternative<Engine>(*thing);
    if (stated->engine) check_engine(work, is_its_own ? *thing : subject, *stated->engine);
  }
  for (const logbook::Count& count : counts_in(fact)) check_count(work, subject, count);
  if (!thing || !is_on_record(past.histories, *thing) || is_first_word(work, *thing)) return;
  for (const Had& had : had_in(fact)) check_had(work, *thing, had);
}

}  // namespace reckon
