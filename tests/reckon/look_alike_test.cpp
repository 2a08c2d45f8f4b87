// Names that look alike fold alike, and near names come nearest first.

#include "reckon/look_alike.h"

#include <boost/test/unit_test.hpp>

using reckon::folded;
using reckon::nearest_three;

BOOST_AUTO_TEST_SUITE(look_alike)

BOOST_AUTO_TEST_CASE(letters_and_digits_that_look_alike_fold_alike) {
  BOOST_CHECK_EQUAL(folded("O-I L"), folded("01l"));
  BOOST_CHECK_EQUAL(folded("SB"), folded("58"));
  BOOST_CHECK_NE(folded("B-88"), folded("B-89"));
  BOOST_CHECK_NE(folded("Z-2"), folded("2-Z-2"));
}

BOOST_AUTO_TEST_CASE(the_whole_identity_is_folded) {
  const logbook::Thing one = logbook::Engine{{"TS-40"}, {"E-1001"}};
  const logbook::Thing alike = logbook::Engine{{"TS-4O"}, {"E1001"}};
  const logbook::Thing other_model = logbook::Engine{{"TS-41"}, {"E-1001"}};
  const logbook::Thing part = logbook::Part{{"TS-40"}, {"E-1001"}};
  BOOST_CHECK_EQUAL(folded(one), folded(alike));
  BOOST_CHECK_NE(folded(one), folded(part));
  BOOST_CHECK_NE(folded(one), folded(other_model) + " ");
}

BOOST_AUTO_TEST_CASE(the_nearest_come_first_and_far_ones_not_at_all) {
  const auto near = nearest_three("ZZ-KTI", {"YY-ABC", "ZZ-KTT", "ZZ-KIT", "ZZ-KTI2"});
  BOOST_REQUIRE_EQUAL(near.size(), 3U);
  BOOST_CHECK_EQUAL(near[0], "ZZ-KTI2");
  BOOST_CHECK_EQUAL(near[1], "ZZ-KTT");
  BOOST_CHECK_EQUAL(near[2], "ZZ-KIT");
  BOOST_CHECK(nearest_three("A1", {"B2"}).empty());
  BOOST_CHECK(nearest_three("zz-kit", {"ZZ-KIT"}).size() == 1);
}

BOOST_AUTO_TEST_SUITE_END()
