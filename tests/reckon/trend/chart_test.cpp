// A typed chart between, on, beside and beyond its points. The cases are derived.
#include "reckon/trend/chart.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "quantity/expect.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::seeded;

// Trilinear itself, so that a trilinear reading gives it exactly. Practice grid I.
double formula(double t, double p, double o) {
  return 500.0 + 2.5 * t + 0.005 * p + 3.0 * o + 0.00001 * p * t + 0.001 * t * o;
}

std::vector<ChartRow> grid_rows() {
  std::vector<ChartRow> rows;
  for (const double altitude : {0.0, 4000.0, 8000.0, 12000.0}) {
    for (const double outside : {-20.0, 0.0, 20.0, 40.0}) {
      ChartRow row{altitude, outside, {}};
      for (const double torque : {40.0, 60.0, 80.0, 100.0}) {
        row.allowed.push_back({torque, formula(torque, altitude, outside)});
      }
      rows.push_back(row);
    }
  }
  return rows;
}

Chart chart_of(const std::vector<ChartRow>& rows) { return std::get<Chart>(make_chart(rows)); }

double value(const Chart& chart, const ChartPlace& place) {
  return std::get<double>(allowed_at(chart, place));
}

bool is_close(double figure, double expected) { return std::abs(figure - expected) <= 1e-9; }

// The grid without one of its points.
std::vector<ChartRow> rows_without(const ChartPlace& hole) {
  std::vector<ChartRow> rows = grid_rows();
  for (ChartRow& row : rows) {
    if (row.pressure_altitude != hole.pressure_altitude || row.outside != hole.outside) continue;
    std::erase_if(row.allowed, [&](const auto& one) { return one.torque == hole.torque; });
  }
  return rows;
}

BOOST_AUTO_TEST_SUITE(chart)

// Practice cases I1 to I4.
BOOST_AUTO_TEST_CASE(corners_and_places_between_come_out_as_printed) {
  const Chart chart = chart_of(grid_rows());
  BOOST_TEST(is_close(value(chart, {40, 0, -20}), 539.2));
  BOOST_TEST(is_close(value(chart, {100, 12000, 40}), 946.0));
  BOOST_TEST(is_close(value(chart, {72, 5500, 13}), 751.396));
  BOOST_TEST(is_close(value(chart, {60, 4000, 7}), 693.82));
}

struct Beyond {
  ChartPlace place;
  ChartAxis axis;
  double out_by, nearest;
};

// Practice case I7.
BOOST_AUTO_TEST_CASE(outside_there_is_no_value_but_the_axis_and_by_how_much) {
  const Chart chart = chart_of(grid_rows());
  const std::vector<Beyond> cases{{{101, 0, 0}, ChartAxis::torque, 1.0, 100.0},
                                  {{39.5, 0, 0}, ChartAxis::torque, 0.5, 40.0},
                                  {{80, -1, 0}, ChartAxis::pressure_altitude, 1.0, 0.0},
                                  {{80, 12500, 0}, ChartAxis::pressure_altitude, 500.0, 12000.0},
                                  {{80, 0, 40.01}, ChartAxis::outside_air, 0.01, 40.0},
                                  {{80, 0, -25}, ChartAxis::outside_air, 5.0, -20.0}};
  for (const Beyond& one : cases) {
    const auto outside = std::get<OutsideChart>(allowed_at(chart, one.place));
    BOOST_REQUIRE(outside.axes.size() == 1u);
    BOOST_TEST((outside.axes[0].axis == one.axis));
    BOOST_TEST(is_close(outside.axes[0].out_by, one.out_by));
    BOOST_TEST(outside.axes[0].nearest_allowed == one.nearest);
  }
}

BOOST_AUTO_TEST_CASE(a_place_outside_on_two_axes_names_both) {
  const auto outside = std::get<OutsideChart>(allowed_at(chart_of(grid_rows()), {30, 5000, 41}));
  BOOST_REQUIRE(outside.axes.size() == 2u);
  BOOST_TEST((outside.axes[0].axis == ChartAxis::torque));
  BOOST_TEST(outside.axes[0].given == 30.0);
  BOOST_TEST((outside.axes[1].axis == ChartAxis::outside_air));
  BOOST_TEST(outside.axes[1].given == 41.0);
}

BOOST_AUTO_TEST_CASE(a_trilinear_chart_is_met_everywhere_in_any_order_of_its_rows) {
  std::mt19937_64 random = seeded("chart");
  std::uniform_real_distribution<double> torques(40.0, 100.0);
  std::uniform_real_distribution<double> altitudes(0.0, 12000.0);
  std::uniform_real_distribution<double> outsides(-20.0, 40.0);
  const Chart chart = chart_of(grid_rows());
  std::vector<ChartRow> rows = grid_rows();
  for (int round = 0; round < 300; ++round) {
    const ChartPlace place{torques(random), altitudes(random), outsides(random)};
    const double expected = formula(place.torque, place.pressure_altitude, place.outside);
    BOOST_TEST(is_close(value(chart, place), expected));
    std::ranges::shuffle(rows, random);
    for (ChartRow& row : rows) std::ranges::shuffle(row.allowed, random);
    BOOST_TEST(value(chart_of(rows), place) == value(chart, place));
  }
}

