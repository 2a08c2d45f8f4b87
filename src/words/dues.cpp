#include "words/dues.h"

#include "words/figures.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/shares.h"
#include "words/words.h"

namespace words {

namespace {

using reckon::Item;
using reckon::Lack;
using reckon::Side;
using reckon::State;

std::string over_sentence(const Item& item, const Side& side) {
  const std::string name = item_name(item);
  if (side.is_calendar) {
    return fill("Over: {} was due by {}, {} ago.", {name, due_text(side), over_text(side)});
  }
  if (item.mixed != nullptr && side.life_used) {
    return fill("Over: {} is over: {} of it is used.", {name, life_used_text(side)});
  }
  return fill("Over: {} is over by {}.", {name, over_text(side)});
}

std::string due_sentence(const Item& item, const Side& side) {
  if (side.is_calendar) {
    return fill("Due: {} may be flown through {} only.", {item_name(item), due_text(side)});
  }
  return fill("Due now: {} has {} left. No flight may be started.",
              {item_name(item), all_left_text(item, side)});
}

std::string_view basis_noun(std::optional<logbook::Basis> since) {
  switch (since.value_or(logbook::Basis::done)) {
    case logbook::Basis::new_:
      return "the day it was new";
    case logbook::Basis::overhaul:
      return "the day of its overhaul";
    case logbook::Basis::fitting:
      return "the day of its fitting";
    case logbook::Basis::release:
      return "the day of its release";
    case logbook::Basis::manufacture:
      return "the day of its manufacture";
    case logbook::Basis::first_certificate:
      return "the day of its first certificate";
    case logbook::Basis::done:
      return "the day it was last done";
  }
  return "the day it counts from";
}

// What a task or limit is left before.
std::string purpose_text(const Item& item) {
  if (item.task != nullptr) return "before it is due";
  const bool is_overhaul =
      item.limit != nullptr && item.limit->verb == logbook::LimitVerb::overhaul;
  return is_overhaul ? "before its overhaul is due" : "before it must be retired";
}

std::string subject_text(const Item& item) {
  return capital(item.task != nullptr ? item_name(item) : thing_name(item.thing));
}

std::string ago_text(quantity::Day day, quantity::Day today) {
  const std::int64_t days = (today - day).count();
  if (days == 0) return "today";
  if (days == 1) return "yesterday";
  return fill("{} ago", {counted(days, "day", "days")});
}

// One side is due or over, and what is left on another is not known.
std::string not_known_beside(const Item& item) {
  for (const Side& side : item.sides) {
    if (side.lack != Lack::nothing) return fill(" Beside that, {}.", {lack_text(side)});
  }
  return {};
}

// What is left at most may be told, though it is not known whether it is well.
bool has_figure(const Item& item) {
  const Side* side = governing(item);
  const bool is_figure = item.state != State::not_known || item.lack == Lack::total_at_least;
  return side != nullptr && side->left && is_figure;
}

}  // namespace

const Side* governing(const Item& item) {
  const bool is_there = item.governs >= 0 && item.governs < static_cast<int>(item.sides.size());
  return is_there ? &item.sides[static_cast<std::size_t>(item.governs)] : nullptr;
}

std::string next_text(const Item& item) {
  const std::string name = item_name(item);
  if (item.kind == Item::Kind::on_condition) return fill("{} on condition", {name});
  const Side* side = governing(item);
  if (!has_figure(item)) return fill("{} not known", {name});
  if (side->left->raw() < 0) return fill("{} {}", {name, left_text(*side)});
  if (side->is_calendar) return fill("{} by {}", {name, due_text(*side)});
  return fill("{} in {}", {name, all_left_text(item, *side)});
}

std::string attention_text(const Item& item) {
  const Side* side = governing(item);
  const bool is_known = side != nullptr && side->left && item.state != State::not_known;
  if (!is_known) return fill("Not known: {}, since {}.", {item_name(item), lack_text(item)});
  return (item.state == State::over ? over_sentence(item, *side) : due_sentence(item, *side)) +
         not_known_beside(item);
}

std::string lack_text(const Side& side) {
  const std::string clock = side.is_calendar ? std::string("the calendar") : clock_name(side.clock);
  switch (side.lack) {
    case Lack::nothing:
      return "something it rests on is missing";
    case Lack::total:
      return fill("its {} {} are not known",
                  {clock, basis_text(side.since.value_or(logbook::Basis::new_))});
    case Lack::total_at_least:
      return fill("some of its {} {} are not on record",
                  {clock, basis_text(side.since.value_or(logbook::Basis::new_))});
    case Lack::total_at_start:
      return fill("its {} on {} are not known",
                  {clock, side.after ? quantity::say_long(*side.after) : "the first day"});
    case Lack::basis_day:
      return fill("{} is not on record", {basis_noun(side.since)});
    case Lack::last_done:
      return "no last done is on record";
    case Lack::total_at_done:
      return fill("its {} when last done are not known", {clock});
    case Lack::due_point:
      return fill("its next due point is not stated for {}", {clock});
    case Lack::shared_lives:
      return "its limits differ from model to model, and how it shares its life is not stated";
    case Lack::model:
      return "its limit is for a model of which nothing is on record";
    case Lack::two_policies:
      return "two entries say otherwise how it shares its life";
    case Lack::not_shareable:
      return "its limits differ from model to model, and no way is known to share one of this form";
    case Lack::terms:
      return "no amount is stated that could be counted";
    case Lack::undecided:
      return "it rests on corrections made apart, and nobody has decided between them";
  }
  return {};
}

std::string lack_text(const Item& item) {
  if (const Side* side = governing(item); side != nullptr && side->lack != Lack::nothing) {
    return lack_text(*side);
  }
  for (const Side& side : item.sides) {
    if (side.lack != Lack::nothing) return lack_text(side);
  }
  Side none;
  none.lack = item.lack;
  return lack_text(none);
}

std::string left_sentence(const Item& item) {
  const std::string subject = subject_text(item);
  if (item.kind == Item::Kind::on_condition) return fill("{} is on condition.", {subject});
  if (!has_figure(item)) {
    return fill("What is left of {} is not known: {}.", {item_name(item), lack_text(item)});
  }
  const Side* side = governing(item);
  if (side->left->raw() < 0) return over_sentence(item, *side);
  if (item.state == State::not_known) {
    return fill("{} has {} left {}, but it may be less: {}.",
                {subject, left_text(*side), purpose_text(item), lack_text(item)});
  }
  if (side->is_calendar) {
    return fill("{} has {} left {}; the last legal day is {}.",
                {subject, left_text(*side), purpose_text(item), due_text(*side)});
  }
  if (item.mixed != nullptr) {
    return fill("{} has {} left {}: {} of its life is used.",
                {subject, all_left_text(item, *side), purpose_text(item), life_used_text(*side)});
  }
  return fill("{} has {} left {}.", {subject, left_text(*side), purpose_text(item)});
}

std::string rate_text(const reckon::UseRate& rate) {
  const std::string hours = hours_used(rate.hours);
  const std::string days = counted(rate.days.count(), "day", "days");
  switch (rate.from) {
    case reckon::UseRate::From::last_90_days:
    case reckon::UseRate::From::last_365_days:
      return fill("Dates by hours rest on recent use: {} in the last {}.", {hours, days});
    case reckon::UseRate::From::plan:
      return fill("Dates by hours rest on the plan on record: {} in {}.", {hours, days});
    case reckon::UseRate::From::stated:
      return fill("Dates by hours rest on the use you stated: {} in {}.", {hours, days});
    case reckon::UseRate::From::none:
      return "There are no dates by hours: no recent use and no plan is on record.";
  }
  return {};
}

std::string counted_to_text(std::optional<quantity::Day> last_flight, quantity::Day today) {
  if (!last_flight) return "Counted: no flight is on record.";
  return fill("Counted: flights to {} ({}).",
              {quantity::say_long(*last_flight), ago_text(*last_flight, today)});
}

}  // namespace words
