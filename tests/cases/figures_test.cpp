#include "cases/figures.h"

#include <boost/test/unit_test.hpp>

namespace {

cases::Figure figure(std::string_view text) {
  const auto read = cases::read_figure(text);
  BOOST_REQUIRE_MESSAGE(read, "no figure: " << text);
  return *read;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(figures_of_case_files)

BOOST_AUTO_TEST_CASE(hours_are_whole_seconds) {
  BOOST_TEST(figure("41.0 h").amount == 147'600);
  BOOST_TEST(figure("-0.6 h").amount == -2'160);
  BOOST_TEST(figure("1:42 h").amount == 6'120);
  BOOST_TEST(figure("0:20:05 h").amount == 1'205);
  BOOST_TEST(figure("5.0 h engine-run").unit == "h engine-run");
}

BOOST_AUTO_TEST_CASE(counts_are_thousandths_and_take_the_plural) {
  BOOST_TEST(figure("1 landing").unit == "landings");
  BOOST_TEST(figure("2210.35 gas-generator cycles").amount == 2'210'350);
  BOOST_TEST(figure("112 days").amount == 112);
  BOOST_TEST(figure("1 day").unit == "days");
}

BOOST_AUTO_TEST_CASE(what_does_not_come_out_whole_is_no_figure) {
  BOOST_TEST(!cases::read_figure("0.33333 h"));
  BOOST_TEST(!cases::read_figure("1.5 days"));
  BOOST_TEST(!cases::read_figure("h"));
  BOOST_TEST(!cases::read_figure("1,5 h"));
}

BOOST_AUTO_TEST_SUITE_END()
