// The standard atmosphere against its printed tables, and what is refused.
#include "reckon/trend/air.h"

#include <boost/test/unit_test.hpp>
#include <cmath>
#include <limits>
#include <vector>

#include "quantity/expect.h"
#include "reckon/trend/corrected.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::is_printed_as;
using trend_test::seeded;

// Within one unit of the sixth digit. The standards of 1975 and 1976 differ by as much.
bool agrees_to_six_digits(double figure, double printed) {
  const double unit = std::pow(10.0, std::floor(std::log10(printed)) - 5.0);
  return std::abs(figure - printed) <= unit * (1.0 + 1e-9);
}

Air air(double pressure_altitude, double outside) {
  return std::get<Air>(air_at(pressure_altitude, outside));
}

BOOST_AUTO_TEST_SUITE(air_about_the_engine)

struct IsoRow {
  double metres, kelvin, hectopascals, density, delta, sigma, root_of_sigma, sound;
};

// Source: ISO 2533:1975, tables 5 and 6, geopotential altitude.
BOOST_AUTO_TEST_CASE(the_tables_of_iso_2533_are_met_to_six_digits) {
  const std::vector<IsoRow> table{
      {-1000, 294.650, 1139.29, 1.34700, 1.12439, 1.09959, 1.04861, 344.111},
      {0, 288.150, 1013.25, 1.22500, 1, 1, 1, 340.294},
      {1000, 281.650, 898.746, 1.11164, 0.886993, 0.907463, 0.952609, 336.434},
      {2000, 275.150, 794.952, 1.00649, 0.784557, 0.821625, 0.906435, 332.529},
      {4000, 262.150, 616.402, 0.819129, 0.608342, 0.668677, 0.817727, 324.579},
      {5000, 255.650, 540.199, 0.736116, 0.533135, 0.600911, 0.775184, 320.529},
      {7000, 242.650, 410.607, 0.589501, 0.405238, 0.481225, 0.693704, 312.273},
      {8000, 236.150, 355.998, 0.525167, 0.351343, 0.428708, 0.654758, 308.063},
      {10000, 223.150, 264.362, 0.412706, 0.260905, 0.336903, 0.580433, 299.463},
      {11000, 216.650, 226.320, 0.363918, 0.223361, 0.297076, 0.545046, 295.069},
      {13000, 216.650, 165.104, 0.265483, 0.162945, 0.216721, 0.465533, 295.069}};
  for (const IsoRow& row : table) {
    BOOST_TEST_CONTEXT(row.metres << " m") {
      const StandardAir standard = standard_air(row.metres);
      BOOST_TEST(agrees_to_six_digits(standard.kelvin, row.kelvin));
      BOOST_TEST(agrees_to_six_digits(standard.hectopascals, row.hectopascals));
      BOOST_TEST(agrees_to_six_digits(standard.density, row.density));
      BOOST_TEST(agrees_to_six_digits(standard.delta, row.delta));
      BOOST_TEST(agrees_to_six_digits(standard.sigma, row.sigma));
      BOOST_TEST(agrees_to_six_digits(std::sqrt(standard.sigma), row.root_of_sigma));
      const double sound = std::sqrt(1.4 * 287.05287 * standard.kelvin);
      BOOST_TEST(agrees_to_six_digits(sound, row.sound));
    }
  }
}

struct FeetRow {
  double feet, celsius, theta, delta, sigma, hectopascals;
};

