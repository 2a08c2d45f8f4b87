#include "words/engines.h"

#include "words/grammar.h"
#include "words/starts.h"
#include "words/trends.h"
#include "words/words.h"

namespace words {

namespace {

using reckon::trend::Direction;
using reckon::trend::Grade;
using reckon::trend::Segment;
using reckon::trend::Series;

std::string start_part(const reckon::StartJudged& start) {
  const std::string figures = start_figures(*start.started);
  const std::string in_brackets = figures.empty() ? "" : " (" + figures + ")";
  switch (start.verdict()) {
    case reckon::StartVerdict::past_a_limit:
      return "last start past a limit: " + findings_text(start.findings);
    case reckon::StartVerdict::worth_a_look:
      return "last start worth a look: " + findings_text(start.findings);
    case reckon::StartVerdict::normal:
      return "last start normal" + in_brackets;
    case reckon::StartVerdict::not_known:
      return "last start not judged" + in_brackets;
  }
  return {};
}

std::string told_part(const Segment& segment) {
  const bool is_falling = segment.finding.evidence->direction == Direction::falling;
  const std::string pace = absolute(segment.slope->per_100_hours);
  const bool is_clear = segment.finding.grade == Grade::clear;
  if (!is_falling) return fill("rising by {} C per 100 h, so check the gauges", {pace});
  std::string text = fill(
      is_clear ? "clearly losing {} C per 100 h" : "a weak sign of losing {} C per 100 h", {pace});
  if (segment.reach) {
    text += fill(", plan for {} h", {std::to_string(segment.reach->early_hours)});
  }
  return text;
}

std::string margin_part(const Segment& segment) {
  switch (segment.finding.grade) {
    case Grade::too_few:
      return "too few readings for a line";
    case Grade::cannot_tell: {
      const auto& more = segment.finding.evidence->more_readings;
      if (!more) return "no loss seen, and none can be ruled out";
      if (*more == 0) return "no loss seen";
      return fill("no loss seen (1 C per 100 h would show after about {})",
                  {counted(static_cast<std::int64_t>(*more), "more reading", "more readings")});
    }
    case Grade::weak:
    case Grade::clear:
      return told_part(segment);
  }
  return {};
}

}  // namespace

std::string margins_text(const Series& series) {
  const Segment& newest = series.segments.back();
  std::string text = capital(std::string(series_name(series.check)));
  if (newest.now) text += fill(" {} C", {quantity::say(*newest.now)});
  text += ": " + margin_part(newest) + ".";
  const std::string worry = worry_text(series);
  return worry.empty() ? text : text + " " + worry;
}

std::string engine_text(const logbook::Engine& engine, const reckon::StartJudged* last_start,
                        const std::vector<const Series*>& margins) {
  std::string text;
  if (last_start != nullptr) text += " " + capital(start_part(*last_start)) + ".";
  for (const Series* series : margins) text += " " + margins_text(*series);
  return text.empty() ? text : capital(thing_name(engine)) + ":" + text;
}

}  // namespace words
