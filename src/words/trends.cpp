#include "words/trends.h"

#include <algorithm>

#include "words/grammar.h"
#include "words/words.h"

namespace words {

namespace {

using reckon::trend::Beginning;
using reckon::trend::Direction;
using reckon::trend::Grade;
using reckon::trend::Segment;
using reckon::trend::Series;

// Whole hours, rounded down: a span is never made longer than it is.
std::string span_text(const Segment& segment) {
  return std::to_string(static_cast<std::int64_t>(segment.finding.span_hours)) + " h";
}

std::string readings_text(const Segment& segment) {
  return counted(static_cast<std::int64_t>(segment.finding.points), "reading", "readings") +
         " over " + span_text(segment) + " " + since_text(segment);
}

// Falling and rising are said with positive figures, the smaller first.
std::string pace_text(const Segment& segment) {
  const auto& slope = *segment.slope;
  const bool is_falling = segment.finding.evidence->direction == Direction::falling;
  const auto near_zero = is_falling ? slope.high : slope.low;
  const auto far_from_zero = is_falling ? slope.low : slope.high;
  return std::string(is_falling ? "falling" : "rising") + " by " + absolute(slope.per_100_hours) +
         " C per 100 h (between " + absolute(near_zero) + " and " + absolute(far_from_zero) +
         "), from " + readings_text(segment) + ".";
}

std::string told_text(const Series& series, const Segment& segment, std::string_view grade) {
  return std::string(grade) + ": the " + std::string(series_name(series.check)) + " is " +
         pace_text(segment);
}

std::string cannot_tell_text(const Series& series, const Segment& segment) {
  std::string text = "Cannot tell yet: no loss seen in the " +
                     std::string(series_name(series.check)) + " from " + readings_text(segment) +
                     ".";
  const auto& more = segment.finding.evidence->more_readings;
  if (more && *more > 0) {
    text += " A loss of 1 C per 100 h would show after about " +
            counted(static_cast<std::int64_t>(*more), "more reading", "more readings") + ".";
  } else if (!more) {
    text += " The readings are too coarse, or too scattered, to say when a loss would show.";
  }
  return text;
}

std::string too_few_text(const Series& series, const Segment& segment) {
  return "Too few readings for a line of the " + std::string(series_name(series.check)) + ": " +
         readings_text(segment) + ". It takes at least five over 25 h.";
}

std::string_view beginning_text(Beginning beginning) {
  switch (beginning) {
    case Beginning::first_reading:
      return "the first reading";
    case Beginning::fitted:
      return "the fitting";
    case Beginning::overhauled:
      return "the overhaul";
    case Beginning::hot_section:
      return "the hot-section work";
    case Beginning::probe:
      return "the change of the temperature probe";
    case Beginning::fuel_control:
      return "the work on the fuel control";
    case Beginning::torque_gauge:
      return "the change of the torque gauge";
    case Beginning::temperature_gauge:
      return "the change of the temperature gauge";
    case Beginning::limit_changed:
      return "the change of the limit";
  }
  return "";
}

std::string_view mark_text(Beginning beginning) {
  switch (beginning) {
    case Beginning::first_reading:
      return "first reading";
    case Beginning::fitted:
      return "fitted";
    case Beginning::overhauled:
      return "overhauled";
    case Beginning::hot_section:
      return "hot-section work";
    case Beginning::probe:
      return "temperature probe changed";
    case Beginning::fuel_control:
      return "fuel control worked on";
    case Beginning::torque_gauge:
      return "torque gauge changed";
    case Beginning::temperature_gauge:
      return "temperature gauge changed";
    case Beginning::limit_changed:
      return "limit changed";
  }
  return "";
}

std::string no_reach_text(const Series& series, reckon::trend::NoReach why) {
  switch (why) {
    case reckon::trend::NoReach::already_there:
    case reckon::trend::NoReach::not_falling:
      return {};
    case reckon::trend::NoReach::no_finite_interval:
      return fill("When it reaches your floor of {} C cannot be told yet.",
                  {quantity::say(*series.floor)});
    case reckon::trend::NoReach::too_far:
      return fill("Your floor of {} C lies too far ahead for these readings to say when.",
                  {quantity::say(*series.floor)});
  }
  return {};
}

// Thousandths; what rounds to none is said to be less than one.
std::string chance_text(quantity::Decimal p) {
  return p.is_zero() ? "less than 0.001" : quantity::say(p);
}

// The middle slope of all pairs beside least squares, and what it means when they disagree.
std::vector<std::string> other_way_notes(const Segment& segment) {
  std::vector<std::string> notes;
  if (!segment.theil_sen) return notes;
  const auto& middle = *segment.theil_sen;
  notes.push_back(fill(
      "The middle slope of all pairs of readings is {} C per 100 h (between {} and {}). The "
      "Mann-Kendall sum, pairs going up less pairs going down, is {}; chance alone gives one as "
      "far from zero "
      "with a probability of {}.",
      {quantity::say(middle.per_100_hours), quantity::say(middle.low), quantity::say(middle.high),
       std::to_string(segment.kendall->s), chance_text(segment.kendall->p)}));
  if (segment.finding.evidence->agreement == reckon::trend::Agreement::both_apart) {
    notes.emplace_back(
        "The two ways to draw the line disagree: look for a wild reading, a step or a bend.");
  }
  return notes;
}

}  // namespace

std::string absolute(quantity::Decimal figure) {
  return quantity::say(figure.is_negative() ? -figure : figure);
}

std::string_view series_name(logbook::CheckKind check) {
  switch (check) {
    case logbook::CheckKind::cruise:
      return "cruise margin";
    case logbook::CheckKind::idle:
      return "idle margin";
    case logbook::CheckKind::power_check:
      return "power-check margin";
  }
  return "";
}

std::string_view check_word(logbook::CheckKind check) {
  switch (check) {
    case logbook::CheckKind::cruise:
      return "cruise";
    case logbook::CheckKind::idle:
      return "idle";
    case logbook::CheckKind::power_check:
      return "power check";
  }
  return "";
}

std::string since_text(const Segment& segment) {
  return "since " + std::string(beginning_text(segment.beginning)) + " of " +
         quantity::say_long(segment.began);
}

std::string began_text(const Segment& segment) {
  return std::string(mark_text(segment.beginning)) + " " + quantity::say_long(segment.began);
}

std::string trend_text(const Series& series, const Segment& segment) {
  switch (segment.finding.grade) {
    case Grade::too_few:
      return too_few_text(series, segment);
    case Grade::cannot_tell:
      return cannot_tell_text(series, segment);
    case Grade::weak:
      return told_text(series, segment, "Weak sign") +
             " One steady engine in two or three shows this at some time.";
    case Grade::clear:
      return told_text(series, segment, "Clear");
  }
  return "";
}

std::string chart_text(const Series& series, std::size_t readings) {
  const Segment& newest = series.segments.back();
  std::string text = counted(static_cast<std::int64_t>(readings), "reading", "readings") +
                     " of the " + std::string(series_name(series.check)) +
                     " over the engine's hours";
  if (newest.now) text += fill("; the line ends at {} C", {quantity::say(*newest.now)});
  return text + ".";
}

std::string worry_text(const Series& series) {
  const Segment& newest = series.segments.back();
  switch (reckon::trend::worry_of(series)) {
    case reckon::trend::Worry::past_what_is_allowed:
      return fill("The last reading, {} ({}), was {} C above what is allowed.",
                  {quantity::say_long(newest.last->day), entry_name(newest.last->entry),
                   quantity::say(-newest.last->margin)});
    case reckon::trend::Worry::at_the_floor:
      return fill("That is at or below your floor of {} C, or may be.",
                  {quantity::say(*series.floor)});
    case reckon::trend::Worry::falling:
    case reckon::trend::Worry::none:
      return {};
  }
  return {};
}

std::string now_text(const Series& series) {
  const Segment& newest = series.segments.back();
  if (!newest.now || !newest.last) return {};
  std::string text = fill("Margin on the line at the last reading, {}: {} C",
                          {quantity::say_long(newest.last->day), quantity::say(*newest.now)});
  const auto& since = newest.last->hours_since;
  if (since && *since > 0) text += fill(", {} h ago", {std::to_string(*since)});
  if (series.floor) text += fill("; your floor is {} C", {quantity::say(*series.floor)});
  return text + ".";
}

std::string reach_text(const Series& series, const Segment& segment) {
  if (!series.floor) return {};
  if (segment.hours_now_unknown) {
    return "The engine's hours today are not known, so when it reaches your floor is not either.";
  }
  if (segment.no_reach) return no_reach_text(series, *segment.no_reach);
  if (!segment.reach) return {};
  const auto& reach = *segment.reach;
  if (reach.early_hours == 0) {
    return fill("The margin may be at your floor of {} C already.", {quantity::say(*series.floor)});
  }
  std::string text =
      fill("At that pace it reaches your floor of {} C after {} to {} h, so plan for {} h",
           {quantity::say(*series.floor), std::to_string(reach.early_hours),
            std::to_string(reach.late_hours), std::to_string(reach.early_hours)});
  if (reach.early_day) text += fill(": {} at recent use", {quantity::say_long(*reach.early_day)});
  text += ".";
  if (reach.reading_earlier_hours > 0) {
    text += fill(" Single readings may touch it up to {} h before.",
                 {std::to_string(reach.reading_earlier_hours)});
  }
  return text + " Wear speeds up, and a straight line is then late.";
}

std::string_view reach_column_text() {
  return "\"Floor in\" is what to plan by: the early limit of a straight line. Wear speeds up, "
         "and a straight line is then late.";
}

std::string wash_text(const reckon::trend::WashGain& wash) {
  const std::string day = quantity::say_long(wash.day);
  if (!wash.figures) {
    return fill("What the wash of {} gave back cannot be told from these readings.", {day});
  }
  const auto& gain = *wash.figures;
  if (gain.low.count() <= 0 && gain.high.count() >= 0) {
    return fill("The wash of {} gave back {} C (between {} and {}): no gain is shown.",
                {day, quantity::say(gain.gain), quantity::say(gain.low), quantity::say(gain.high)});
  }
  return fill("The wash of {} gave back {} C (between {} and {}).",
              {day, quantity::say(gain.gain), quantity::say(gain.low), quantity::say(gain.high)});
}

std::vector<std::string> trend_notes(const Series& series, const Segment& segment) {
  std::vector<std::string> notes = other_way_notes(segment);
  if (segment.last_three_off) {
    notes.push_back(
        fill("The last three readings all lie {} the line, by {} C on average: something may have "
             "changed. Look at the gauges first.",
             {segment.last_three_off->is_negative() ? "below" : "above",
              absolute(*segment.last_three_off)}));
  }
  if (segment.points.empty() && series.segments.size() > 1) {
    notes.push_back("No reading since. Before it: " +
                    trend_text(series, series.segments[series.segments.size() - 2]));
  }
  if (segment.deciding.size() == 1) {
    notes.push_back("Without the single reading " + entry_name(segment.deciding.front()) +
                    " the answer would be another one. Look at it first.");
  } else if (!segment.deciding.empty()) {
    notes.push_back("The answer hangs on few readings: without any one of " +
                    std::to_string(segment.deciding.size()) + " of them, the first " +
                    entry_name(segment.deciding.front()) + ", it would be another one.");
  }
  if (!series.is_correlation_stated) {
    notes.push_back("No serial correlation is stated for model " + series.engine.model.text +
                    "; 0.2 is taken, which widens every band.");
  }
  const auto& evidence = segment.finding.evidence;
  if (evidence && evidence->direction == Direction::rising) {
    notes.emplace_back(
        "A margin that grows without work on the engine is a reason to check the "
        "gauges.");
  }
  return notes;
}

std::string_view grade_word(Grade grade) {
  switch (grade) {
    case Grade::too_few:
      return "too few";
    case Grade::cannot_tell:
      return "cannot tell";
    case Grade::weak:
      return "weak";
    case Grade::clear:
      return "clear";
  }
  return "";
}

}  // namespace words
