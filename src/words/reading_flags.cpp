// Why readings are left out of the line.
#include <algorithm>

#include "words/grammar.h"
#include "words/trends.h"

namespace words {

namespace {

using reckon::trend::Segment;

std::string_view figure_name(reckon::trend::ChartFigure figure) {
  switch (figure) {
    case reckon::trend::ChartFigure::torque:
      return "torque";
    case reckon::trend::ChartFigure::altitude:
      return "altitude";
    case reckon::trend::ChartFigure::outside_air:
      return "outside air";
  }
  return "";
}

// "outside the chart: torque 101, by 1 past 100".
std::string outside_text(const std::vector<reckon::trend::OutOfChart>& out) {
  std::string text = "outside the chart:";
  for (const auto& one : out) {
    if (&one != &out.front()) text += ",";
    text += fill(" {} {}, by {} past {}",
                 {std::string(figure_name(one.figure)), quantity::say(one.given),
                  quantity::say(one.out_by), quantity::say(one.nearest_allowed)});
  }
  return text;
}

}  // namespace

std::string flag_text(const reckon::trend::MarginPoint& point) {
  switch (point.flag) {
    case reckon::trend::Flag::counted:
      return "";
    case reckon::trend::Flag::no_temperature:
      return "no temperature stated";
    case reckon::trend::Flag::no_limit:
      return "no limit on record for that day";
    case reckon::trend::Flag::hours_unknown:
      return "the engine's hours are not known";
    case reckon::trend::Flag::bleed_on:
      return "bleed or anti-ice on";
    case reckon::trend::Flag::not_steady:
      return "power not steady long enough";
    case reckon::trend::Flag::steady_not_said:
      return "how long power was steady is not said";
    case reckon::trend::Flag::chart_wants_more:
      return "the chart needs torque, altitude and outside air";
    case reckon::trend::Flag::torque_unit:
      return "torque in another unit than the chart's";
    case reckon::trend::Flag::outside_chart:
      return outside_text(point.out);
    case reckon::trend::Flag::chart_hole:
      return "a line of the chart is missing there";
    case reckon::trend::Flag::chart_faulty:
      return "the chart on record contradicts itself, or has two units";
    case reckon::trend::Flag::two_charts:
      return "two charts hold from the same day";
  }
  return "";
}

std::string left_out_text(const Segment& segment) {
  std::vector<std::pair<std::string, std::int64_t>> reasons;
  for (const auto& point : segment.points) {
    std::string reason = flag_text(point);
    // Without the figures of one reading.
    reason.resize(std::min(reason.size(), reason.find(':')));
    if (reason.empty()) continue;
    const auto known = std::find_if(reasons.begin(), reasons.end(),
                                    [&](const auto& one) { return one.first == reason; });
    if (known != reasons.end()) {
      ++known->second;
    } else {
      reasons.emplace_back(std::move(reason), 1);
    }
  }
  constexpr std::size_t most_told = 4;
  std::string text;
  for (std::size_t i = 0; i < reasons.size() && i < most_told; ++i) {
    text += (i == 0 ? "Left out of the line: " : "; ") +
            counted(reasons[i].second, "reading", "readings") + ", " + reasons[i].first;
  }
  if (text.empty()) return text;
  return text + (reasons.size() > most_told ? "; others: --readings shows why." : ".");
}

}  // namespace words
