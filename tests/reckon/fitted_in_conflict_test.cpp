// Fittings that two writers made without knowing of each other: practice 4.7, C3 (one part on two
// aircraft: life accrues on both) and C4 (two parts in one place: both accrue); rings of hosts are
// asked about and end (derived: a thing is not inside itself).
#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/aboard.h"
#include "reckon/checking.h"
#include "told.h"

using checking::CheckKind;
using checking::Record;
using support::Book;
using support::fitted;
using support::flew;
using support::forward;
using support::had_hours;
using support::removed;
using told::Told;

BOOST_AUTO_TEST_SUITE(fitted_in_conflict)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Aircraft mob = support::aircraft("ZZ-MOB");
const logbook::Engine engine = support::engine("TS-40", "E-1");
const logbook::Engine other = support::engine("TS-40", "E-2");
const logbook::Part module = support::part("PN-M", "M-4");
const logbook::Part disc = support::part("PN-T1", "T1-77");

std::vector<std::string> questions(const Told& told) {
  std::vector<std::string> kinds;
  for (const reckon::Question& one : told.histories.questions()) kinds.push_back(one.class_);
  return kinds;
}

// By two writers: the module in the engine, and the engine in the module.
Book ring() {
  Book book;
  book.say("2025-03-01", forward(kit, "1000.0"));
  book.say("2025-03-01", fitted(engine, {module, "a", ""}, {had_hours("10.0")}));
  book.write_as('M');
  book.say("2025-03-01", fitted(module, {engine, "a", ""}, {had_hours("20.0")}));
  return book;
}

}  // namespace

BOOST_AUTO_TEST_CASE(two_things_in_one_place_both_use_their_lives) {
  Book book;
  book.say("2025-03-01", forward(kit, "1000.0"));
  book.say("2025-03-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("10.0")}));
  book.write_as('M');
  book.say("2025-03-02", fitted(other, {kit, "engine 1", ""}, {had_hours("20.0")}));
  book.say("2025-03-02", fitted(disc, {kit, "hook", ""}, {had_hours("5.0")}));
  book.say("2025-03-05", flew(kit, "2.0"));
  const Told told(book, "2025-03-10");
  BOOST_TEST(told.hours(engine) == "12.0");
  BOOST_TEST(told.hours(other) == "22.0");
  BOOST_CHECK(questions(told) == std::vector<std::string>{"two in one place"});
  BOOST_CHECK((told.histories.questions().front().about ==
               std::vector<logbook::Thing>{kit, engine, other}));
  const auto found = reckon::check_record(book.entries(), support::day("2025-03-10"));
  BOOST_REQUIRE_EQUAL(found.size(), 1U);
  BOOST_CHECK(found.front().objection.kind == CheckKind::place_taken);
}

BOOST_AUTO_TEST_CASE(what_was_moved_away_leaves_room_in_its_place) {
  Book book;
  book.say("2025-03-01", forward(kit, "1000.0"));
  book.say("2025-03-01", forward(mob, "500.0"));
  book.say("2025-03-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("10.0")}));
  book.say("2025-03-02", removed(engine, {kit, "engine 1", ""}));
  book.say("2025-03-03", fitted(engine, {mob, "engine 1", ""}));
  book.say("2025-03-03", fitted(other, {kit, "engine 1", ""}, {had_hours("20.0")}));
  book.say("2025-03-05", flew(kit, "2.0"));
  const Told told(book, "2025-03-10");
  BOOST_CHECK(questions(told).empty());
  BOOST_TEST(told.hours(engine) == "10.0");
  BOOST_TEST(told.hours(other) == "22.0");
}

BOOST_AUTO_TEST_CASE(a_ring_of_hosts_flies_nowhere) {
  const Book book = ring();
  const Told told(book, "2025-03-10");
  BOOST_TEST(told.hours(engine) == "10.0");
  BOOST_TEST(told.hours(module) == "20.0");
  BOOST_CHECK(!reckon::aircraft_at(told.histories, engine, told.histories.now()));
  const auto found = reckon::check_record(book.entries(), support::day("2025-03-10"));
  BOOST_REQUIRE_EQUAL(found.size(), 1U);
  BOOST_CHECK(found.front().objection.kind == CheckKind::serial_elsewhere);
  BOOST_CHECK_EQUAL(found.front().objection.slot, "host");
}

BOOST_AUTO_TEST_CASE(nothing_is_fitted_into_a_ring) {
  Record record;
  static_cast<Book&>(record) = ring();
  CHECK_KINDS(record.kinds("2025-03-05", fitted(disc, {engine, "b", ""})),
              CheckKind::serial_elsewhere);
}

BOOST_AUTO_TEST_CASE(the_engine_of_a_place_is_the_one_that_is_still_there) {
  Record record;
  record.begin("1000.0", "");
  record.say("2025-03-01", forward(mob, "500.0"));
  auto tried = support::tried(kit, "engine 1", 1);
  tried.serial = {"E-2"};
  CHECK_KINDS(record.kinds("2025-03-02", tried));  // nothing is known of the place
  record.say("2025-03-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("10.0")}));
  CHECK_KINDS(record.kinds("2025-03-02", tried), CheckKind::not_fitted_there);
  tried.serial = {"E-1"};
  CHECK_KINDS(record.kinds("2025-03-02", tried));
  // Another base fitted it elsewhere: nobody is known to be in the place since.
  record.write_as('M');
  record.say("2025-03-03", fitted(engine, {mob, "engine 1", ""}));
  tried.serial = {"E-2"};
  CHECK_KINDS(record.kinds("2025-03-04", tried));
  // A part may stand in a place too, of which no engine's serial says anything.
  record.say("2025-03-04", fitted(disc, {kit, "engine 2", ""}, {had_hours("5.0")}));
  tried.place = {"engine 2"};
  CHECK_KINDS(record.kinds("2025-03-05", tried));
}

BOOST_AUTO_TEST_CASE(a_late_fitting_into_a_place_that_was_taken_later) {
  Record record;
  record.begin("1000.0", "");
  record.say("2025-03-01", forward(mob, "500.0"));
  record.say("2025-03-01", forward(engine, {had_hours("10.0")}));
  record.say("2025-03-06", fitted(other, {kit, "engine 1", ""}, {had_hours("20.0")}));
  CHECK_KINDS(record.kinds("2025-03-02", fitted(engine, {kit, "engine 1", ""})),
              CheckKind::moved_later);
  // Moved on before that, by another base that fitted it elsewhere.
  record.say("2025-03-04", removed(engine, {kit, "engine 1", ""}));
  CHECK_KINDS(record.kinds("2025-03-02", fitted(engine, {kit, "engine 1", ""})));
}

BOOST_AUTO_TEST_SUITE_END()
