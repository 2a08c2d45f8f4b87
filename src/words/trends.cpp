#include "words/trends.h"

#include "words/words.h"

namespace words {

namespace {

using reckon::trend::Beginning;
using reckon::trend::Direction;
using reckon::trend::Grade;
using reckon::trend::Segment;
using reckon::trend::Series;

std::string absolute(quantity::Decimal figure) {
  return quantity::say(figure.is_negative() ? -figure : figure);
}

std::string count_of(std::size_t number, std::string_view one, std::string_view many) {
  return std::to_string(number) + " " + std::string(number == 1 ? one : many);
}

// Whole hours, rounded down: a span is never made longer than it is.
std::string span_text(const Segment& segment) {
  return std::to_string(static_cast<std::int64_t>(segment.finding.span_hours)) + " h";
}

std::string readings_text(const Segment& segment) {
  return count_of(segment.finding.points, "reading", "readings") + " over " + span_text(segment) +
         " " + since_text(segment);
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
            count_of(*more, "more reading", "more readings") + ".";
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
    case Beginning::washed:
      return "the wash";
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

}  // namespace

std::string_view series_name(logbook::CheckKind check) {
  return check == logbook::CheckKind::cruise ? "cruise margin" : "idle margin";
}

std::string since_text(const Segment& segment) {
  return "since " + std::string(beginning_text(segment.beginning)) + " of " +
         quantity::say_long(segment.began);
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

std::vector<std::string> trend_notes(const Series& series, const Segment& segment) {
  std::vector<std::string> notes;
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

std::string_view flag_text(reckon::trend::Flag flag) {
  switch (flag) {
    case reckon::trend::Flag::counted:
      return "";
    case reckon::trend::Flag::no_temperature:
      return "no temperature stated";
    case reckon::trend::Flag::no_limit:
      return "no limit on record for that day";
    case reckon::trend::Flag::bleed_on:
      return "bleed or anti-ice on";
  }
  return "";
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
