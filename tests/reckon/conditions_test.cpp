// The nine conditions of `ready` (design 7), each taken away from a book on which all hold.

#include <boost/test/unit_test.hpp>
#include <functional>

#include "definitions.h"
#include "flyable.h"

using namespace definitions;
using namespace flyable;
using reckon::Answer;
using reckon::Condition;
using reckon::Ready;

BOOST_AUTO_TEST_SUITE(conditions)

namespace {

// The one thing that is missing; the answer must then be "not known".
reckon::Missing only_missing(const Ready& ready) {
  BOOST_REQUIRE(ready.answer == Answer::not_known);
  BOOST_REQUIRE(ready.missing.size() == 1U);
  return ready.missing.front();
}

Ready ask_without(Without without) { return ask(complete_book(without), "2025-03-10", {}); }

}  // namespace

BOOST_AUTO_TEST_CASE(with_all_of_them_the_answer_is_yes) {
  BOOST_CHECK(ask_without(Without::nothing).answer == Answer::yes);
}

BOOST_AUTO_TEST_CASE(first_the_totals_of_airframe_and_engines) {
  const reckon::Missing airframe = only_missing(ask_without(Without::airframe_total));
  BOOST_CHECK(airframe.condition == Condition::totals);
  BOOST_CHECK(airframe.thing == logbook::Thing{kit});
  const reckon::Missing power = only_missing(ask_without(Without::engine_total));
  BOOST_CHECK(power.condition == Condition::totals);
  BOOST_CHECK(power.thing == logbook::Thing{engine});
}

BOOST_AUTO_TEST_CASE(second_every_required_place_is_filled) {
  const reckon::Missing tail = only_missing(ask_without(Without::place));
  BOOST_CHECK(tail.condition == Condition::places);
  BOOST_TEST(tail.place->text == "tail rotor");
  const reckon::Missing power = only_missing(ask_without(Without::no_engine));
  BOOST_CHECK(power.condition == Condition::places);
  BOOST_TEST(power.place->text == "engine 1");
}

BOOST_AUTO_TEST_CASE(third_an_inspection_programme_with_a_last_done_for_each) {
  const reckon::Missing programme = only_missing(ask_without(Without::programme));
  BOOST_CHECK(programme.condition == Condition::programme);
  BOOST_TEST(!programme.task.has_value());
  const reckon::Missing done = only_missing(ask_without(Without::last_done));
  BOOST_CHECK(done.condition == Condition::programme);
  BOOST_TEST(done.task->text == "annual inspection");
}

BOOST_AUTO_TEST_CASE(fourth_a_limit_or_on_condition_for_what_is_fitted) {
  const reckon::Missing limit = only_missing(ask_without(Without::limit));
  BOOST_CHECK(limit.condition == Condition::limits);
  BOOST_CHECK(limit.thing == logbook::Thing{engine});
}

BOOST_AUTO_TEST_CASE(fifth_nothing_unknown_that_a_limit_reads) {
  support::Book book = complete_book();
  book.say("2025-03-01", limit(engine, {period(12, PeriodUnit::years, Basis::release)}));
  const reckon::Missing unknown = only_missing(ask(book, "2025-03-10", {}));
  BOOST_CHECK(unknown.condition == Condition::unknown_read);
  BOOST_CHECK(unknown.lack == reckon::Lack::basis_day);
  BOOST_CHECK(unknown.since == Basis::release);
}

BOOST_AUTO_TEST_CASE(what_no_limit_reads_may_be_unknown) {
  support::Book book = complete_book();
  logbook::BringsForward hook = support::forward(support::part("PN-H", "H-1"), {});
  hook.unknown = {logbook::Unknown{}};
  book.say("2025-03-01", hook);
  book.say("2025-03-01", support::fitted(hook.thing, {kit, "cargo hook", ""}));
  book.say("2025-03-01", on_condition(logbook::PartKind{{"PN-H"}}));
  BOOST_CHECK(ask(book, "2025-03-10", {}).answer == Answer::yes);
}

