#include "quantity/counts.h"

#include <boost/test/unit_test.hpp>
#include <string>

#include "quantity/outcome.h"

using namespace quantity;

namespace {

std::string cycles(std::string_view text) { return outcome::of(read_cycles(text)); }

std::string count(std::string_view text) { return outcome::of(read_whole_count(text)); }

std::string whole(std::string_view text) { return outcome::of(read_whole(text)); }

}  // namespace

BOOST_AUTO_TEST_SUITE(counts)

BOOST_AUTO_TEST_CASE(cycles_are_whole_thousandths) {
  BOOST_TEST(read_cycles("2210.35").value().count() == 2'210'350);
  BOOST_TEST(cycles("2210.350") == "2210.35");
  BOOST_TEST(cycles("1.234") == "1.234");
  BOOST_TEST(cycles("0.9") == "0.9");
  BOOST_TEST(cycles("3") == "3");
  BOOST_TEST(cycles("999999999.999") == "999999999.999");
  BOOST_TEST(cycles("1.2345") == "not_exact 1.234 1.235");
  BOOST_TEST(cycles("1,234") == "two_readings 1.234 1234");
  BOOST_TEST(cycles("1000000000") == "out_of_range");
  BOOST_TEST(cycles("-1") == "out_of_range");
}

// cases/rules.md 7 (two decimals are published: R4, NASA ASRS 643648).
BOOST_AUTO_TEST_CASE(cycles_add_without_drift) {
  BOOST_TEST(say(read_cycles("15610.95").value() + read_cycles("1.20").value()) == "15612.15");
}

BOOST_AUTO_TEST_CASE(whole_counters_take_whole_counts) {
  BOOST_TEST(read_whole_count("5608").value().count() == 5'608'000);
  BOOST_TEST(count("3.0") == "3");
  BOOST_TEST(count("1.5") == "not_whole 1 2");
  BOOST_TEST(count("1,5") == "not_whole 1 2");
  BOOST_TEST(count("5.608") == "not_whole 5 6");
  BOOST_TEST(count("5.000") == "two_readings 5 5000");
  BOOST_TEST(count("5,608") == "two_readings 5.608 5608");
  BOOST_TEST(count("-3") == "out_of_range");
  BOOST_TEST(is_whole(read_whole_count("999999999").value()));
  BOOST_TEST(!is_whole(read_cycles("0.5").value()));
}

BOOST_AUTO_TEST_CASE(bare_whole_numbers_have_digits_only) {
  BOOST_TEST(whole("0") == "0");
  BOOST_TEST(whole("123456789") == "123456789");
  BOOST_TEST(whole("1234567890") == "out_of_range");
  BOOST_TEST(whole("3.0") == "not_whole 3");
  BOOST_TEST(whole("3.5") == "not_whole 3 4");
  BOOST_TEST(whole("-3") == "out_of_range");
  BOOST_TEST(whole("-0") == "out_of_range");
  BOOST_TEST(whole("+3") == "not_a_number");
  BOOST_TEST(whole("three") == "not_a_number");
}

BOOST_AUTO_TEST_CASE(periods_are_bounded_so_that_their_end_has_a_name) {
  BOOST_TEST(outcome::of(read_period_number("12")) == "12");
  BOOST_TEST(outcome::of(read_period_number("20000")) == "20000");
  BOOST_TEST(outcome::of(read_period_number("20001")) == "out_of_range");
  BOOST_TEST(outcome::of(read_period_number("1.5")) == "not_whole 1 2");
}

BOOST_AUTO_TEST_CASE(decimals_keep_thousandths_and_their_sign) {
  BOOST_TEST(outcome::of(read_decimal("-12.5")) == "-12.5");
  BOOST_TEST(outcome::of(read_decimal("96.10")) == "96.1");
  BOOST_TEST(outcome::of(read_decimal("78.0")) == "78");
  BOOST_TEST(outcome::of(read_decimal("-0.0005")) == "not_exact -0.001 0.000");
}

BOOST_AUTO_TEST_CASE(a_weight_times_whole_events_is_exact) {
  const Weight half = read_weight("0.5").value();
  BOOST_TEST(say(half * whole_cycles(3)) == "1.5");
  // cases/rules.md 88: full 1, abbreviated 0.5, 100 starts, 260 flights.
  BOOST_TEST(say(whole_cycles(100) + half * whole_cycles(260 - 100)) == "180");
  BOOST_TEST(say(read_weight("0.333").value() * whole_cycles(3)) == "0.999");
  BOOST_TEST(say(half * whole_cycles(-3)) == "-1.5");
  BOOST_TEST(say(half) == "0.5");
  BOOST_TEST(outcome::of(read_weight("10000.001")) == "out_of_range");
}

BOOST_AUTO_TEST_CASE(the_largest_weight_and_count_that_can_be_typed_do_not_overflow) {
  const Cycles product = read_weight("10000").value() * read_whole_count("999999999").value();
  BOOST_TEST(say(product) == "9999999990000");
}

// Second way: one multiplication and one division, where it cannot overflow.
BOOST_AUTO_TEST_CASE(a_weight_times_a_fraction_is_rounded_down) {
  std::mt19937_64 choices = outcome::seeded("a_weight_times_a_fraction_is_rounded_down");
  for (int i = 0; i < 20'000; ++i) {
    const std::int64_t weight = outcome::between(0, most_weight.count(), choices);
    const std::int64_t events = outcome::between(-1'000'000, 1'000'000, choices);
    BOOST_REQUIRE_EQUAL((Weight::of(weight) * Cycles::of(events)).count(),
                        floor_divide(weight * events, 1000));
  }
}

BOOST_AUTO_TEST_CASE(any_cycles_are_said_and_read_again) {
  std::mt19937_64 choices = outcome::seeded("any_cycles_are_said_and_read_again");
  for (int i = 0; i < 50'000; ++i) {
    const Cycles amount = Cycles::of(outcome::between(0, 999'999'999'999, choices));
    BOOST_REQUIRE(read_cycles(say(amount)).value() == amount);
    const Decimal decimal = Decimal::of(outcome::between(-999'999, 999'999, choices));
    BOOST_REQUIRE(read_decimal(say(decimal)).value() == decimal);
  }
}

BOOST_AUTO_TEST_SUITE_END()
