#include <boost/test/unit_test.hpp>

#include "definitions.h"
#include "reckon/due.h"

using namespace definitions;

BOOST_AUTO_TEST_SUITE(due_counts)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");

}  // namespace

BOOST_AUTO_TEST_CASE(landings_are_counted_as_hours_are) {
  support::Book book;
  book.say("2025-01-01", support::forward(kit, "100.0", {support::had(support::landings(500))}));
  book.say("2025-01-01", task("gear check", kit, {count(support::landings(50))}));
  book.say("2025-01-01", support::done("gear check", kit, "100.0"));
  book.say("2025-01-02", support::flew(kit, "1.0", {support::landings(12)}));
  const AsOf asked(book, "2025-01-02");
  BOOST_TEST(left(due_item(asked, kit, "task:")) == "38");
  BOOST_TEST(text(governing(due_item(asked, kit, "task:")).due_at) == "550");
}

BOOST_AUTO_TEST_CASE(of_two_orders_the_one_with_less_left_counts) {
  support::Book one;
  one.say("2025-01-01", support::forward(kit, "1000.0"));
  one.say("2025-01-01", task("check", kit, {hours("100.0")}));
  one.say("2025-01-01", support::done("check", kit, "1000.0"));
  support::Book other = one;
  other.say("2025-01-02", support::flew(kit, "7.0"));
  const AsOf early(one, "2025-01-02");
  const AsOf late(other, "2025-01-02");
  BOOST_TEST(left(reckon::harsher(early.due(kit), late.due(kit)).front()) == "93.0");
  BOOST_TEST(left(reckon::harsher(late.due(kit), early.due(kit)).front()) == "93.0");
}

BOOST_AUTO_TEST_SUITE_END()
