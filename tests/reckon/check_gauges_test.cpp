// Figures that no gauge shows. The ranges are common practice, no
// source.

#include "reckon/check_gauges.h"

#include <boost/test/unit_test.hpp>

#include "reckon/checking.h"

using namespace checking;

namespace {

quantity::Temperature degrees(std::int64_t whole) { return quantity::Temperature::of(whole * 10); }

std::vector<std::string> asked_slots(const logbook::Fact& fact) {
  reckon::Objections objections;
  reckon::check_gauges(fact, objections);
  std::vector<std::string> slots;
  for (const auto& objection : objections) {
    BOOST_CHECK(objection.kind == CheckKind::outside_the_usual);
    BOOST_CHECK(objection.severity == Severity::doubtful);
    slots.push_back(objection.slot);
  }
  return slots;
}
using Slots = std::vector<std::string>;

}  // namespace

BOOST_AUTO_TEST_SUITE(check_gauges)

BOOST_AUTO_TEST_CASE(both_ends_of_each_range_are_taken_and_one_step_beyond_is_asked_about) {
  logbook::Reading reading;
  reading.outside_air = degrees(-60);
  reading.pressure_altitude_feet = 45000;
  reading.temperature = degrees(200);
  BOOST_CHECK(asked_slots(reading).empty());
  reading.outside_air = degrees(60);
  reading.pressure_altitude_feet = -2000;
  reading.temperature = degrees(1200);
  BOOST_CHECK(asked_slots(reading).empty());
  reading.outside_air = degrees(61);
  reading.pressure_altitude_feet = -2001;
  reading.temperature = degrees(1201);
  BOOST_CHECK(
      (asked_slots(reading) == Slots{"outside_air", "pressure_altitude_feet", "temperature"}));
  reading.outside_air = degrees(-61);
  reading.pressure_altitude_feet = 45001;
  reading.temperature = degrees(199);
  BOOST_CHECK(
      (asked_slots(reading) == Slots{"outside_air", "pressure_altitude_feet", "temperature"}));
}

BOOST_AUTO_TEST_CASE(a_start_whose_lowest_volts_stand_above_its_battery_is_asked_about) {
  logbook::Started start;
  start.battery_volts = quantity::Decimal::of(25900);
  start.lowest_volts = quantity::Decimal::of(25900);
  start.peak = degrees(742);
  BOOST_CHECK(asked_slots(start).empty());
  start.lowest_volts = quantity::Decimal::of(25901);
  start.peak = degrees(74);
  start.bands = {{degrees(81), 4}};
  BOOST_CHECK((asked_slots(start) == Slots{"peak", "bands", "lowest_volts"}));
}

BOOST_AUTO_TEST_CASE(limits_and_charts_with_a_digit_too_few_are_asked_about) {
  logbook::TemperatureLimit limit;
  limit.limit = degrees(72);
  BOOST_CHECK((asked_slots(limit) == Slots{"limit"}));
  logbook::StartLimit start;
  start.limit = {degrees(810), 10};
  start.also = {{degrees(87), 0}};
  BOOST_CHECK((asked_slots(start) == Slots{"also"}));
  logbook::ExceedanceLimit exceedance;
  exceedance.limit = {logbook::GaugeTemperature{degrees(8430)}, 10};
  BOOST_CHECK((asked_slots(exceedance) == Slots{"limit"}));
  logbook::ChartRow row;
  row.altitude_feet = 200000;
  row.outside_air = degrees(100);
  row.allows = {{degrees(65), {quantity::Decimal::of(60000), logbook::TorqueUnit::percent}}};
  BOOST_CHECK((asked_slots(row) == Slots{"altitude_feet", "outside_air", "allows"}));
  logbook::TrendSettings trend;
  trend.floor = quantity::Margin::of(7000);
  BOOST_CHECK((asked_slots(trend) == Slots{"floor"}));
}

BOOST_AUTO_TEST_CASE(a_doubtful_figure_is_asked_about_when_it_is_said) {
  Record record;
  record.begin("4400.0", "");
  logbook::TemperatureLimit limit;
  limit.model = {{"TS-40"}};
  limit.limit = degrees(72);
  CHECK_KINDS(record.kinds("2025-03-04", limit), CheckKind::outside_the_usual);
}

BOOST_AUTO_TEST_SUITE_END()