// A row may be typed in two pieces, and a point twice, so long as they agree.
BOOST_AUTO_TEST_CASE(rows_in_pieces_make_the_same_chart) {
  std::vector<ChartRow> rows = grid_rows();
  rows.push_back({4000, 20, {rows[6].allowed[1], rows[6].allowed[2]}});
  rows[6].allowed.erase(rows[6].allowed.begin() + 1);
  BOOST_TEST(chart_of(rows).values == chart_of(grid_rows()).values);
}

BOOST_AUTO_TEST_CASE(a_place_with_two_values_is_no_chart_and_no_rows_are_none) {
  std::vector<ChartRow> rows = grid_rows();
  rows.push_back({4000, 20, {{60, 700.0}}});
  const auto fault = std::get<SamePlaceTwice>(std::get<ChartFault>(make_chart(rows)));
  BOOST_TEST((fault.place == ChartPlace{60, 4000, 20}));
  BOOST_TEST(fault.first == 700.0);
  BOOST_TEST(fault.second == formula(60, 4000, 20));
  BOOST_TEST(std::holds_alternative<NoPoints>(std::get<ChartFault>(make_chart({}))));
  const std::vector<ChartRow> empty{{0, 0, {}}};
  BOOST_TEST(std::holds_alternative<NoPoints>(std::get<ChartFault>(make_chart(empty))));
}

BOOST_AUTO_TEST_CASE(a_hole_has_no_value_and_names_the_missing_corner) {
  const ChartPlace missing{80, 4000, 20};
  const Chart chart = chart_of(rows_without(missing));
  for (const ChartPlace& place : {ChartPlace{72, 5500, 13}, ChartPlace{99, 1, 39}, missing}) {
    const auto hole = std::get<ChartHole>(allowed_at(chart, place));
    BOOST_REQUIRE(hole.missing.size() == 1u);
    BOOST_TEST((hole.missing[0] == missing));
  }
}

// On a face, an edge or a corner of the hole's cells that does not touch it, it weighs nothing.
BOOST_AUTO_TEST_CASE(a_hole_that_would_weigh_nothing_is_not_asked_for) {
  const Chart chart = chart_of(rows_without({80, 4000, 20}));
  for (const ChartPlace& place :
       {ChartPlace{60, 5500, 13}, ChartPlace{72, 8000, 13}, ChartPlace{72, 5500, 0},
        ChartPlace{80, 4000, 0}, ChartPlace{100, 0, 40}, ChartPlace{50, 4000, 20}}) {
    const double expected = formula(place.torque, place.pressure_altitude, place.outside);
    BOOST_TEST(is_close(value(chart, place), expected));
  }
}

// A hole spoils exactly the places to which its point would give weight.
BOOST_AUTO_TEST_CASE(on_a_shared_face_either_cell_gives_the_same) {
  std::mt19937_64 random = seeded("faces");
  const Chart chart = chart_of(grid_rows());
  std::uniform_real_distribution<double> altitudes(0.0, 12000.0);
  for (int round = 0; round < 200; ++round) {
    const double altitude = altitudes(random);
    const double on_face = value(chart, {60, altitude, 20});
    for (const double side : {-1e-9, 1e-9}) {
      BOOST_TEST(std::abs(value(chart, {60 + side, altitude, 20 + side}) - on_face) < 1e-6);
    }
  }
}

BOOST_AUTO_TEST_CASE(a_chart_for_one_altitude_is_met_at_that_altitude_only) {
  std::vector<ChartRow> rows = grid_rows();
  std::erase_if(rows, [](const ChartRow& row) { return row.pressure_altitude != 4000.0; });
  const Chart chart = chart_of(rows);
  BOOST_TEST(is_close(value(chart, {72, 4000, 13}), formula(72, 4000, 13)));
  for (const double altitude : {3999.9, 4000.1}) {
    const auto outside = std::get<OutsideChart>(allowed_at(chart, {72, altitude, 13}));
    BOOST_REQUIRE(outside.axes.size() == 1u);
    BOOST_TEST((outside.axes[0].axis == ChartAxis::pressure_altitude));
    BOOST_TEST(is_close(outside.axes[0].out_by, 0.1));
    BOOST_TEST(outside.axes[0].nearest_allowed == 4000.0);
  }
}

BOOST_AUTO_TEST_CASE(what_is_no_number_breaks_a_promise) {
  const Chart chart = chart_of(grid_rows());
  const double none = std::nan("");
  BOOST_CHECK_THROW(allowed_at(chart, {none, 0, 0}), quantity::BrokenPromise);
  const std::vector<ChartRow> rows{{0, 0, {{40, none}}}};
  BOOST_CHECK_THROW(make_chart(rows), quantity::BrokenPromise);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
