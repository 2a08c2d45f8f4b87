#pragma once
// Items put together by hand: what words and reports say does not need a book.

#include <cstdint>
#include <deque>
#include <string>

#include "quantity/hours.h"
#include "reckon/ready.h"

namespace words_test {

using logbook::CounterKind;
using reckon::Figure;
using reckon::Item;
using reckon::Side;
using reckon::State;

inline const logbook::Aircraft kit{{"ZZ-KIT"}};
inline const logbook::Aircraft mob{{"ZZ-MOB"}};
inline const logbook::Engine engine{{"TS-40"}, {"E-1001"}};
inline const logbook::Part blade{{"PN-4411"}, {"B-88"}};
inline const logbook::Counter starts{CounterKind::starts, ""};
inline const logbook::Counter landings{CounterKind::landings, ""};

// Entry K7QXM-number.
inline logbook::EntryId entry(std::int64_t number) {
  logbook::EntryId id;
  id.writer.bytes = {0x99, 0xef, 0xda, 0x00, 0x00, 0x00, 0x00, 0x00,
                     0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x00, 0x01};
  id.number = number;
  return id;
}

inline quantity::Day day(int year, unsigned month, unsigned number) {
  return *quantity::make_day({year, month, number});
}

// So many thousandths of an hour.
inline Figure thousandths_of_hours(std::int64_t thousandths) {
  return {quantity::ServiceHours::of(thousandths * 3600)};
}
inline Figure tenths(std::int64_t tenths_of_an_hour) {
  return thousandths_of_hours(tenths_of_an_hour * 100);
}
inline Figure whole(std::int64_t count) { return {quantity::whole_cycles(count)}; }

inline Side hours_side(std::int64_t limit, std::int64_t left, State state) {
  Side side;
  side.clock = reckon::service_clock;
  side.limit = tenths(limit);
  side.left = tenths(left);
  side.used.figure = tenths(limit - left);
  side.due_at = tenths(43233 + left);
  side.due_at_airframe = side.due_at;
  side.state = state;
  side.days_left = left / 10;
  return side;
}

inline Side count_side(const logbook::Counter& counter, std::int64_t limit, std::int64_t left,
                       State state) {
  Side side;
  side.clock = counter;
  side.limit = whole(limit);
  side.left = whole(left);
  side.used.figure = whole(limit - left);
  side.due_at = whole(limit);
  side.state = state;
  side.days_left = left;
  return side;
}

// 12 calendar months from a day on, seen on 4 March 2026.
inline Side calendar_side(quantity::Day from, quantity::Day last_legal, State state) {
  Side side;
  side.is_calendar = true;
  side.since = logbook::Basis::done;
  side.period = logbook::Period{12, logbook::PeriodUnit::calendar_months};
  side.basis_day = from;
  side.last_legal = last_legal;
  side.limit = Figure(last_legal - from);
  side.left = Figure(last_legal - day(2026, 3, 4));
  side.used.figure = Figure(day(2026, 3, 4) - from);
  side.state = state;
  side.expected = last_legal;
  side.days_left = (last_legal - day(2026, 3, 4)).count();
  return side;
}

inline Item with_sides(Item item, std::vector<Side> sides, int governs) {
  item.sides = std::move(sides);
  item.governs = governs;
  if (governs >= 0) {
    const Side& side = item.sides[static_cast<std::size_t>(governs)];
    item.state = side.state;
    item.lack = side.lack;
    item.expected = side.expected;
  }
  return item;
}

inline Item task_item(logbook::TaskClass class_, const std::string& name,
                      const logbook::Thing& thing) {
  static std::deque<logbook::Task> kept;  // for the whole run, since items point at them
  logbook::Task* task = &kept.emplace_back();
  task->class_ = class_;
  task->name = {name};
  Item item;
  item.id = "task:" + name;
  item.kind = Item::Kind::task;
  item.task = task;
  item.thing = thing;
  item.aircraft = kit;
  item.entry = entry(31);
  item.because = {entry(31), entry(88)};
  item.source = "manual 5-20";
  return item;
}

inline Item limit_item(const logbook::Thing& thing, logbook::LimitVerb verb) {
  static std::deque<logbook::Limit> kept;  // for the whole run, since items point at them
  logbook::Limit* limit = &kept.emplace_back();
  limit->verb = verb;
  Item item;
  item.id = "limit";
  item.kind = Item::Kind::limit;
  item.limit = limit;
  item.thing = thing;
  item.aircraft = kit;
  item.place = logbook::PlaceName{"main rotor blade 1"};
  item.entry = entry(12);
  item.because = {entry(12)};
  item.source = "limitations rev 4";
  return item;
}

inline Item directive(std::int64_t left, State state) {
  return with_sides(task_item(logbook::TaskClass::directive, "D-26-04", kit),
                    {hours_side(1500, left, state)}, 0);
}
inline Item annual(quantity::Day last_legal, State state) {
  Item item = with_sides(task_item(logbook::TaskClass::inspection, "annual inspection", kit),
                         {calendar_side(day(2025, 6, 6), last_legal, state)}, 0);
  item.last_done = entry(88);
  item.last_done_day = day(2025, 6, 6);
  return item;
}
inline Item blade_life(std::int64_t left, State state) {
  return with_sides(limit_item(blade, logbook::LimitVerb::retires),
                    {hours_side(22000, left, state)}, 0);
}
inline Item unknown_starts() {
  Side side;
  side.clock = starts;
  side.since = logbook::Basis::new_;
  side.limit = whole(3000);
  side.used.figure = whole(0).as_sure_as(quantity::Sureness::unknown);
  side.state = State::not_known;
  side.lack = reckon::Lack::total;
  return with_sides(limit_item(engine, logbook::LimitVerb::overhaul), {side}, 0);
}
inline Item on_condition() {
  Item item = limit_item(logbook::Part{{"PN-9000"}, {"X-1"}}, logbook::LimitVerb::retires);
  item.kind = Item::Kind::on_condition;
  item.limit = nullptr;
  return item;
}

}  // namespace words_test
