#include "report/engine_trend.h"

#include "words/trends.h"
#include "words/words.h"

namespace report {

namespace {

using document::Cell;
using document::Json;
using reckon::trend::Grade;
using reckon::trend::MarginPoint;
using reckon::trend::Segment;
using reckon::trend::Series;

Cell words_cell(std::string shown) { return {std::move(shown), "", "", document::State::none}; }

std::vector<Cell> reading_row(const MarginPoint& point) {
  const bool is_worked_out =
      point.flag == reckon::trend::Flag::counted || point.flag == reckon::trend::Flag::bleed_on;
  const std::string margin = quantity::say(point.margin);
  return {{quantity::say(point.day), quantity::say(point.day), "", document::State::none},
          words_cell(words::figure_used(point.engine_hours, reckon::service_clock)),
          is_worked_out ? Cell{margin + " C", margin, "C", document::State::none}
                        : words_cell("not known"),
          words_cell(std::string(words::flag_text(point.flag))),
          words_cell(words::entry_name(point.entry))};
}

document::Table readings_table(const Segment& segment, std::string key) {
  document::Table table;
  table.key = std::move(key);
  table.columns = {{"day", "Day", document::Align::left},
                   {"engine_hours", "Engine hours", document::Align::right},
                   {"margin", "Margin", document::Align::right},
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

std::string now_text(const Series& series, const Segment& segment) {
  std::string text = "Margin on the line now: " + quantity::say(*segment.now) + " C.";
  if (series.floor) {
    text += *segment.now <= *series.floor
                ? " That is at or below your floor of " + quantity::say(*series.floor) + " C."
                : " Your floor is " + quantity::say(*series.floor) + " C.";
  }
  return text;
}

void add_series(const Series& series, bool readings_too, document::Document& page) {
  const Segment& newest = series.segments.back();
  const std::string name = words::thing_name(series.engine);
  page.blocks.push_back(
      document::Heading{name + ", " + std::string(words::series_name(series.check))});
  page.blocks.push_back(document::Paragraph{words::trend_text(series, newest)});
  if (newest.now) page.blocks.push_back(document::Paragraph{now_text(series, newest)});
  const std::size_t flagged = left_out(newest);
  if (flagged > 0) {
    page.blocks.push_back(document::Paragraph{"Left out of the line: " + std::to_string(flagged) +
                                              (flagged == 1 ? " reading" : " readings") +
                                              "; --readings shows why."});
  }
  for (const std::string& note : words::trend_notes(series, newest)) {
    page.blocks.push_back(document::Note{note});
  }
  if (!readings_too) return;
  page.blocks.push_back(readings_table(newest, "readings_" + std::to_string(page.blocks.size())));
}

Json number_or_null(const std::optional<reckon::trend::SlopeText>& slope,
                    quantity::Decimal reckon::trend::SlopeText::*member) {
  return slope ? Json::number(quantity::say(*slope.*member)) : Json();
}

Json segment_json(const Series& series, const Segment& segment, std::size_t number) {
  Json json = Json::object();
  json.set("engine", words::thing_name(series.engine))
      .set("kind", series.check == logbook::CheckKind::cruise ? "cruise" : "idle")
      .set("segment", static_cast<std::int64_t>(number))
      .set("since", quantity::say(segment.began))
      .set("n", static_cast<std::int64_t>(segment.finding.points))
      .set("left_out", static_cast<std::int64_t>(left_out(segment)))
      .set("slope_unit", "C per 100 h")
      .set("slope", number_or_null(segment.slope, &reckon::trend::SlopeText::per_100_hours))
      .set("low", number_or_null(segment.slope, &reckon::trend::SlopeText::low))
      .set("high", number_or_null(segment.slope, &reckon::trend::SlopeText::high))
      .set("grade", words::grade_word(segment.finding.grade))
      .set("margin_now", segment.now ? Json::number(quantity::say(*segment.now)) : Json())
      .set("floor", series.floor ? Json::number(quantity::say(*series.floor)) : Json())
      .set("early_h", Json())
      .set("early_day", Json());
  return json;
}

bool is_losing(const Series& series, const Segment& segment) {
  const bool is_low = series.floor && segment.now && *segment.now <= *series.floor;
  const auto& evidence = segment.finding.evidence;
  return is_low || (segment.finding.grade == Grade::clear && evidence &&
                    evidence->direction == reckon::trend::Direction::falling);
}

}  // namespace

Answer engine_trend(const std::vector<Series>& all, const std::string& title_of, bool readings_too,
                    const Sheet& sheet) {
  Answer answer;
  document::Document& page = answer.document;
  page.title = "Temperature margins of " + title_of;
  page.head = {"As of " + quantity::say_long(sheet.as_of),
               "Entries counted: " + words::horizon_text(sheet.horizon)};
  Json items = Json::array();
  for (const Series& series : all) {
    add_series(series, readings_too, page);
    for (std::size_t i = 0; i < series.segments.size(); ++i) {
      items.add(segment_json(series, series.segments[i], i + 1));
    }
    answer.needs_attention = answer.needs_attention || is_losing(series, series.segments.back());
  }
  if (all.empty()) {
    page.blocks.push_back(document::Paragraph{
        "No cruise or idle reading is on record. Say for example: aircraft ZZ-KIT engine 1 cruise "
        "3500 ft, outside air 12 C, torque 78 %, temperature 702 C."});
  }
  page.blocks.push_back(document::Note{std::string(words::caution())});
  answer.json = Json::object();
  answer.json.set("as_of", quantity::say(sheet.as_of))
      .set("horizon", words::horizon_text(sheet.horizon))
      .set("trends", std::move(items));
  return answer;
}

}  // namespace report
