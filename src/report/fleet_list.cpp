#include "report/fleet_list.h"

#include <algorithm>

#include "reckon/trend/worst_first.h"
#include "report/engine_trend.h"
#include "report/pieces.h"
#include "report/trend_chart.h"
#include "words/dues.h"
#include "words/figures.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/starts.h"
#include "words/trends.h"
#include "words/words.h"

namespace report {

namespace {

using document::Align;
using document::Cell;
using document::Json;
using document::Table;
using reckon::Item;
using reckon::trend::Segment;
using reckon::trend::Series;

// Smaller is worse.
int harm_of(reckon::State state) {
  switch (state) {
    case reckon::State::over:
      return 0;
    case reckon::State::due:
      return 1;
    case reckon::State::not_known:
      return 2;
    case reckon::State::soon:
      return 3;
    case reckon::State::ok:
      return 4;
  }
  return 0;
}

// What was past a limit and not looked into leaves it unknown whether the aircraft may fly.
reckon::State worst_of(const FleetAircraft& one) {
  reckon::State worst =
      one.items.empty() || !one.open.empty() ? reckon::State::not_known : reckon::State::ok;
  for (const Item& item : one.items) {
    if (harm_of(item.state) < harm_of(worst)) worst = item.state;
  }
  return worst;
}

// The first item in the worst state there is.
std::string next_of(const FleetAircraft& one) {
  const reckon::State worst = worst_of(one);
  const auto item = std::find_if(one.items.begin(), one.items.end(),
                                 [&](const Item& each) { return each.state == worst; });
  if (item == one.items.end()) {
    return one.open.empty()
               ? "nothing on record"
               : "entry " + words::entry_name(one.open.front().newest) + " looked into";
  }
  return worst == reckon::State::not_known ? words::item_name(*item) : words::next_text(*item);
}

std::int64_t count_in(const FleetAircraft& one, reckon::State state) {
  return std::count_if(one.items.begin(), one.items.end(),
                       [&](const Item& item) { return item.state == state; });
}

// Also those of which one side is not known while another is due or over.
std::int64_t count_not_known(const FleetAircraft& one) {
  return std::count_if(one.items.begin(), one.items.end(), [](const Item& item) {
    return item.state == reckon::State::not_known ||
           std::any_of(item.sides.begin(), item.sides.end(), [](const reckon::Side& side) {
             return side.state == reckon::State::not_known;
           });
  });
}

Cell number_cell(std::int64_t number) {
  const std::string digits = std::to_string(number);
  return {digits, digits, "", document::State::none};
}

Table aircraft_table(const reckon::Histories& histories, const Fleet& fleet) {
  Table table;
  table.key = "aircraft";
  table.columns = {{"aircraft", "Aircraft", Align::left}, {"airframe", "Airframe", Align::right},
                   {"over", "Over", Align::right},        {"not_known", "Not known", Align::right},
                   {"state", "State", Align::left},       {"first", "First", Align::left}};
  for (const FleetAircraft& one : fleet.aircraft) {
    const auto hours = histories.total(one.aircraft, reckon::service_clock, histories.now()).figure;
    table.rows.push_back({words_cell(words::short_name(one.aircraft)),
                          words_cell(words::figure_used(hours, reckon::service_clock)),
                          number_cell(count_in(one, reckon::State::over)),
                          number_cell(count_not_known(one)), state_cell(worst_of(one)),
                          words_cell(next_of(one))});
  }
  table.if_empty = "No aircraft is on record.";
  return table;
}

Cell decimal_cell(const std::string& digits, const std::string& unit) {
  const std::string_view shown_unit = unit == "C per 100 h" ? "C" : std::string_view(unit);
  return {digits + " " + std::string(shown_unit), digits, unit, document::State::none};
}

std::string where_text(const reckon::Histories& histories, const logbook::Engine& engine) {
  const auto stay = histories.stay_now(logbook::Thing(engine));
  const auto aircraft = histories.aircraft_now(logbook::Thing(engine));
  if (!stay || !aircraft) return "not fitted";
  const std::string place = stay->place.text;
  return words::short_name(*aircraft) + " " +
         (place.starts_with("engine ") ? place.substr(7) : place);
}

std::vector<Cell> series_row(const reckon::Histories& histories, const Series& series) {
  const Segment& newest = series.segments.back();
  const Cell none = words_cell("");
  return {
      words_cell(series.engine.serial.text),
      words_cell(where_text(histories, series.engine)),
      words_cell(std::string(words::check_word(series.check))),
      newest.now ? decimal_cell(quantity::say(*newest.now), "C") : none,
      newest.slope ? decimal_cell(quantity::say(newest.slope->per_100_hours), "C per 100 h") : none,
      words_cell(std::string(words::grade_word(newest.finding.grade))),
      newest.reach ? decimal_cell(std::to_string(newest.reach->early_hours), "h") : none};
}

// As wide as a terminal takes; the rest stands in the engine's own answer.
Table engines_table(const reckon::Histories& histories, const Fleet& fleet) {
  Table table;
  table.key = "engines";
  table.columns = {{"engine", "Engine", Align::left},    {"where", "Where", Align::left},
                   {"check", "Check", Align::left},      {"margin", "Margin", Align::right},
                   {"slope", "In 100 h", Align::right},  {"grade", "How sure", Align::left},
                   {"early_h", "Floor in", Align::right}};
  for (const Series& series : fleet.series) table.rows.push_back(series_row(histories, series));
  table.if_empty = "No cruise or idle reading is on record.";
  return table;
}

void add_losing(const Fleet& fleet, document::Document& page) {
  for (const Series& series : fleet.series) {
    if (!is_losing(series)) continue;
    say(words::capital(words::thing_name(series.engine)) + ": " +
            words::trend_text(series, series.segments.back()),
        page);
    say(words::worry_text(series), page);
  }
  for (const reckon::Exceedance& one : fleet.exceedances) say(words::exceedance_text(one), page);
}

void add_reach_note(const Fleet& fleet, document::Document& page) {
  if (std::any_of(fleet.series.begin(), fleet.series.end(),
                  [](const Series& one) { return one.segments.back().reach.has_value(); })) {
    page.blocks.push_back(document::Note{std::string(words::reach_column_text())});
  }
}

void add_charts(const Fleet& fleet, document::Document& page) {
  if (!fleet.charts_too) return;
  std::size_t number = 0;
  for (const Series& series : fleet.series) {
    ++number;
    auto chart =
        margin_chart(series, "margins_" + std::to_string(number), document::ChartSize::tile);
    if (chart) page.blocks.emplace_back(std::move(*chart));
  }
}

Json fleet_json(const reckon::Histories& histories, const Fleet& fleet, const Sheet& sheet) {
  Json json = json_head(sheet);
  Json aircraft = Json::array();
  for (const FleetAircraft& one : fleet.aircraft) {
    Json object = Json::object();
    const auto hours = histories.total(one.aircraft, reckon::service_clock, histories.now()).figure;
    object.set("aircraft", words::short_name(one.aircraft))
        .set("airframe", figure_json(hours, Toward::up))
        .set("state", state_word(worst_of(one)))
        .set("over", count_in(one, reckon::State::over))
        .set("not_known", count_not_known(one))
        .set("first", next_of(one));
    aircraft.add(std::move(object));
  }
  json.set("aircraft", std::move(aircraft));
  Json engines = Json::array();
  for (const Series& series : fleet.series) {
    Json object = segment_json(series, series.segments.back(), series.segments.size());
    object.set("where", where_text(histories, series.engine));
    engines.add(std::move(object));
  }
  json.set("engines", std::move(engines));
  Json open = Json::array();
  for (const reckon::Exceedance& one : fleet.exceedances) open.add(words::exceedance_text(one));
  return json.set("exceedances", std::move(open));
}

bool needs_attention(const Fleet& fleet) {
  return !fleet.exceedances.empty() ||
         std::any_of(fleet.series.begin(), fleet.series.end(), is_losing) ||
         std::any_of(fleet.aircraft.begin(), fleet.aircraft.end(),
                     [](const FleetAircraft& one) { return wants_attention(worst_of(one)); });
}

}  // namespace

Answer fleet_list(const reckon::Histories& histories, Fleet fleet, const Sheet& sheet) {
  std::stable_sort(fleet.aircraft.begin(), fleet.aircraft.end(),
                   [](const FleetAircraft& a, const FleetAircraft& b) {
                     return harm_of(worst_of(a)) < harm_of(worst_of(b));
                   });
  reckon::trend::worst_first(fleet.series);
  Answer answer;
  document::Document& page = answer.document;
  page.title = "The fleet, the worst first";
  page.head = {as_of_line(sheet)};
  page.blocks.emplace_back(aircraft_table(histories, fleet));
  add_losing(fleet, page);
  page.blocks.emplace_back(engines_table(histories, fleet));
  add_reach_note(fleet, page);
  add_charts(fleet, page);
  add_foot(page, sheet);
  answer.json = fleet_json(histories, fleet, sheet);
  answer.needs_attention = needs_attention(fleet);
  return answer;
}

}  // namespace report