// Derived: the formulas of ISO 2533 over feet, worked out apart from this program.
BOOST_AUTO_TEST_CASE(the_table_in_feet_is_met_to_its_printed_digits) {
  const std::vector<FeetRow> table{{0, 15.0000, 1, 1, 1, 1013.250},
                                   {2000, 11.0376, 0.98624883, 0.92980905, 0.94277330, 942.129},
                                   {4000, 7.0752, 0.97249766, 0.86366187, 0.88808634, 875.105},
                                   {8000, -0.8496, 0.94499531, 0.74278175, 0.78601633, 752.624},
                                   {10000, -4.8120, 0.93124414, 0.68770433, 0.73847911, 696.816},
                                   {14000, -12.7368, 0.90374180, 0.58745485, 0.65002510, 595.239},
                                   {16000, -16.6992, 0.88999063, 0.54197085, 0.60896243, 549.152},
                                   {20000, -24.6240, 0.86248829, 0.45954344, 0.53281123, 465.632},
                                   {22000, -28.5864, 0.84873712, 0.42231886, 0.49758500, 427.915},
                                   {26000, -36.5112, 0.82123477, 0.35518169, 0.43249715, 359.888},
                                   {28000, -40.4736, 0.80748360, 0.32501691, 0.40250590, 329.323},
                                   {32000, -48.3984, 0.77998126, 0.27089897, 0.34731473, 274.488},
                                   {34000, -52.3608, 0.76623009, 0.24672086, 0.32199318, 249.990},
                                   {38000, -56.5000, 0.75186535, 0.20376165, 0.27100817, 206.461},
                                   {40000, -56.5000, 0.75186535, 0.18508663, 0.24616992, 187.539}};
  for (const FeetRow& row : table) {
    BOOST_TEST_CONTEXT(row.feet << " ft") {
      const StandardAir standard = standard_air(row.feet * metres_a_foot);
      BOOST_TEST(is_printed_as(standard_celsius(row.feet), row.celsius, 4));
      BOOST_TEST(is_printed_as(standard.theta, row.theta, 8));
      BOOST_TEST(is_printed_as(standard.delta, row.delta, 8));
      // The table's is density over 1.225, which itself is rounded in the eighth digit.
      BOOST_TEST(standard.sigma == row.sigma, boost::test_tools::tolerance(2e-7));
      BOOST_TEST(is_printed_as(standard.hectopascals, row.hectopascals, 3));
      const Air at = air(row.feet, row.celsius);
      BOOST_TEST(is_printed_as(at.theta, row.theta, 6));
      BOOST_TEST(is_printed_as(at.delta, row.delta, 8));
      BOOST_TEST(is_printed_as(at.isa_deviation, 0.0, 4));
    }
  }
}

// Source: FAA Pilot's Handbook of Aeronautical Knowledge, page 10-19: 5883 ft, 30.10 in, 70 F give
// a correction of -165 ft, 5718 ft, and a density altitude of about 7700 ft.
BOOST_AUTO_TEST_CASE(the_handbooks_worked_problem_comes_out) {
  const double altitude = std::get<double>(pressure_altitude_inches(5883.0, 30.10));
  BOOST_TEST(std::abs(altitude - 5718.0) < 1.0);
  BOOST_TEST(is_printed_as(altitude - 5883.0, -164.91, 2));
  const Air there = air(altitude, celsius_of(70.0));
  BOOST_TEST(std::abs(there.density_altitude - 7700.0) < 50.0);
  BOOST_TEST(is_printed_as(there.density_altitude, 7709.6, 1));
}

// By hand: 0.85 of 1013.25 is 861.2625 hPa; both ways of writing one pressure give one altitude.
BOOST_AUTO_TEST_CASE(inches_and_hectopascals_say_the_same) {
  BOOST_TEST(std::get<double>(pressure_altitude_hectopascals(1200.0, 1013.25)) == 1200.0,
             boost::test_tools::tolerance(1e-12));
  BOOST_TEST(std::get<double>(pressure_altitude_inches(1200.0, 29.92126)) == 1200.0,
             boost::test_tools::tolerance(1e-12));
  const double low = 0.97;
  BOOST_TEST(std::get<double>(pressure_altitude_hectopascals(50.0, low * 1013.25)) ==
                 std::get<double>(pressure_altitude_inches(50.0, low * 29.92126)),
             boost::test_tools::tolerance(1e-12));
}

// By hand (practice case A6): 8000 ft is -0.8496 C by the standard, and above 36,089 ft -56.5 C.
BOOST_AUTO_TEST_CASE(the_deviation_from_standard_is_against_the_right_layer) {
  BOOST_TEST(is_printed_as(air(8000.0, 10.0).isa_deviation, 10.8496, 4));
  BOOST_TEST(is_printed_as(air(38000.0, -50.0).isa_deviation, 6.5, 4));
}

// The measured air sets theta alone, the altitude delta alone.
BOOST_AUTO_TEST_CASE(theta_is_of_the_air_and_delta_of_the_altitude) {
  const Air cold = air(5000.0, -40.0);
  const Air hot = air(5000.0, 40.0);
  BOOST_TEST(cold.delta == hot.delta);
  BOOST_TEST(cold.theta == 233.15 / 288.15, boost::test_tools::tolerance(1e-14));
  BOOST_TEST(hot.theta == air(0.0, 40.0).theta);
  BOOST_TEST(hot.sigma == hot.delta / hot.theta, boost::test_tools::tolerance(1e-14));
  BOOST_TEST(hot.density_altitude > 5000.0);
  BOOST_TEST(cold.density_altitude < 5000.0);
}

