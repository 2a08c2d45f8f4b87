#include "words/readiness.h"

#include "words/dues.h"
#include "words/figures.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/words.h"

namespace words {

namespace {

using reckon::Obstacle;
using reckon::Ready;
using reckon::Side;
using reckon::Trip;

const Side& side_of(const Obstacle& obstacle) {
  return obstacle.item.sides.at(static_cast<std::size_t>(obstacle.side));
}

// "3.0 h trip", or just "trip": hours as the pilot typed them.
std::string trip_name(const Trip& trip) {
  if (!trip.hours) return "This trip";
  return fill("A {} h trip", {quantity::say(*trip.hours)});
}

std::string excess_text(const Obstacle& obstacle) {
  const Side& side = side_of(obstacle);
  const std::string excess = figure_used(obstacle.needed - obstacle.left, side.clock);
  return side.left_is_at_most ? fill("at least {}", {excess}) : excess;
}

// Nothing left, or less: no flight may be started, however short.
bool is_used_up(const Obstacle& obstacle) {
  return obstacle.is_passed_already || (!side_of(obstacle).is_calendar && obstacle.left.raw() <= 0);
}

bool can_fly_some(const Ready& ready) {
  return ready.allowed_hours && ready.allowed_hours->count() > 0;
}

std::string can_fly_text(const Ready& ready) {
  return fill(" You can fly {}.", {hours_left(*ready.allowed_hours)});
}

// Already over, or nothing left, whatever the trip.
std::string passed_text(const Obstacle& obstacle) {
  const Side& side = side_of(obstacle);
  const std::string name = capital(item_name(obstacle.item));
  if (side.is_calendar) return fill("{} was due by {}.", {name, due_text(side)});
  if (obstacle.left.raw() < 0) {
    const reckon::Figure over = -obstacle.left;
    return fill("{} is over by {}.", {name, figure_used(over, side.clock)});
  }
  return fill("{} is due now: {} left.", {name, figure_left(obstacle.left, side.clock)});
}

std::string would_pass_text(const Obstacle& obstacle, const Trip& trip) {
  const Side& side = side_of(obstacle);
  const std::string name = item_name(obstacle.item);
  if (side.is_calendar) {
    return fill("The trip ends after {}, the last day for {}.", {due_text(side), name});
  }
  return fill("{} would pass {} by {}.", {trip_name(trip), name, excess_text(obstacle)});
}

std::string no_line(const Ready& ready, const Trip& trip) {
  if (ready.obstacles.empty()) return "No. The record does not allow this trip.";
  const Obstacle& first = ready.obstacles.front();
  const std::string why =
      "No. " + (is_used_up(first) ? passed_text(first) : would_pass_text(first, trip));
  if (!can_fly_some(ready)) return that_fits({why}, first_line_columns);
  return that_fits({why + can_fly_text(ready), why}, first_line_columns);
}

std::string yes_line(const Ready& ready, const Trip& trip) {
  const std::string passes = fill("Yes. {} passes no limit on record.", {trip_name(trip)});
  if (!ready.allowed_hours) return passes;
  return passes + can_fly_text(ready);
}

std::string not_known_line(const Ready& ready, const logbook::Aircraft& aircraft) {
  if (ready.missing.empty()) return "Not known. Something that the answer rests on is missing.";
  return that_fits({"Not known. " + missing_words(ready.missing.front(), aircraft).what},
                   first_line_columns);
}

std::string count_text(quantity::Cycles count, std::string_view one, std::string_view many) {
  const bool is_one = count == quantity::whole_cycles(1);
  return quantity::say(count) + " " + std::string(is_one ? one : many);
}

}  // namespace

std::string_view answer_word(reckon::Answer answer) {
  switch (answer) {
    case reckon::Answer::yes:
      return "yes";
    case reckon::Answer::no:
      return "no";
    case reckon::Answer::not_known:
      return "not known";
  }
  return "not known";
}

std::string first_line(const Ready& ready, const Trip& trip, const logbook::Aircraft& aircraft) {
  switch (ready.answer) {
    case reckon::Answer::yes:
      return yes_line(ready, trip);
    case reckon::Answer::no:
      return no_line(ready, trip);
    case reckon::Answer::not_known:
      return not_known_line(ready, aircraft);
  }
  return {};
}

std::string obstacle_text(const Obstacle& obstacle) {
  const Side& side = side_of(obstacle);
  if (is_used_up(obstacle)) return passed_text(obstacle);
  if (side.is_calendar) return would_pass_text(obstacle, {});
  const std::string left = figure_left(obstacle.left, side.clock);
  return fill("{}: the trip needs {}; left: {}.",
              {capital(item_name(obstacle.item)), figure_used(obstacle.needed, side.clock),
               side.left_is_at_most ? fill("at most {}", {left}) : left});
}

std::string trip_text(const Trip& trip) {
  const std::string flights = count_text(trip.flights, "flight", "flights");
  const std::string starts = count_text(trip.starts, "start", "starts");
  const std::string landings = count_text(trip.landings, "landing", "landings");
  if (!trip.by) {
    return fill("The trip: {}, {} of each engine, {}.", {flights, starts, landings});
  }
  return fill("The trip: {}, {} of each engine, {}, ending by {}.",
              {flights, starts, landings, quantity::say_long(*trip.by)});
}

std::string allowed_text(const Ready& ready) {
  const bool has_day = ready.allowed_until.has_value();
  const std::string day = has_day ? quantity::say_long(*ready.allowed_until) : "";
  if (can_fly_some(ready) && has_day) {
    return fill("You can fly {}, until {}.", {hours_left(*ready.allowed_hours), day});
  }
  if (can_fly_some(ready)) return fill("You can fly {}.", {hours_left(*ready.allowed_hours)});
  if (ready.allowed_hours) return "No shorter trip is allowed either.";
  return has_day ? fill("By the calendar you can fly until {}.", {day}) : std::string();
}

namespace {

// An estimate, so no finer than tenths, and never less than it is.
quantity::ServiceHours tenths_up(quantity::ServiceHours hours) {
  constexpr std::int64_t tenth = 360 * 1000;
  return quantity::ServiceHours::of(quantity::ceiling_divide(hours.count(), tenth) * tenth);
}

}  // namespace

std::vector<std::string> freshness_texts(const Ready& ready, quantity::Day today) {
  std::vector<std::string> texts;
  if (ready.gap && ready.gap->count() > 0) {
    texts.push_back(fill("The meter shows {} more than the book; that is counted in.",
                         {hours_used(*ready.gap)}));
  } else if (ready.gap && ready.gap->is_negative()) {
    texts.push_back(fill("The meter shows {} less than the book. Check the reading.",
                         {hours_used(-*ready.gap)}));
  }
  if (ready.may_be_missing && ready.last_flight) {
    texts.push_back(fill("No flight for {}: at recent use about {} may be missing.",
                         {counted((today - *ready.last_flight).count(), "day", "days"),
                          hours_used(tenths_up(*ready.may_be_missing))}));
  }
  return texts;
}

}  // namespace words
