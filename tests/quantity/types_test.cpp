// What must not compile, and what must. A line that is wrong here stops the build, not the test
// run.
#include <boost/test/unit_test.hpp>
#include <concepts>
#include <type_traits>

#include "quantity/amount.h"
#include "quantity/calendar.h"
#include "quantity/counts.h"
#include "quantity/hours.h"
#include "quantity/temperature.h"

namespace {

using namespace quantity;

template <class A, class B>
concept Adds = requires(A a, B b) {
  a + b;
};
template <class A, class B>
concept Subtracts = requires(A a, B b) {
  a - b;
};
template <class A, class B>
concept Multiplies = requires(A a, B b) {
  a* b;
};
template <class A, class B>
concept Compares = requires(A a, B b) {
  a < b;
};
template <class A, class B>
concept Equals = requires(A a, B b) {
  a == b;
};
template <class A>
concept Negates = requires(A a) {
  -a;
};
template <class T, class Number>
concept MadeOf = requires(Number number) {
  T::of(number);
};

template <class A, class B>
constexpr bool are_strangers = !Adds<A, B> && !Adds<B, A> && !Subtracts<A, B> && !Subtracts<B, A> &&
                               !Compares<A, B> && !Equals<A, B>;

// Amounts of different kinds have nothing to do with each other.
static_assert(are_strangers<Hours, Cycles>);
static_assert(are_strangers<Hours, ServiceHours>);
static_assert(are_strangers<Hours, Days>);
static_assert(are_strangers<Hours, Factor>);
static_assert(are_strangers<Cycles, Weight>);
static_assert(are_strangers<Cycles, Decimal>);
static_assert(are_strangers<Cycles, ServiceHours>);
static_assert(are_strangers<Days, Months>);
static_assert(are_strangers<Day, Months>);
static_assert(are_strangers<Day, Hours>);
static_assert(are_strangers<Day, Instant>);
static_assert(are_strangers<Temperature, Hours>);
static_assert(are_strangers<HourMeter, ServiceHours>);
static_assert(are_strangers<Offset, Hours>);

// Nor has a bare number, in either direction.
static_assert(are_strangers<Hours, int>);
static_assert(are_strangers<Hours, double>);
static_assert(are_strangers<HourMeter, int>);
static_assert(are_strangers<Cycles, int>);
static_assert(are_strangers<Day, int>);
static_assert(are_strangers<Temperature, int>);
static_assert(!std::is_convertible_v<int, Hours> && !std::is_convertible_v<Hours, int>);
static_assert(!std::is_convertible_v<int, Day> && !std::is_convertible_v<Day, int>);
static_assert(!std::is_constructible_v<Hours, int> && !std::is_constructible_v<Cycles, int>);
static_assert(!std::is_convertible_v<Hours, ServiceHours>);

// A fraction would be cut off.
static_assert(!Multiplies<Hours, double> && !Multiplies<Cycles, float>);
static_assert(!MadeOf<Hours, double> && !MadeOf<HourMeter, double> && !MadeOf<Day, double>);
static_assert(MadeOf<Hours, int> && MadeOf<HourMeter, int>);

// Points do not add and have no sign; their differences do.
static_assert(!Adds<HourMeter, HourMeter> && !Negates<HourMeter>);
static_assert(!Adds<Temperature, Temperature> && !Negates<Temperature>);
static_assert(!Adds<Day, Day> && !Negates<Day>);
static_assert(!Adds<Instant, Instant>);
static_assert(!Multiplies<HourMeter, int> && !Multiplies<Temperature, int>);
static_assert(!Compares<Margin, Temperature> && !Equals<Margin, Temperature>);
static_assert(!Compares<Hours, HourMeter> && !Equals<Hours, HourMeter>);
static_assert(!Compares<Day, Days> && !Equals<Day, Days>);
static_assert(!Subtracts<Margin, Temperature> && !Subtracts<Hours, HourMeter>);
static_assert(!Multiplies<Hours, Hours> && !Multiplies<Cycles, Cycles>);
static_assert(!Multiplies<ServiceHours, Factor>, "a factor is applied once");

// What must compile, and what it gives.
template <class A, class B>
using Sum = decltype(std::declval<A>() + std::declval<B>());
template <class A, class B>
using Difference = decltype(std::declval<A>() - std::declval<B>());
template <class A, class B>
using Product = decltype(std::declval<A>() * std::declval<B>());

static_assert(std::same_as<Difference<Temperature, Temperature>, Margin>);
static_assert(std::same_as<Sum<Temperature, Margin>, Temperature>);
static_assert(std::same_as<Difference<Temperature, Margin>, Temperature>);
static_assert(std::same_as<Difference<HourMeter, HourMeter>, Hours>);
static_assert(std::same_as<Sum<HourMeter, Hours>, HourMeter>);
static_assert(std::same_as<Difference<Day, Day>, Days>);
static_assert(std::same_as<Sum<Day, Days>, Day>);
static_assert(std::same_as<Sum<Hours, Hours>, Hours>);
static_assert(std::same_as<Product<Hours, Factor>, ServiceHours>);
static_assert(std::same_as<Product<Weight, Cycles>, Cycles>);
static_assert(std::same_as<Sum<Known<Hours>, Known<Hours>>, Known<Hours>>);
static_assert(Compares<Hours, Hours> && Compares<HourMeter, HourMeter> && Compares<Day, Day>);

// They cost what a whole number costs.
static_assert(sizeof(Hours) == 8 && std::is_trivially_copyable_v<Hours>);
static_assert(sizeof(Day) == 8 && std::is_trivially_copyable_v<Day>);

}  // namespace

BOOST_AUTO_TEST_SUITE(types)

BOOST_AUTO_TEST_CASE(sums_and_products_may_be_reckoned_while_compiling) {
  constexpr Hours sum = Hours::of(3600) + Hours::of(60) * 2;
  static_assert(sum == Hours::of(3720) && -sum < sum);
  static_assert(Temperature::of(7020) - Temperature::of(6900) == Margin::of(120));
  BOOST_TEST(sum.count() == 3720);
}

BOOST_AUTO_TEST_SUITE_END()
