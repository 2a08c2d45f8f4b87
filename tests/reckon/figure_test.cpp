// Figures of different units never mix: hours and cycles do not add (design 3).
#include "reckon/figure.h"

#include <boost/test/unit_test.hpp>

#include "quantity/expect.h"
#include "reckon/life_used.h"
#include "reckon/settle.h"
#include "support/entries.h"
#include "told.h"

using quantity::BrokenPromise;
using reckon::Figure;
using reckon::Sureness;

BOOST_AUTO_TEST_SUITE(figures_of_units)

namespace {

const Figure hours(support::service("1.5"));
const Figure count(quantity::whole_cycles(3));
const Figure days(quantity::Days::of(7));

}  // namespace

BOOST_AUTO_TEST_CASE(units_do_not_mix) {
  BOOST_CHECK_THROW(hours + count, BrokenPromise);
  BOOST_CHECK_THROW(hours - days, BrokenPromise);
  BOOST_CHECK_THROW(count.compare(days), BrokenPromise);
  BOOST_CHECK_THROW(count.hours(), BrokenPromise);
  BOOST_CHECK_THROW(hours.count(), BrokenPromise);
  BOOST_CHECK_THROW(hours.days(), BrokenPromise);
  BOOST_CHECK(days.days() == quantity::Days::of(7));
}

BOOST_AUTO_TEST_CASE(a_sum_is_as_sure_as_its_least_sure_term) {
  const Figure at_least = hours.as_sure_as(Sureness::at_least);
  const Figure unknown = hours.as_sure_as(Sureness::unknown);
  BOOST_TEST(told::text(hours + hours) == "3.0");
  BOOST_TEST(told::text(hours + at_least) == "at least 3.0");
  BOOST_TEST(told::text(at_least - unknown) == "unknown");
  BOOST_TEST(told::text(-hours) == "-1.5");
}

BOOST_AUTO_TEST_CASE(a_life_is_no_less_than_nothing_and_is_used_of_something) {
  BOOST_CHECK_THROW(reckon::LifeUsed({{-1, 10}}), BrokenPromise);
  BOOST_CHECK_THROW(reckon::LifeUsed({{1, 0}}), BrokenPromise);
  BOOST_TEST(reckon::LifeUsed({{1, 4}, {1, 2}}).left_of(100) == 25);
}

BOOST_AUTO_TEST_CASE(an_item_without_a_side_is_not_settled) {
  reckon::Item item;
  BOOST_CHECK_THROW(reckon::settle(item), BrokenPromise);
}

BOOST_AUTO_TEST_CASE(an_entry_that_is_not_in_the_book_has_no_place) {
  support::Book book;
  const auto entry = book.say("2025-03-01", support::forward(support::aircraft("ZZ-KIT"), "1.0"));
  const told::Told told(book, "2025-03-10");
  BOOST_CHECK(told.histories.mark_of(entry).day == support::day("2025-03-01"));
  BOOST_CHECK_THROW(told.histories.mark_of(logbook::EntryId{}), BrokenPromise);
}

BOOST_AUTO_TEST_SUITE_END()
