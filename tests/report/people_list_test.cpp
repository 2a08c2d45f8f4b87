#include "report/people_list.h"

#include <boost/test/unit_test.hpp>

#include "report/sheets.h"

namespace {

using namespace words_test;
using namespace report_test;

const logbook::PublicKey key{std::string(64, 'a')};

reckon::Ended ended_on(unsigned number, std::int64_t by) {
  return {day(2026, 3, number), entry(by)};
}

reckon::Holding quill(std::optional<reckon::Ended> person, std::optional<reckon::Ended> of_key) {
  reckon::Holding holding;
  holding.name = {"B. Quill"};
  holding.certificate = "A-1234";
  holding.since = day(2026, 1, 1);
  holding.entry = entry(2);
  holding.ended = person;
  holding.keys.push_back({key, of_key, {}});
  return holding;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(people_list)

// The day from which a key signs nothing is the earlier of its own end and its person's.
BOOST_AUTO_TEST_CASE(the_earlier_of_both_ends_is_shown) {
  const auto first = report::people_list({quill(ended_on(20, 9), ended_on(10, 8))}, {}, sheet());
  BOOST_TEST(says(first, "ended 10 March 2026 (K7QXM-8)"));
  BOOST_TEST(!says(first, "20 March"));
  const auto second = report::people_list({quill(ended_on(5, 9), ended_on(10, 8))}, {}, sheet());
  BOOST_TEST(says(second, "takes no part since 5 March 2026 (K7QXM-9)"));
  BOOST_TEST(!says(second, "10 March"));
}

BOOST_AUTO_TEST_CASE(a_key_that_signs_is_here_or_elsewhere) {
  BOOST_TEST(says(report::people_list({quill({}, {})}, {key}, sheet()), "on this machine"));
  BOOST_TEST(says(report::people_list({quill({}, {})}, {}, sheet()), "on another machine"));
}

BOOST_AUTO_TEST_SUITE_END()
