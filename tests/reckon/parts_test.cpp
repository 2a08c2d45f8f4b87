// Parts that move, and what they had: records B3 (S25, S26, S28, S32, S34), rules B7 (63 to 65, 74,
// 77).
#include <boost/test/unit_test.hpp>

#include "told.h"

using logbook::Basis;
using logbook::CountedEvent;
using logbook::CounterKind;
using support::Book;
using support::each;
using support::fitted;
using support::flew;
using support::forward;
using support::had;
using support::had_hours;
using support::landings;
using support::removed;
using support::starts;
using told::Told;

BOOST_AUTO_TEST_SUITE(parts)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Aircraft mob = support::aircraft("ZZ-MOB");
const logbook::Aircraft twin = support::aircraft("ZZ-TWN");
const logbook::Engine engine = support::engine("TS-40", "E-1001");
const logbook::Engine other = support::engine("TS-40", "E-1002");
const logbook::Part part = support::part("PN-4411", "B-88");
const logbook::Part module = support::part("PN-M", "M-4");
const logbook::Part disc = support::part("PN-T1", "T1-77");

Book two_aircraft(const std::string& kit_hours, const std::string& mob_hours) {
  Book book;
  book.say("2025-01-01", forward(kit, kit_hours));
  book.say("2025-01-01", forward(mob, mob_hours));
  return book;
}

}  // namespace

BOOST_AUTO_TEST_CASE(bolts_count_the_landings_of_their_aircraft) {  // records S25
  Book book = two_aircraft("1000.0", "2000.0");
  book.say("2025-01-01", forward(part, {had(landings(4981))}));
  book.say("2025-01-01", fitted(part, {kit, "tail rotor bolts", ""}));
  for (int flight = 1; flight <= 17; ++flight) {
    const std::string day =
        "2025-02-" + std::string(flight < 10 ? "0" : "") + std::to_string(flight);
    book.say(day, flew(kit, "0.5", {landings(2)}));
    if (flight == 9) {
      BOOST_TEST(Told(book, day).count(part, CounterKind::landings) == "4999");
    }
  }
  BOOST_TEST(Told(book, "2025-03-01").count(part, CounterKind::landings) == "5015");
}

BOOST_AUTO_TEST_CASE(cycles_follow_starts_and_not_landings) {  // records S26
  const auto cycles = support::count(CounterKind::cycles, "2210");
  Book book = two_aircraft("5003.1", "1.0");
  book.say("2025-01-01", support::rule(logbook::Model{{"TS-40"}}, CounterKind::cycles,
                                       {each(CountedEvent::start, "1")}));
  book.say("2025-01-01",
           fitted(engine, {kit, "engine 1", "5003.1"}, {had_hours("1820.4"), had(cycles)}));
  book.say("2025-02-01", flew(kit, "207.5", {starts(188), landings(500), support::flights(188)}));
  book.say("2025-03-01", flew(kit, "200.0", {starts(200), landings(400), support::flights(200)}));
  const Told told(book, "2025-03-01");
  BOOST_TEST(told.hours(kit) == "5410.6");
  BOOST_TEST(told.hours(engine) == "2227.9");
  BOOST_TEST(told.count(engine, CounterKind::cycles) == "2598");
}

BOOST_AUTO_TEST_CASE(a_serial_in_two_places_uses_in_both_until_it_is_decided) {  // records S28
  Book book = two_aircraft("1000.0", "2000.0");
  book.say("2025-02-01", fitted(part, {kit, "main rotor blade 1", ""}, {had_hours("100.0")}));
  book.say("2025-02-20", fitted(part, {mob, "main rotor blade 1", ""}));
  book.say("2025-02-10", flew(kit, "1.0"));
  book.say("2025-02-21", flew(kit, "2.0"));
  book.say("2025-02-22", flew(mob, "4.0"));
  const Told told(book, "2025-03-01");
  BOOST_TEST(told.hours(part) == "107.0");
  BOOST_TEST(told.fitting(part) == "7.0");
  BOOST_REQUIRE_EQUAL(told.histories.questions().size(), 1U);
  const reckon::Question& question = told.histories.questions()[0];
  BOOST_TEST(question.class_ == "serial in two places");
  BOOST_CHECK(question.about == (std::vector<logbook::Thing>{kit, mob, part}));
}