BOOST_AUTO_TEST_CASE(sixth_a_review_within_the_records_days) {
  const reckon::Missing never = only_missing(ask_without(Without::review));
  BOOST_CHECK(never.condition == Condition::reviewed);
  BOOST_TEST(!never.day.has_value());
  BOOST_CHECK(ask(complete_book(), "2025-03-31", {}).answer == Answer::yes);
  const reckon::Missing old = only_missing(ask(complete_book(), "2025-04-01", {}));
  BOOST_CHECK(old.condition == Condition::reviewed);
  BOOST_TEST(text(old.day) == "2025-03-01");
}

namespace {

Ready ask_with(const std::function<void(reckon::Standing&)>& change) {
  const support::Book book = complete_book();
  AsOf asked(book, "2025-03-10");
  change(asked.standing);
  return reckon::ready(asked.histories, asked.standing, {kit, {}, {}});
}

reckon::Question question(std::vector<logbook::Thing> about) {
  reckon::Question open;
  open.name = "4F7Q";
  open.about = std::move(about);
  return open;
}

logbook::Entry unreadable(std::vector<logbook::About> about) {
  logbook::Entry entry;
  entry.frame.about = std::move(about);
  return entry;
}

}  // namespace

BOOST_AUTO_TEST_CASE(seventh_no_open_question_about_it) {
  const reckon::Missing open = only_missing(
      ask_with([](reckon::Standing& standing) { standing.questions = {question({engine})}; }));
  BOOST_CHECK(open.condition == Condition::questions);
  BOOST_TEST(open.question == "4F7Q");
  const Ready other = ask_with([](reckon::Standing& standing) {
    standing.questions = {question({support::aircraft("ZZ-MOB")})};
  });
  BOOST_CHECK(other.answer == Answer::yes);
  const Ready anything =
      ask_with([](reckon::Standing& standing) { standing.questions = {question({})}; });
  BOOST_CHECK(anything.answer == Answer::not_known);
}

BOOST_AUTO_TEST_CASE(eighth_nothing_unread_about_it) {
  const auto answer_with = [](std::vector<logbook::About> about) {
    const logbook::Entry entry = unreadable(std::move(about));
    return ask_with([&](reckon::Standing& standing) { standing.unread = {&entry}; }).answer;
  };
  BOOST_CHECK(answer_with({{"aircraft", {"ZZ-KIT"}}}) == Answer::not_known);
  BOOST_CHECK(answer_with({{"model", {"TS-40"}}}) == Answer::not_known);
  BOOST_CHECK(answer_with({{"engine", {"TS-40", "E-1001"}}}) == Answer::not_known);
  BOOST_CHECK(answer_with({{"entry", {"K7QXM-12"}}}) == Answer::not_known);
  BOOST_CHECK(answer_with({}) == Answer::not_known);
  BOOST_CHECK(answer_with({{"aircraft", {"ZZ-MOB"}}}) == Answer::yes);
}

BOOST_AUTO_TEST_CASE(ninth_all_bases_heard) {
  reckon::Book known;
  known.all_bases_heard = false;
  const reckon::Missing bases = only_missing(ask(complete_book(), "2025-03-10", {}, known));
  BOOST_CHECK(bases.condition == Condition::bases_heard);
}

BOOST_AUTO_TEST_CASE(a_fresh_book_misses_all_that_a_person_must_say_first) {
  support::Book book;
  book.say("2025-03-01", is_model(kit, "Larkwing 5"));
  const Ready ready = ask(book, "2025-03-10", {});
  BOOST_CHECK(ready.answer == Answer::not_known);
  BOOST_REQUIRE(ready.missing.size() == 4U);
  BOOST_CHECK(ready.missing.at(0).condition == Condition::totals);
  BOOST_CHECK(ready.missing.at(1).condition == Condition::places);
  BOOST_CHECK(ready.missing.at(2).condition == Condition::programme);
  BOOST_CHECK(ready.missing.at(3).condition == Condition::reviewed);
}

BOOST_AUTO_TEST_SUITE_END()
