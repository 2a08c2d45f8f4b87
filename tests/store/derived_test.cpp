// What is worked out and kept, and may be thrown away.
#include <boost/test/unit_test.hpp>

#include "store/desk.h"

namespace {

using desk::Folder;
using logbook::DerivedUse;
using logbook::RunningTotal;
using logbook::UseRow;
using quantity::Days;
using quantity::Sureness;

quantity::Day day(std::int64_t number) { return desk::first_day + Days::of(number); }

UseRow row(const logbook::Entry& entry, std::int64_t on, std::int64_t amount) {
  return {"ZZ-KIT", "", "hours", day(on), 1, entry.id, amount, Sureness::exact};
}
RunningTotal total(std::int64_t on, std::int64_t amount) {
  return {"ZZ-KIT", "", "hours", day(on), amount, Sureness::exact};
}

void replace(store::Book& book, const DerivedUse& use) {
  store::Pen pen(book);
  pen.replace(use);
  pen.commit();
}

logbook::Said cruise() {
  logbook::Reading reading;
  reading.aircraft = {{"ZZ-KIT"}};
  reading.place = {"engine 1"};
  reading.temperature = quantity::Temperature::of(7020);
  return desk::said(reading);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(derived)

BOOST_AUTO_TEST_CASE(use_comes_back_as_it_was_given_and_its_sum_is_the_running_total) {
  const Folder folder;
  auto book = desk::make(folder);
  const auto first = desk::write(book, desk::flew(60));
  const auto second = desk::write(book, desk::flew(66));
  UseRow place = row(second, 2, 77);
  place.place = "engine 1";
  place.key = "starts";
  place.sureness = Sureness::at_least;
  replace(book, {"ZZ-KIT",
                 day(0),
                 {row(first, 1, 100), row(second, 2, 50), place},
                 {total(1, 100), total(2, 150)}});
  replace(book, {"ZZ-MOB", day(0), {}, {}});
  const std::vector<UseRow> wanted = {row(first, 1, 100), row(second, 2, 50), place};
  BOOST_TEST((book.uses("ZZ-KIT") == wanted));
  BOOST_TEST(book.uses("ZZ-MOB").empty());
  const auto totals = book.running_totals("ZZ-KIT");
  BOOST_TEST((totals == std::vector<RunningTotal>{total(1, 100), total(2, 150)}));
  for (const auto& one : totals) BOOST_TEST(book.summed(one) == one.total);
  BOOST_TEST(book.summed(total(0, 0)) == 0);
}

BOOST_AUTO_TEST_CASE(a_late_entry_takes_the_place_of_what_stood_from_its_day_on) {
  const Folder folder;
  auto book = desk::make(folder);
  std::vector<logbook::Entry> flights;
  for (int i = 1; i <= 3; ++i) flights.push_back(desk::write(book, desk::flew(6 * i)));
  replace(book, {"ZZ-KIT",
                 day(0),
                 {row(flights[0], 1, 10), row(flights[1], 5, 30)},
                 {total(1, 10), total(5, 40)}});
  replace(book, {"ZZ-KIT",
                 day(3),
                 {row(flights[2], 3, 7), row(flights[1], 5, 30)},
                 {total(3, 17), total(5, 47)}});
  BOOST_TEST((book.running_totals("ZZ-KIT") ==
              std::vector<RunningTotal>{total(1, 10), total(3, 17), total(5, 47)}));
  BOOST_TEST(book.uses("ZZ-KIT").size() == 3);
  BOOST_TEST(book.summed(total(5, 0)) == 47);
  BOOST_TEST(book.check().empty());
}

BOOST_AUTO_TEST_CASE(an_entry_far_back_is_found_among_the_arrivals) {
  const Folder folder;
  auto book = desk::make(folder);
  const auto old = desk::write(book, desk::flew(6));
  store::Pen pen(book);
  for (int i = 0; i < 700; ++i) pen.append(desk::flew(12));
  const auto fresh = std::get<logbook::Entry>(pen.append(desk::flew(18)));
  pen.replace({"ZZ-KIT", day(0), {row(old, 1, 10), row(fresh, 2, 30)}, {}});
  pen.commit();
  BOOST_TEST((book.uses("ZZ-KIT") == std::vector<UseRow>{row(old, 1, 10), row(fresh, 2, 30)}));
}

BOOST_AUTO_TEST_CASE(entries_are_found_by_what_they_are_about) {
  const Folder folder;
  auto book = desk::make(folder);
  desk::write(book, desk::flew(60));
  const auto north = desk::write(book, desk::joins("North, the old one"));
  desk::write(book, desk::joins("South"));
  const auto found = book.entries_about({"base", {"North, the old one"}});
  BOOST_REQUIRE(found.size() == 1);
  BOOST_TEST((found[0].id == north.id));
  BOOST_TEST((found[0].said == north.said));
  // Use and readings have tables of their own.
  desk::write(book, cruise());
  BOOST_TEST(book.entries_about({"aircraft", {"ZZ-KIT"}}).empty());
}

BOOST_AUTO_TEST_CASE(readings_stand_in_typed_columns) {
  const Folder folder;
  auto book = desk::make(folder);
  desk::write(book, cruise());
  BOOST_TEST(desk::ask_sql(folder.path("the.book"),
                           "SELECT t.name || ' ' || r.place || ' ' || r.temperature || ' ' || "
                           "ifnull(r.torque, 'none') FROM reading AS r JOIN thing AS t "
                           "ON t.id = r.thing") == "aircraft:ZZ-KIT engine 1 7020 none");
  BOOST_TEST(book.check().empty());
}

BOOST_AUTO_TEST_CASE(derived_tables_are_dropped_and_made_anew) {
  const Folder folder;
  auto book = desk::make(folder);
  const auto flight = desk::write(book, desk::flew(60));
  desk::write(book, cruise());
  replace(book, {"ZZ-KIT", day(0), {row(flight, 1, 10)}, {total(1, 10)}});
  desk::run_sql(folder.path("the.book"),
                "DELETE FROM reading; UPDATE mention SET kind = 'x'; DROP TABLE running_total");
  BOOST_TEST(!book.check().empty());
  store::Pen pen(book);
  pen.clear_derived();
  pen.replace({"ZZ-KIT", day(0), {row(flight, 1, 10)}, {total(1, 10)}});
  pen.commit();
  BOOST_TEST(book.check().empty());
  BOOST_TEST(book.uses("ZZ-KIT").size() == 1);
  BOOST_TEST(book.running_totals("ZZ-KIT").size() == 1);
}

BOOST_AUTO_TEST_SUITE_END()
