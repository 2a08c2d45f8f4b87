#include "report/engine_trend.h"

#include <map>

#include "report/pieces.h"
#include "report/trend_chart.h"
#include "words/figures.h"
#include "words/grammar.h"
#include "words/starts.h"
#include "words/trends.h"
#include "words/words.h"

namespace report {

namespace {

using document::Cell;
using document::Json;
using reckon::trend::MarginPoint;
using reckon::trend::Segment;
using reckon::trend::Series;
using reckon::trend::SlopeText;

Cell corrected_cell(const std::optional<quantity::Decimal>& figure, std::string_view unit) {
  if (!figure) return words_cell("");
  const std::string digits = quantity::say(*figure);
  return {digits + " " + std::string(unit), digits, std::string(unit), document::State::none};
}

std::vector<Cell> reading_row(const MarginPoint& point) {
  Cell margin = words_cell("not known");
  if (point.margin) {
    const std::string digits = quantity::say(*point.margin);
    margin = {digits + " C", digits, "C", document::State::none};
  }
  return {day_cell(point.day),
          words_cell(words::figure_used(point.engine_hours, reckon::service_clock)),
          std::move(margin),
          corrected_cell(point.corrected.temperature, "C"),
          corrected_cell(point.corrected.gas_generator, "%"),
          words_cell(words::flag_text(point)),
          words_cell(words::entry_name(point.entry))};
}

document::Table readings_table(const Segment& segment, std::string key) {
  document::Table table;
  table.key = std::move(key);
  table.columns = {{"day", "Day", document::Align::left},
                   {"engine_hours", "Engine hours", document::Align::right},
                   {"margin", "Margin", document::Align::right},
                   {"corrected_temperature", "Corrected temperature", document::Align::right},
                   {"corrected_gas_generator", "Corrected gas generator", document::Align::right},
                   {"left_out", "Left out because", document::Align::left},
                   {"entry", "Entry", document::Align::left}};
  for (const MarginPoint& point : segment.points) table.rows.push_back(reading_row(point));
  table.if_empty = "There is no reading.";
  return table;
}

std::size_t left_out(const Segment& segment) {
  std::size_t number = 0;
  for (const MarginPoint& point : segment.points) {
    if (point.flag != reckon::trend::Flag::counted) ++number;
  }
  return number;
}

void add_series(const Series& series, const EngineTrend& trend, document::Document& page) {
  const Segment& newest = series.segments.back();
  const std::string number = std::to_string(page.blocks.size());
  const std::string name = words::capital(words::thing_name(series.engine));
  page.blocks.push_back(
      document::Heading{name + ", " + std::string(words::series_name(series.check))});
  say(words::trend_text(series, newest), page);
  say(words::now_text(series), page);
  say(words::worry_text(series), page);
  say(words::reach_text(series, newest), page);
  for (const auto& wash : newest.washes) say(words::wash_text(wash), page);
  say(words::left_out_text(newest), page);
  for (const std::string& note : words::trend_notes(series, newest)) {
    page.blocks.push_back(document::Note{note});
  }
  if (trend.charts_too) {
    auto chart = margin_chart(series, "margins_" + number, document::ChartSize::full);
    if (chart) page.blocks.emplace_back(std::move(*chart));
  }
  if (trend.readings_too) page.blocks.emplace_back(readings_table(newest, "readings_" + number));
}

std::vector<Cell> start_row(const reckon::StartJudged& start) {
  return {day_cell(start.day),
          words_cell(start.engine ? words::thing_name(*start.engine) : "engine not known"),
          words_cell(std::string(words::start_word(start))),
          words_cell(words::start_figures(*start.started)),
          words_cell(words::entry_name(start.newest))};
}

void add_starts(const EngineTrend& trend, document::Document& page) {
  if (trend.starts.empty() && trend.exceedances.empty()) return;
  page.blocks.push_back(document::Heading{"Starts and exceedances"});
  for (const reckon::Exceedance& one : trend.exceedances) say(words::exceedance_text(one), page);
  std::map<logbook::Engine, const reckon::StartJudged*> last;
  for (const reckon::StartJudged& start : trend.starts) {
    if (start.engine) last[*start.engine] = &start;
  }
  for (const reckon::StartJudged& start : trend.starts) {
    if (!start.engine)
      say("Of no engine on record in its place: " + words::start_text(start), page);
  }
  for (const auto& [engine, start] : last) {
    say(words::capital(words::thing_name(engine)) + ": " + words::start_text(*start), page);
  }
  if (!trend.readings_too) return;
  document::Table table;
  table.key = "starts";
  table.columns = {{"day", "Day", document::Align::left},
                   {"engine", "Engine", document::Align::left},
                   {"start", "Start", document::Align::left},
                   {"figures", "What was read", document::Align::left},
                   {"entry", "Entry", document::Align::left}};
  for (const reckon::StartJudged& start : trend.starts) table.rows.push_back(start_row(start));
  table.if_empty = "There is no reading of a start.";
  page.blocks.emplace_back(std::move(table));
}

Json decimal_json(const std::optional<SlopeText>& slope, quantity::Decimal SlopeText::*member) {
  return slope ? Json::number(quantity::say(*slope.*member)) : Json();
}

Json washes_json(const Segment& segment) {
  Json washes = Json::array();
  for (const auto& wash : segment.washes) {
    Json json = Json::object();
    json.set("day", quantity::say(wash.day)).set("entry", words::entry_name(wash.wash));
    const auto& figures = wash.figures;
    json.set("gain", figures ? Json::number(quantity::say(figures->gain)) : Json())
        .set("low", figures ? Json::number(quantity::say(figures->low)) : Json())
        .set("high", figures ? Json::number(quantity::say(figures->high)) : Json());
    washes.add(std::move(json));
  }
  return washes;
}

Json readings_json(const Segment& segment) {
  Json readings = Json::array();
  for (const MarginPoint& point : segment.points) {
    Json json = Json::object();
    json.set("day", quantity::say(point.day)).set("entry", words::entry_name(point.entry));
    json.set("margin", point.margin ? Json::number(quantity::say(*point.margin)) : Json());
    json.set("counted", point.flag == reckon::trend::Flag::counted);
    json.set("left_out", words::flag_text(point));
    readings.add(std::move(json));
  }
  return readings;
}

Json start_json(const reckon::StartJudged& start) {
  Json json = Json::object();
  json.set("engine", start.engine ? Json(words::thing_name(*start.engine)) : Json())
      .set("day", quantity::say(start.day))
      .set("entry", words::entry_name(start.newest))
      .set("start", words::start_word(start))
      .set("sentence", words::start_text(start));
  Json outside = Json::array();
  for (const auto& finding : start.findings) outside.add(words::finding_text(finding));
  return json.set("outside", std::move(outside));
}

Json trend_json(const EngineTrend& trend, const Sheet& sheet) {
  Json json = json_head(sheet);
  Json items = Json::array();
  for (const Series& series : trend.series) {
    for (std::size_t i = 0; i < series.segments.size(); ++i) {
      Json item = segment_json(series, series.segments[i], i + 1);
      if (trend.readings_too) item.set("readings", readings_json(series.segments[i]));
      items.add(std::move(item));
    }
  }
  json.set("trends", std::move(items));
  Json starts = Json::array();
  for (const reckon::StartJudged& start : trend.starts) starts.add(start_json(start));
  json.set("starts", std::move(starts));
  Json open = Json::array();
  for (const reckon::Exceedance& one : trend.exceedances) open.add(words::exceedance_text(one));
  json.set("exceedances", std::move(open));
  Json homeless = Json::array();
  for (const auto& entry : trend.of_no_engine) homeless.add(words::entry_name(entry));
  return json.set("of_no_engine", std::move(homeless));
}

}  // namespace

Json segment_json(const Series& series, const Segment& segment, std::size_t number) {
  const auto& reach = segment.reach;
  Json json = Json::object();
  json.set("engine", words::thing_name(series.engine))
      .set("kind", words::check_word(series.check))
      .set("segment", static_cast<std::int64_t>(number))
      .set("since", quantity::say(segment.began))
      .set("n", static_cast<std::int64_t>(segment.finding.points))
      .set("left_out", static_cast<std::int64_t>(left_out(segment)))
      .set("slope_unit", "C per 100 h")
      .set("slope", decimal_json(segment.slope, &SlopeText::per_100_hours))
      .set("low", decimal_json(segment.slope, &SlopeText::low))
      .set("high", decimal_json(segment.slope, &SlopeText::high))
      .set("middle_slope", decimal_json(segment.theil_sen, &SlopeText::per_100_hours))
      .set("kendall_s", segment.kendall ? Json(segment.kendall->s) : Json())
      .set("kendall_p", segment.kendall ? Json::number(quantity::say(segment.kendall->p)) : Json())
      .set("grade", words::grade_word(segment.finding.grade))
      .set("margin_now", segment.now ? Json::number(quantity::say(*segment.now)) : Json())
      .set("floor", series.floor ? Json::number(quantity::say(*series.floor)) : Json())
      .set("early_h", reach ? Json(reach->early_hours) : Json())
      .set("late_h", reach ? Json(reach->late_hours) : Json())
      .set("early_day", reach ? day_json(reach->early_day) : Json())
      .set("last_reading_day", segment.last ? Json(quantity::say(segment.last->day)) : Json())
      .set("washes", washes_json(segment));
  return json;
}

bool is_losing(const Series& series) {
  return reckon::trend::worry_of(series) != reckon::trend::Worry::none;
}

Answer engine_trend(const EngineTrend& trend, const Sheet& sheet) {
  Answer answer;
  document::Document& page = answer.document;
  page.title = "Temperature margins of " + trend.title_of;
  page.head = {as_of_line(sheet)};
  for (const Series& series : trend.series) {
    add_series(series, trend, page);
    answer.needs_attention = answer.needs_attention || is_losing(series);
  }
  answer.needs_attention = answer.needs_attention || !trend.exceedances.empty();
  if (!trend.of_no_engine.empty()) {
    say("Readings taken where no engine was on record in that place, so that they count nowhere: " +
            words::counted(static_cast<std::int64_t>(trend.of_no_engine.size()), "reading",
                           "readings") +
            ", the first " + words::entry_name(trend.of_no_engine.front()) + ".",
        page);
  } else if (trend.series.empty()) {
    say("No cruise or idle reading is on record. Say for example: aircraft ZZ-KIT engine 1 cruise "
        "3500 ft, outside air 12 C, torque 78 %, temperature 702 C.",
        page);
  }
  add_starts(trend, page);
  add_foot(page, sheet);
  answer.json = trend_json(trend, sheet);
  return answer;
}

}  // namespace report