BOOST_AUTO_TEST_CASE(a_disc_in_a_module_in_an_engine_moves_with_it) {  // records S32
  Book book = two_aircraft("1000.0", "2000.0");
  book.say("2025-01-01", fitted(disc, {module, "disc", ""}, {had_hours("2760.0")}));
  book.say("2025-01-01", fitted(module, {engine, "gas generator", ""}, {had_hours("9000.0")}));
  book.say("2025-01-01", support::overhauled(module));
  book.say("2025-01-02", fitted(engine, {kit, "engine 1", ""}, {had_hours("5000.0")}));
  book.say("2025-02-01", flew(kit, "1500.0", {support::flights(1000)}));
  book.say("2025-02-02", removed(engine, {kit, "engine 1", ""}));
  book.say("2025-02-03", flew(kit, "7.0"));
  book.say("2025-02-04", fitted(engine, {mob, "engine 1", ""}));
  book.say("2025-02-05", flew(mob, "1600.0", {support::flights(1000)}));
  const Told told(book, "2025-03-01");
  BOOST_TEST(told.overhaul(module) == "3100.0");
  BOOST_TEST(told.hours(module) == "12100.0");
  BOOST_TEST(told.hours(disc) == "5860.0");
  BOOST_TEST(told.hours(engine) == "8100.0");
  BOOST_TEST(told.fitting(disc) == "3100.0");
  BOOST_TEST(told.fitting(engine) == "1600.0");
  BOOST_CHECK(told.histories.aircraft_now(disc) == std::optional(mob));
}

BOOST_AUTO_TEST_CASE(a_lent_part_gains_only_where_it_is) {  // records S34
  Book book = two_aircraft("4600.0", "2000.0");
  book.say("2025-01-01", fitted(part, {mob, "servo", ""}, {had_hours("880.0")}));
  book.say("2025-02-01", removed(part, {mob, "servo", ""}));
  book.say("2025-02-01", fitted(part, {kit, "servo", "4600.0"}));
  book.say("2025-02-02", flew(kit, "18.7", {support::flights(12)}));
  book.say("2025-02-02", flew(mob, "6.2", {support::flights(4)}));
  book.say("2025-02-03", removed(part, {kit, "servo", "4618.7"}));
  book.say("2025-02-03", fitted(part, {mob, "servo", ""}));
  const Told told(book, "2025-02-03");
  BOOST_TEST(told.hours(part) == "898.7");
  BOOST_TEST(told.fitting(part) == "0.0");
  BOOST_REQUIRE_EQUAL(told.histories.stays(part).size(), 3U);
  const auto total = told.histories.total(part, reckon::service_clock, told.histories.now());
  BOOST_TEST(total.because.size() == 2U);  // what it had, and one stay that used something
}

BOOST_AUTO_TEST_CASE(a_part_carries_its_life_to_another_aircraft) {  // rules 63
  Book book = two_aircraft("1200.0", "7810.3");
  book.say("2025-01-02", fitted(part, {kit, "servo", "1200.0"}, {had_hours("0.0")}));
  book.say("2025-02-01", flew(kit, "1150.5", {support::flights(900)}));
  book.say("2025-03-01", removed(part, {kit, "servo", "2350.5"}));
  book.say("2025-04-01", fitted(part, {mob, "servo", "7810.3"}));
  const Told told(book, "2025-04-01");
  BOOST_TEST(told.hours(part) == "1150.5");
  BOOST_TEST(told.count(part, CounterKind::flights) == "900");  // new: nothing on any clock
}

