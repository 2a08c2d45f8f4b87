#include "reckon/check_work.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/check_had.h"
#include "reckon/check_names.h"
#include "reckon/use.h"
#include "reckon/work.h"

namespace reckon {

namespace {

using logbook::Engine;
using logbook::Thing;

const std::vector<logbook::Count>& counts_in(const logbook::Fact& fact) {
  static const std::vector<logbook::Count> none;
  const auto* done = std::get_if<logbook::Done>(&fact);
  return done != nullptr ? done->counts : none;
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
  StatedAt at;
  Objections& objections;

  const Histories& histories() const { return past.histories; }
  const Mark& last_place() const { return at.last_place(); }
};

// Before its brought-forward day an aircraft has no flights: stated figures are the source there.
bool has_history(const WorkCheck& work, const Thing& thing) {
  const std::optional<Day> begins = work.histories().brought_forward_day(thing);
  return !begins || work.placed.said->day >= *begins;
}

constexpr std::int64_t near_hours_raw = std::int64_t{24} * 3600 * 1000;

// A figure far from its own clock and near what another shows was read on the wrong one.
std::optional<logbook::MeterName> meter_read_instead(const WorkCheck& work,
                                                     const logbook::Aircraft& aircraft,
                                                     const Figure& stated, const Figure& reckoned) {
  if (work.past.uses == nullptr || apart(stated, reckoned).raw() <= near_hours_raw) {
    return std::nullopt;
  }
  for (const logbook::MeterName& meter : work.past.uses->meters().names()) {
    const auto reading = work.histories().meter(aircraft, meter, work.last_place());
    if (!reading) continue;
    const Figure shown = reading_figure(reading->reading);
    if (apart(stated, shown).raw() <= near_hours_raw) return meter;
  }
  return std::nullopt;
}

void check_airframe(WorkCheck& work, const logbook::Aircraft& aircraft, quantity::Hours hours) {
  if (!has_history(work, aircraft)) return;
  const Stated stated{aircraft, service_clock, hours_figure(hours)};
  const auto reckoned = unmet(work.at, stated);
  if (!reckoned) return;
  const auto meter = meter_read_instead(work, aircraft, stated.figure, *reckoned);
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
  if (const auto reckoned = unmet(work.at, stated)) {
    work.objections.push_back(
        with_figures(doubt(CheckKind::stated_total_differs, "engine"), stated.figure, *reckoned));
  }
}

void check_count(WorkCheck& work, const Thing& thing, const logbook::Count& count) {
  if (!has_history(work, thing)) return;
  const Stated stated{thing, count.counter, Figure(count.amount)};
  if (const auto reckoned = unmet(work.at, stated)) {
    work.objections.push_back(
        with_figures(doubt(CheckKind::stated_total_differs, "counts"), stated.figure, *reckoned));
    work.objections.back().clock = stated.clock;
  }
}

}  // namespace

bool states_totals(const logbook::Fact& fact) {
  if (states_had(fact) || !counts_in(fact).empty()) return true;
  if (std::holds_alternative<logbook::Reading>(fact)) return false;
  const auto stated = work_in(fact);
  return stated && (stated->airframe || stated->engine || stated->meter);
}

void check_work(const Placed& placed, const WorkPast& past, Objections& objections) {
  const logbook::Fact& fact = placed.said->fact;
  const Thing subject = subject_of_work(fact);
  const auto thing = thing_with_had(fact);
  if (!is_on_record(past.histories, subject)) return;
  WorkCheck work{placed, past, {placed, past.histories, places_of(placed, past)}, objections};
  const auto aircraft = aircraft_at(past.histories, subject, work.last_place());
  if (const auto stated = work_in(fact)) {
    if (stated->airframe && aircraft) check_airframe(work, *aircraft, *stated->airframe);
    if (stated->meter && aircraft) check_meter(work, *aircraft, *stated->meter);
    const bool is_its_own = thing && std::holds_alternative<Engine>(*thing);
    if (stated->engine) check_engine(work, is_its_own ? *thing : subject, *stated->engine);
  }
  for (const logbook::Count& count : counts_in(fact)) check_count(work, subject, count);
  if (thing) check_had(work.at, *thing, objections);
}

}  // namespace reckon
