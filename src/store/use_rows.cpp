#include "store/use_rows.h"

#include <map>
#include <tuple>

#include "quantity/expect.h"
#include "store/sql.h"

namespace store {
namespace {

constexpr std::string_view series_of_aircraft = "SELECT id FROM series WHERE aircraft = ?";

std::int64_t number_of(quantity::Sureness sureness) { return static_cast<std::int64_t>(sureness); }

quantity::Sureness sureness_in(const Statement& statement, int column) {
  const std::int64_t number = statement.number(column);
  EXPECT(number >= 0 && number <= number_of(quantity::Sureness::unknown));
  return static_cast<quantity::Sureness>(number);
}

// The numbers of one aircraft's series; a new one is put down where it is first asked for.
class Series {
 public:
  Series(Database& database, const std::string& aircraft)
      : database_(database), aircraft_(aircraft) {
    Statement known =
        database.statement("SELECT place, key, id FROM series WHERE aircraft = ?", aircraft);
    while (known.next()) {
      known_[{std::string(known.text(0)), std::string(known.text(1))}] = known.number(2);
    }
  }

  std::int64_t of(const std::string& place, const std::string& key) {
    std::int64_t& id = known_[{place, key}];
    if (id != 0) return id;
    id = 1 + database_.number("SELECT max(id) FROM series");
    database_.execute("INSERT INTO series VALUES (?, ?, ?, ?)", id, aircraft_, place, key);
    return id;
  }

 private:
  Database& database_;
  const std::string& aircraft_;
  std::map<std::pair<std::string, std::string>, std::int64_t> known_;
};

void remove_from(Database& database, const std::string& aircraft, quantity::Day from) {
  const std::string where =
      "WHERE day >= ? AND series IN (" + std::string(series_of_aircraft) + ")";
  database.execute("DELETE FROM use " + where, from.count(), aircraft);
  database.execute("DELETE FROM running_total " + where, from.count(), aircraft);
}

}  // namespace

void replace(Database& database, const logbook::DerivedUse& use, Places& places) {
  remove_from(database, use.aircraft, use.from);
  Series series(database, use.aircraft);
  for (const logbook::UseRow& row : use.uses) {
    EXPECT(row.aircraft == use.aircraft && row.day >= use.from);
    database.execute("INSERT INTO use VALUES (?, ?, ?, ?, ?, ?)", series.of(row.place, row.key),
                     row.day.count(), row.order, places.of(row.entry), row.amount,
                     number_of(row.sureness));
  }
  for (const logbook::RunningTotal& total : use.totals) {
    EXPECT(total.aircraft == use.aircraft && total.day >= use.from);
    database.execute("INSERT INTO running_total VALUES (?, ?, ?, ?)",
                     series.of(total.place, total.key), total.day.count(), total.total,
                     number_of(total.sureness));
  }
}

std::vector<logbook::UseRow> uses(Database& database, const std::string& aircraft) {
  std::vector<logbook::UseRow> rows;
  Statement found = database.statement(
      "SELECT s.place, s.key, u.day, u.ordinal, u.amount, u.sureness, a.writer, a.number, a.digest "
      "FROM series AS s JOIN use AS u ON u.series = s.id JOIN arrived AS a ON a.place = u.entry "
      "WHERE s.aircraft = ? ORDER BY s.place, s.key, u.day, u.ordinal, u.entry",
      aircraft);
  while (found.next()) {
    rows.push_back({aircraft, std::string(found.text(0)), std::string(found.text(1)),
                    quantity::Day::of(found.number(2)), found.number(3),
                    entry_in(database, found, 6), found.number(4), sureness_in(found, 5)});
  }
  return rows;
}

std::vector<logbook::RunningTotal> running_totals(Database& database, const std::string& aircraft) {
  std::vector<logbook::RunningTotal> totals;
  Statement found = database.statement(
      "SELECT s.place, s.key, t.day, t.total, t.sureness FROM series AS s "
      "JOIN running_total AS t ON t.series = s.id WHERE s.aircraft = ? "
      "ORDER BY s.place, s.key, t.day",
      aircraft);
  while (found.next()) {
    totals.push_back({aircraft, std::string(found.text(0)), std::string(found.text(1)),
                      quantity::Day::of(found.number(2)), found.number(3), sureness_in(found, 4)});
  }
  return totals;
}

std::int64_t summed(Database& database, const logbook::RunningTotal& key) {
  return database.number(
      "SELECT sum(u.amount) FROM series AS s JOIN use AS u ON u.series = s.id "
      "WHERE s.aircraft = ? AND s.place = ? AND s.key = ? AND u.day <= ?",
      key.aircraft, key.place, key.key, key.day.count());
}

}  // namespace store
