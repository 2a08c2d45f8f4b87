#include "store/finding_lists.h"

#include <algorithm>
#include <array>
#include <variant>

#include "sentence/frame.h"
#include "sentence/sentence.h"

namespace store {
namespace {

using Figure = std::optional<std::int64_t>;

// A list of readings: its table, how many figures a row has (the day among them), how it is put in
// and read out. Figures begin with the day.
struct Table {
  std::string_view name;
  std::size_t figures;
  std::string_view insert;
  std::string_view select;
};
constexpr std::array list_tables = {
    Table{"mention", 1, "INSERT INTO mention (thing, kind, entry, day) VALUES (?, ?, ?, ?)",
          "SELECT l.entry, t.name, l.kind, l.day FROM mention AS l "
          "JOIN thing AS t ON t.id = l.thing"},
    Table{"reading", 11,
          "INSERT INTO reading (thing, place, entry, day, check_kind, altitude_feet, outside_air, "
          "torque, torque_unit, gas_generator, temperature, fuel, fuel_unit, engine_seconds) "
          "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
          "SELECT l.entry, t.name, l.place, l.day, l.check_kind, l.altitude_feet, l.outside_air, "
          "l.torque, l.torque_unit, l.gas_generator, l.temperature, l.fuel, l.fuel_unit, "
          "l.engine_seconds FROM reading AS l JOIN thing AS t ON t.id = l.thing"},
    Table{"start_reading", 10,
          "INSERT INTO start_reading (thing, place, entry, day, battery, lowest, outside_air, "
          "residual, peak, light_off_seconds, idle_seconds, generator, starter_out) "
          "VALUES (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)",
          "SELECT l.entry, t.name, l.place, l.day, l.battery, l.lowest, l.outside_air, l.residual, "
          "l.peak, l.light_off_seconds, l.idle_seconds, l.generator, l.starter_out "
          "FROM start_reading AS l JOIN thing AS t ON t.id = l.thing"},
};

template <class Quantity>
Figure count(const std::optional<Quantity>& quantity) {
  return quantity ? Figure(quantity->count()) : std::nullopt;
}
template <class Gauge>
Figure value(const std::optional<Gauge>& gauge) {
  return gauge ? Figure(gauge->value.count()) : std::nullopt;
}
template <class Gauge>
Figure unit(const std::optional<Gauge>& gauge) {
  return gauge ? Figure(static_cast<std::int64_t>(gauge->unit)) : std::nullopt;
}

std::string name_of(const logbook::Aircraft& aircraft) {
  return sentence::say_about({{"aircraft", {aircraft.registration.text}}});
}

std::vector<ListRow> rows_of(const logbook::Reading& reading, quantity::Day day) {
  return {{"reading",
           name_of(reading.aircraft),
           reading.place.text,
           {day.count(), static_cast<std::int64_t>(reading.check), reading.pressure_altitude_feet,
            count(reading.outside_air), value(reading.torque), unit(reading.torque),
            count(reading.gas_generator_percent), count(reading.temperature), value(reading.fuel),
            unit(reading.fuel), count(reading.engine)}}};
}

std::vector<ListRow> rows_of(const logbook::Started& started, quantity::Day day) {
  return {{"start_reading",
           name_of(started.aircraft),
           started.place.text,
           {day.count(), count(started.battery_volts), count(started.lowest_volts),
            count(started.outside_air), count(started.residual), count(started.peak),
            started.light_off_seconds, started.idle_seconds, count(started.generator_volts),
            count(started.starter_out_percent)}}};
}

bool is_use(const logbook::Fact& fact) {
  return std::holds_alternative<logbook::Flew>(fact) ||
         std::holds_alternative<logbook::Ran>(fact) ||
         std::holds_alternative<logbook::Tried>(fact) ||
         std::holds_alternative<logbook::Unaccounted>(fact);
}

std::vector<ListRow> mentions(const logbook::Entry& entry) {
  std::vector<ListRow> rows;
  const std::string kind(sentence::kind_name(entry.said->fact));
  for (const logbook::About& about : entry.frame.about) {
    rows.push_back({"mention", sentence::say_about({about}), kind, {entry.said->day.count()}});
  }
  return rows;
}

std::int64_t thing_numbered(Database& database, const std::string& name) {
  const std::int64_t known = database.number("SELECT id FROM thing WHERE name = ?", name);
  if (known != 0) return known;
  const std::int64_t id = 1 + database.number("SELECT max(id) FROM thing");
  database.execute("INSERT INTO thing VALUES (?, ?)", id, name);
  return id;
}

void insert(Database& database, const ListRow& row, std::int64_t place) {
  const std::int64_t thing = thing_numbered(database, row.thing);
  const auto* const table = std::find_if(list_tables.begin(), list_tables.end(),
                                         [&](const Table& one) { return one.name == row.table; });
  Statement statement = database.statement(table->insert, thing, row.words, place);
  int parameter = 3;
  for (const Figure& figure : row.figures) {
    ++parameter;
    if (figure) {
      statement.bind(parameter, *figure);
    } else {
      statement.bind(parameter, Null());
    }
  }
  statement.run();
}

ListRow row_in(const Table& table, const Statement& found) {
  constexpr int first_figure = 3;
  ListRow row{std::string(table.name), std::string(found.text(1)), std::string(found.text(2)), {}};
  for (int i = first_figure; i < first_figure + static_cast<int>(table.figures); ++i) {
    row.figures.push_back(found.is_null(i) ? std::nullopt : Figure(found.number(i)));
  }
  return row;
}

}  // namespace

std::vector<ListRow> list_rows(const logbook::Entry& entry) {
  if (!entry.said || is_use(entry.said->fact)) return {};
  if (const auto* reading = std::get_if<logbook::Reading>(&entry.said->fact)) {
    return rows_of(*reading, entry.said->day);
  }
  if (const auto* started = std::get_if<logbook::Started>(&entry.said->fact)) {
    return rows_of(*started, entry.said->day);
  }
  return mentions(entry);
}

void list(Database& database, const logbook::Entry& entry, std::int64_t place) {
  for (const ListRow& row : list_rows(entry)) insert(database, row, place);
}

Listed listed(Database& database) {
  Listed result;
  for (const Table& table : list_tables) {
    Statement found = database.statement(table.select);
    while (found.next()) result.emplace_back(found.number(0), row_in(table, found));
  }
  std::sort(result.begin(), result.end());
  return result;
}

}  // namespace store
