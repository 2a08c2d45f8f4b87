// What the commands answer while corrections made apart are not decided (practice.md C5,
// docs/decisions/0026): a book in which two bases corrected one flight without knowing of it.
#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "command/book_view.h"
#include "support/entries.h"

BOOST_AUTO_TEST_SUITE(apart)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
const logbook::Part part = support::part("PN-X", "X-1");
const quantity::Day today = support::day("2026-01-10");

logbook::Limit hundred_hours() {
  logbook::Limit limit;
  limit.scope = logbook::PartKind{{"PN-X"}};
  logbook::Term term;
  term.amount = logbook::ClockHours{support::hours("100.0"), std::nullopt};
  term.since = logbook::Basis::new_;
  limit.terms.terms = {term};
  return limit;
}

// M's value is the one by which the facts stand.
std::unique_ptr<command::BookView> view(const std::string& by_k, const std::string& by_m,
                                        int disputes = 1) {
  support::Book book;
  book.say("2026-01-01", support::forward(kit, "1000.0"));
  book.say("2026-01-01", support::fitted(part, {kit, "hook", ""}, {support::had_hours("0.0")}));
  book.say("2026-01-01", hundred_hours());
  for (int dispute = 0; dispute < disputes; ++dispute) {
    const auto flight = book.say("2026-01-05", support::flew(kit, "1.0"));
    book.write_as('M');
    book.hear();
    book.correct(flight, "2026-01-05", support::flew(kit, by_m));
    book.write_as('K');
    book.correct(flight, "2026-01-05", support::flew(kit, by_k));
  }
  return command::view_of(book.entries(), today, today);
}

bool tells_of_two_corrections(const std::vector<std::string>& sentences) {
  return std::any_of(sentences.begin(), sentences.end(), [](const std::string& sentence) {
    return sentence.find("two corrections") != std::string::npos;
  });
}

}  // namespace

BOOST_AUTO_TEST_CASE(due_lives_and_ready_take_the_safer_of_both) {
  for (const auto& [by_k, by_m] : {std::pair{"101.0", "2.0"}, std::pair{"2.0", "101.0"}}) {
    const auto asked = view(by_k, by_m);
    for (const auto& items : {asked->due(kit), asked->lives()}) {
      BOOST_REQUIRE_EQUAL(items.size(), 1U);
      BOOST_CHECK(items.front().state == reckon::State::over);
    }
    BOOST_CHECK(asked->ready(kit, {}).answer == reckon::Answer::no);
  }
}

BOOST_AUTO_TEST_CASE(the_question_stands_below_every_answer_and_wants_attention) {
  const auto asked = view("3.0", "2.0");
  BOOST_TEST(tells_of_two_corrections(asked->sheet().notices));
  BOOST_TEST(tells_of_two_corrections(asked->daily_sheet(kit).notices));
  BOOST_CHECK(command::answered({}, *asked).code == command::attention);
  BOOST_CHECK(asked->ready(kit, {}).answer == reckon::Answer::not_known);
}

BOOST_AUTO_TEST_CASE(past_sixteen_ways_nothing_is_promised) {
  const auto asked = view("3.0", "2.0", 5);
  BOOST_TEST(!asked->are_all_read);
  BOOST_CHECK(asked->lives().front().state == reckon::State::not_known);
  const reckon::Ready ready = asked->ready(kit, {});
  BOOST_CHECK(ready.answer == reckon::Answer::not_known);
  BOOST_TEST(!ready.allowed_hours.has_value());
  std::int64_t told = 0;
  for (const reckon::Missing& missing : ready.missing) told += missing.question.empty() ? 0 : 1;
  BOOST_TEST(told == 5);
}

BOOST_AUTO_TEST_SUITE_END()