BOOST_AUTO_TEST_CASE(a_part_off_for_a_while_gains_nothing) {  // rules 64
  Book book = two_aircraft("1999.0", "1.0");
  book.say("2025-01-02", fitted(part, {kit, "servo", ""}, {had_hours("1499.0")}));
  book.say("2025-01-02", flew(kit, "1.0"));
  book.say("2025-01-03", removed(part, {kit, "servo", "2000.0"}));
  book.say("2025-01-04", flew(kit, "12.3", {support::flights(9)}));
  book.say("2025-01-05", fitted(part, {kit, "servo", "2012.3"}));
  const Told told(book, "2025-01-05");
  BOOST_TEST(told.hours(kit) == "2012.3");
  BOOST_TEST(told.hours(part) == "1500.0");
}

BOOST_AUTO_TEST_CASE(an_overhaul_restarts_only_since_overhaul) {  // rules 65
  Book book = two_aircraft("3990.0", "1.0");
  book.say("2025-01-01", fitted(disc, {engine, "disc", ""}, {had_hours("8190.0")}));
  book.say("2025-01-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("8190.0")}));
  book.say("2025-01-02", flew(kit, "10.0"));
  book.say("2025-01-03", support::overhauled(engine, {had_hours("8200.0")}));
  BOOST_TEST(Told(book, "2025-01-03").overhaul(engine) == "0.0");
  book.say("2025-01-04", flew(kit, "25.0"));
  const Told told(book, "2025-01-04");
  BOOST_TEST(told.hours(engine) == "8225.0");
  BOOST_TEST(told.overhaul(engine) == "25.0");
  BOOST_TEST(told.hours(disc) == "8225.0");
  BOOST_TEST(told.overhaul(disc) == "unknown");
}

BOOST_AUTO_TEST_CASE(unequal_engines_count_each_for_itself) {  // rules 74, 90
  Book book;
  book.say("2025-01-01", forward(twin, "5200.0"));
  book.say("2025-01-01", forward(engine, {had_hours("4860.3"), had_hours("1110.3", Basis::overhaul),
                                          had(starts(4000))}));
  book.say("2025-01-01", forward(other, {had_hours("1996.9"), had_hours("1996.9", Basis::overhaul),
                                         had(starts(1500))}));
  book.say("2025-01-01", fitted(engine, {twin, "engine 1", ""}));
  book.say("2025-01-01", fitted(other, {twin, "engine 2", ""}));
  book.say("2025-02-01", flew(twin, "6.0", {starts(1), landings(1)}));
  auto relit = flew(twin, "4.0", {starts(1), landings(1)});
  relit.counts.push_back(support::at(starts(2), "engine 2"));
  book.say("2025-02-02", relit);
  const Told told(book, "2025-02-02");
  BOOST_TEST(told.hours(twin) == "5210.0");
  BOOST_TEST(told.hours(engine) == "4870.3");
  BOOST_TEST(told.overhaul(engine) == "1120.3");
  BOOST_TEST(told.hours(other) == "2006.9");
  BOOST_TEST(told.overhaul(other) == "2006.9");
  BOOST_TEST(told.count(engine, CounterKind::starts) == "4002");
  BOOST_TEST(told.count(other, CounterKind::starts) == "1503");
}

BOOST_AUTO_TEST_CASE(hours_and_starts_of_one_engine_hold_only_there) {
  Book book;
  book.say("2025-01-01", forward(twin, "100.0"));
  book.say("2025-01-01", fitted(engine, {twin, "engine 1", ""}, {had_hours("0.0")}));
  book.say("2025-01-01", fitted(other, {twin, "engine 2", ""}, {had_hours("0.0")}));
  book.say("2025-01-01", fitted(disc, {other, "disc", ""}, {had_hours("10.0")}));
  auto shut_down = flew(twin, "1.2");
  shut_down.counts.push_back(support::at(starts(2), "engine 2"));
  shut_down.hours_at.push_back({support::hours("0.9"), {"engine 2"}});
  book.say("2025-02-01", shut_down);
  book.say("2025-02-02", support::ran(twin, "engine 1", {starts(1)}));
  const Told told(book, "2025-02-02");
  BOOST_TEST(told.hours(twin) == "101.2");
  BOOST_TEST(told.hours(engine) == "1.2");
  BOOST_TEST(told.hours(other) == "0.9");
  BOOST_TEST(told.hours(disc) == "10.9");
  BOOST_TEST(told.count(other, CounterKind::starts) == "2");
  BOOST_TEST(told.count(engine, CounterKind::starts) == "at least 1");
}

BOOST_AUTO_TEST_CASE(a_wrong_total_copied_forward_is_seen_and_not_believed) {  // rules 77
  Book book = two_aircraft("1250.0", "1.0");
  book.say("2025-01-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("2000.0")}));
  book.say("2025-01-01", support::overhauled(engine));
  book.say("2025-02-01", flew(kit, "1900.0", {support::flights(1500)}));
  auto slip = removed(engine, {kit, "engine 1", "3150.0"});
  slip.with = {had_hours("1988.0", Basis::overhaul)};
  const auto wrong = book.say("2025-03-01", slip);
  const Told told(book, "2025-03-01");
  BOOST_TEST(told.overhaul(engine) == "1900.0");
  bool is_listed = false;
  for (const reckon::Statement& one : told.histories.statements()) {
    if (one.entry != wrong || one.thing != logbook::Thing(engine)) continue;
    is_listed = true;
    BOOST_TEST(told::text(one.stated) == "1988.0");
    BOOST_TEST(told::text(one.reckoned) == "1900.0");
    BOOST_TEST(!one.agreed_when_written);
  }
  BOOST_TEST(is_listed);
}

BOOST_AUTO_TEST_CASE(a_part_that_nobody_stated_anything_of_is_unknown) {  // rules 66
  Book book = two_aircraft("1000.0", "1.0");
  book.say("2025-01-02", fitted(part, {kit, "servo", ""}));
  book.say("2025-01-03", flew(kit, "2.0"));
  const Told told(book, "2025-01-03");
  BOOST_TEST(told.hours(part) == "unknown");
  BOOST_TEST(told.fitting(part) == "2.0");
}

BOOST_AUTO_TEST_CASE(what_is_brought_forward_unknown_stays_unknown) {
  Book book = two_aircraft("1000.0", "1.0");
  logbook::BringsForward begin = forward(engine, {had(starts(5))});
  begin.unknown = {{std::monostate{}, std::nullopt}};
  book.say("2025-01-01", begin);
  book.say("2025-01-01", fitted(engine, {kit, "engine 1", ""}));
  book.say("2025-01-03", flew(kit, "2.0", {starts(1)}));
  const Told told(book, "2025-01-03");
  BOOST_TEST(told.hours(engine) == "unknown");
  BOOST_TEST(told.count(engine, CounterKind::starts) == "6");
}

BOOST_AUTO_TEST_CASE(fitted_before_the_book_began_counts_by_what_was_stated) {
  Book book;
  book.say("2020-05-02", fitted(part, {kit, "servo", "4000.0"}, {had_hours("1000.0")}));
  book.say("2025-01-01", forward(kit, "4321.6"));
  book.say("2025-01-02", flew(kit, "1.0", {landings(3)}));
  const Told told(book, "2025-01-02");
  BOOST_TEST(told.hours(part) == "1322.6");
  BOOST_TEST(told.fitting(part) == "322.6");
  BOOST_TEST(told.fitting(part, CounterKind::landings) == "unknown");
}

BOOST_AUTO_TEST_CASE(overhauled_before_the_book_began_counts_from_its_stated_total) {
  Book book;
  book.say("2020-02-14", support::overhauled(engine, {had_hours("1822.1")}));
  book.say("2025-01-01", forward(kit, "4321.6"));
  book.say("2020-06-01", fitted(engine, {kit, "engine 1", ""}));
  book.say("2025-01-01", forward(engine, {had_hours("2205.0")}));
  book.say("2025-01-02", flew(kit, "1.0"));
  const Told told(book, "2025-01-02");
  BOOST_TEST(told.hours(engine) == "2206.0");
  BOOST_TEST(told.overhaul(engine) == "383.9");
  BOOST_CHECK(told.histories.basis_day(engine, Basis::overhaul) ==
              std::optional(support::day("2020-02-14")));
}

BOOST_AUTO_TEST_CASE(an_overhaul_does_not_move_the_day_of_entry_into_service) {  // records S38
  Book book;
  book.say("2010-03-01", fitted(module, {engine, "gas generator", ""}, {had_hours("0.0")}));
  book.say("2019-06-01", support::overhauled(module));
  const Told told(book, "2025-01-01");
  const auto day_of = [&](Basis basis) { return say(*told.histories.basis_day(module, basis)); };
  BOOST_TEST(day_of(Basis::new_) == "2010-03-01");
  BOOST_TEST(day_of(Basis::fitting) == "2010-03-01");
  BOOST_TEST(day_of(Basis::overhaul) == "2019-06-01");
  BOOST_CHECK(!told.histories.basis_day(module, Basis::manufacture));
}

BOOST_AUTO_TEST_CASE(a_flight_past_a_limit_counts_whole) {  // records S41
  Book book = two_aircraft("100.0", "1.0");
  book.say("2025-01-01", fitted(disc, {kit, "disc", ""}, {had_hours("1774.2")}));
  book.say("2025-01-02", flew(kit, "1.4"));
  BOOST_TEST(Told(book, "2025-01-02").hours(disc) == "1775.6");
}

BOOST_AUTO_TEST_CASE(a_rule_holds_from_its_day_or_from_the_day_it_says) {
  for (const bool is_recounted : {false, true}) {
    Book book = two_aircraft("100.0", "1.0");
    book.say("2025-01-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("0.0")}));
    book.say("2025-01-02", flew(kit, "1.0", {starts(1), landings(4)}));
    auto rule = support::rule(logbook::Model{{"TS-40"}}, CounterKind::gas_generator_cycles,
                              {each(CountedEvent::start, "1"), each(CountedEvent::landing, "0.5")});
    if (is_recounted) rule.also_since = support::day("2025-01-01");
    book.say("2025-02-01", rule);
    book.say("2025-02-02", flew(kit, "1.0", {starts(1), landings(3)}));
    const std::string cycles =
        Told(book, "2025-02-02").count(engine, CounterKind::gas_generator_cycles);
    BOOST_TEST(cycles == (is_recounted ? "5.5" : "at least 2.5"));
  }
}

BOOST_AUTO_TEST_CASE(a_part_in_an_engine_counts_by_the_engines_rule) {
  Book book = two_aircraft("100.0", "1.0");
  book.say("2025-01-01", fitted(engine, {kit, "engine 1", ""}, {had_hours("0.0")}));
  book.say("2025-01-01", fitted(disc, {engine, "disc", ""}, {had_hours("0.0")}));
  book.say("2025-01-01", support::rule(logbook::Model{{"TS-40"}}, CounterKind::full_cycles,
                                       {each(CountedEvent::start, "1")}));
  book.say("2025-02-02", flew(kit, "1.0", {starts(2)}));
  book.say("2025-02-03", flew(kit, "1.0"));
  BOOST_TEST(Told(book, "2025-02-02").count(disc, CounterKind::full_cycles) == "2");
  BOOST_TEST(Told(book, "2025-02-03").count(disc, CounterKind::full_cycles) == "at least 2");
}

BOOST_AUTO_TEST_CASE(a_counter_that_nobody_keeps_is_unknown) {
  Book book = two_aircraft("100.0", "1.0");
  book.say("2025-01-01", fitted(part, {kit, "hook", ""}, {had_hours("0.0")}));
  book.say("2025-01-02", flew(kit, "1.0"));
  BOOST_TEST(Told(book, "2025-01-02").count(part, CounterKind::lifts) == "unknown");
  book.say("2025-01-03", flew(kit, "1.0", {support::count(CounterKind::lifts, "10")}));
  BOOST_TEST(Told(book, "2025-01-03").count(part, CounterKind::lifts) == "10");
}

BOOST_AUTO_TEST_SUITE_END()
