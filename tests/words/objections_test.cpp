#include <boost/test/unit_test.hpp>

#include "words/items.h"
#include "words/told.h"
#include "words/words.h"

namespace {

using namespace words_test;
using reckon::CheckKind;
using reckon::Objection;

constexpr int last_kind = static_cast<int>(CheckKind::key_has_ended);

Objection full(CheckKind kind) {
  Objection objection;
  objection.kind = kind;
  objection.stated = tenths(18);
  objection.reckoned = tenths(17);
  objection.difference = tenths(1);
  objection.entries = {entry(123), entry(130)};
  objection.names = {"E-1001", "E-1OO1"};
  objection.day = day(2026, 3, 4);
  return objection;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(objections)

BOOST_AUTO_TEST_CASE(every_check_has_a_sentence_with_and_without_its_figures) {
  for (int kind = 0; kind <= last_kind; ++kind) {
    const Objection objection = full(static_cast<CheckKind>(kind));
    check_told(words::objection_text(objection));
    Objection bare;
    bare.kind = objection.kind;
    check_told(words::objection_text(bare));
  }
}

BOOST_AUTO_TEST_CASE(a_doubt_stands_at_the_head_of_its_objection) {
  for (int kind = 0; kind <= last_kind; ++kind) {
    const Objection objection = full(static_cast<CheckKind>(kind));
    const std::string doubt = words::doubt_text(objection);
    BOOST_TEST(words::objection_text(objection).substr(1, doubt.size() - 1) == doubt.substr(1));
    BOOST_TEST(!doubt.ends_with('.'));
    BOOST_TEST(doubt.find('"') == std::string::npos, doubt);
  }
}

BOOST_AUTO_TEST_CASE(a_gap_holds_its_figure_so_that_it_is_raised_again_if_that_changes) {
  Objection gap = full(CheckKind::meter_gap);
  gap.difference = tenths(23);
  BOOST_TEST(words::doubt_text(gap) == "2.3 h are missing before this flight");
  gap.difference = tenths(24);
  BOOST_TEST(words::doubt_text(gap) == "2.4 h are missing before this flight");
}

BOOST_AUTO_TEST_CASE(counts_are_said_with_what_they_count) {
  Objection few = full(CheckKind::landings_below_flights);
  few.stated = whole(1);
  few.reckoned = whole(3);
  BOOST_TEST(words::doubt_text(few) == "1 landing are fewer than 3 flights");
}

BOOST_AUTO_TEST_CASE(a_removal_says_where_the_thing_is) {
  Objection moved = full(CheckKind::not_fitted_there);
  moved.names = {"part PN-4 B-1", "hub 2 of aircraft ZZ-KIT", "hub of aircraft ZZ-KIT"};
  moved.slot = "place";
  BOOST_TEST(words::doubt_text(moved) ==
             "part PN-4 B-1 is in hub of aircraft ZZ-KIT, and not in hub 2 of aircraft ZZ-KIT");
  moved.slot = "thing";
  moved.names.pop_back();
  BOOST_TEST(words::doubt_text(moved) ==
             "part PN-4 B-1 is off, and so not in hub 2 of aircraft ZZ-KIT");
}

BOOST_AUTO_TEST_CASE(an_engine_in_a_place_is_named_as_what_is_there) {
  Objection believed = full(CheckKind::not_fitted_there);
  believed.slot = "serial";
  believed.names = {"E-1002", "engine TS-40 E-1001", "engine 1 of aircraft ZZ-KIT"};
  BOOST_TEST(words::doubt_text(believed) ==
             "engine TS-40 E-1001 is in engine 1 of aircraft ZZ-KIT, and not E-1002");
}

BOOST_AUTO_TEST_CASE(a_doubt_names_the_clock_and_what_it_counts_since) {
  Objection had = full(CheckKind::had_differs);
  had.stated = tenths(33623);
  had.reckoned = tenths(33000);
  BOOST_TEST(words::doubt_text(had) == "it is said to have 3362.3 h and the record gives 3300.0 h");
  had.since = logbook::Basis::overhaul;
  BOOST_TEST(words::doubt_text(had) ==
             "it is said to have 3362.3 h since overhaul and the record gives 3300.0 h since "
             "overhaul");
  had.since.reset();
  had.stated = whole(1);
  had.reckoned = whole(3);
  had.clock = logbook::Counter{logbook::CounterKind::starts, ""};
  BOOST_TEST(words::doubt_text(had) == "it is said to have 1 start and the record gives 3 starts");
  had.clock = logbook::Counter{logbook::CounterKind::landings, ""};
  BOOST_TEST(words::doubt_text(had) ==
             "it is said to have 1 landing and the record gives 3 landings");
}

BOOST_AUTO_TEST_CASE(an_unknown_task_offers_the_nearest) {
  Objection unknown = full(CheckKind::no_such_task);
  unknown.names = {"anual", "annual inspection", "100-hour inspection"};
  BOOST_TEST(words::objection_text(unknown).find(
                 "Did you mean annual inspection or 100-hour inspection?") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_question_names_its_entries_and_what_to_do) {
  const reckon::Question question{
      "4F7Q", "two corrections", {entry(130), entry(131)}, {kit}, "1.4 h"};
  const std::string text = words::question_text(question);
  BOOST_TEST(text.find("K7QXM-130 and K7QXM-131") != std::string::npos);
  check_told(text);
}

BOOST_AUTO_TEST_CASE(the_caution_is_said_in_our_words) {
  check_told(std::string(words::caution()));
}

BOOST_AUTO_TEST_SUITE_END()