BOOST_AUTO_TEST_CASE(in_standard_air_the_density_altitude_is_the_pressure_altitude) {
  std::mt19937_64 random = seeded("density altitude");
  std::uniform_real_distribution<double> altitudes(lowest_altitude_feet, highest_altitude_feet);
  for (int round = 0; round < 500; ++round) {
    const double feet = altitudes(random);
    const Air standard = air(feet, standard_celsius(feet));
    BOOST_TEST(std::abs(standard.density_altitude - feet) < 1e-6);
    BOOST_TEST(std::abs(standard.isa_deviation) < 1e-9);
  }
}

// The two layers meet: one millimetre either side of the tropopause changes next to nothing.
BOOST_AUTO_TEST_CASE(the_layers_meet_at_the_tropopause) {
  const StandardAir below = standard_air(10999.999);
  const StandardAir above = standard_air(11000.001);
  const auto close = boost::test_tools::tolerance(1e-6);
  BOOST_TEST(below.kelvin == above.kelvin, close);
  BOOST_TEST(below.delta == above.delta, close);
  BOOST_TEST(above.delta < below.delta);
  BOOST_TEST(below.sigma == above.sigma, close);
}

struct Refused {
  double altitude, outside;
  AirFigure what;
  double given, nearest;
};

BOOST_AUTO_TEST_CASE(outside_the_range_the_figure_and_the_nearest_allowed_are_named) {
  const std::vector<Refused> cases{{-2000.1, 15.0, AirFigure::pressure_altitude, -2000.1, -2000.0},
                                   {45001.0, 15.0, AirFigure::pressure_altitude, 45001.0, 45000.0},
                                   {0.0, -60.5, AirFigure::outside_air, -60.5, -60.0},
                                   {0.0, 60.5, AirFigure::outside_air, 60.5, 60.0},
                                   {46000.0, 70.0, AirFigure::pressure_altitude, 46000.0, 45000.0}};
  for (const Refused& one : cases) {
    const auto refusal = std::get<AirRefusal>(air_at(one.altitude, one.outside));
    BOOST_TEST((refusal.what == one.what));
    BOOST_TEST(refusal.given == one.given);
    BOOST_TEST(refusal.nearest_allowed == one.nearest);
  }
  for (const double altitude : {-2000.0, 45000.0}) {
    for (const double outside : {-60.0, 60.0}) {
      BOOST_TEST(std::holds_alternative<Air>(air_at(altitude, outside)));
    }
  }
}

BOOST_AUTO_TEST_CASE(a_setting_in_the_wrong_unit_is_refused) {
  const auto inches = std::get<AirRefusal>(pressure_altitude_inches(500.0, 1013.0));
  BOOST_TEST((inches.what == AirFigure::altimeter_setting));
  BOOST_TEST(inches.nearest_allowed == 32.5);
  const auto hectopascals = std::get<AirRefusal>(pressure_altitude_hectopascals(500.0, 29.92));
  BOOST_TEST((hectopascals.what == AirFigure::altimeter_setting));
  BOOST_TEST(hectopascals.nearest_allowed == 25.0);
  const auto field = std::get<AirRefusal>(pressure_altitude_inches(47000.0, 29.92));
  BOOST_TEST((field.what == AirFigure::pressure_altitude));
}

BOOST_AUTO_TEST_CASE(what_is_no_number_is_no_air) {
  const double none = std::nan("");
  BOOST_TEST(std::holds_alternative<AirRefusal>(air_at(none, 15.0)));
  BOOST_TEST(std::holds_alternative<AirRefusal>(air_at(0.0, none)));
  BOOST_TEST(std::holds_alternative<AirRefusal>(pressure_altitude_inches(0.0, none)));
  BOOST_TEST(std::holds_alternative<AirRefusal>(pressure_altitude_inches(none, 29.92)));
  BOOST_CHECK_THROW(standard_air(none), quantity::BrokenPromise);
  BOOST_CHECK_THROW(standard_air(20001.0), quantity::BrokenPromise);
  BOOST_CHECK_THROW(density_altitude(0.0), quantity::BrokenPromise);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
