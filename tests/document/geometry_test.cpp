#include "document/chart/geometry.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <random>

#include "document/chart_samples.h"
#include "text/random_words.h"

namespace {

using document::Beyond;
using document::Spot;
using document_test::chart_value;

constexpr double hair = 1e-9;

void check_spots(const std::vector<Spot>& found, const std::vector<Spot>& wanted) {
  BOOST_REQUIRE_EQUAL(found.size(), wanted.size());
  for (std::size_t i = 0; i < found.size(); ++i) {
    BOOST_TEST(std::abs(found[i].x - wanted[i].x) < hair);
    BOOST_TEST(std::abs(found[i].y - wanted[i].y) < hair);
  }
}

}  // namespace

// All figures of this suite are worked by hand.
BOOST_AUTO_TEST_SUITE(geometry)

BOOST_AUTO_TEST_CASE(a_chart_covers_its_points_lines_and_levels) {
  const document::Chart chart = document_test::small_chart();
  BOOST_TEST(document::x_extent(chart).low == 1200.0);
  BOOST_TEST(document::x_extent(chart).high == 1300.0);
  // Core: floor 10 to the highest counted point 30.5; a level stands a twentieth inside; the upper
  // edge of the band ends at 30.3 + 2.0.
  BOOST_TEST(std::abs(document::y_extent(chart).low - (10 - 0.05 * 20.5)) < hair);
  BOOST_TEST(std::abs(document::y_extent(chart).high - 32.3) < hair);
}

BOOST_AUTO_TEST_CASE(events_nearby_widen_the_chart_and_others_are_only_said) {
  document::Chart chart = document_test::small_chart();
  chart.events = {{chart_value(1185, 0), "near"},
                  {chart_value(1184, 0), "far before"},
                  {chart_value(1315, 0), "near"},
                  {chart_value(1316, 0), "far after"}};
  BOOST_TEST(document::x_extent(chart).low == 1185.0);
  BOOST_TEST(document::x_extent(chart).high == 1315.0);
  BOOST_TEST((document::beside(chart, chart.events[0]) == document::Beside::inside));
  BOOST_TEST((document::beside(chart, chart.events[1]) == document::Beside::before));
  BOOST_TEST((document::beside(chart, chart.events[2]) == document::Beside::inside));
  BOOST_TEST((document::beside(chart, chart.events[3]) == document::Beside::after));
}

BOOST_AUTO_TEST_CASE(a_wild_point_does_not_press_the_rest_flat) {
  document::Chart chart = document_test::bare_chart();
  chart.points = {document_test::counted(0, 10), document_test::counted(10, 20),
                  document_test::flagged(5, 29, "near"), document_test::flagged(6, 400, "wild")};
  BOOST_TEST(document::y_extent(chart).low == 10.0);
  BOOST_TEST(document::y_extent(chart).high == 29.0);
  const document::Frame frame = document::frame_of(chart, {0, 0, 100, 50}, {5, 5});
  BOOST_TEST((document::beyond(frame.covered, 400) == Beyond::above));
  BOOST_TEST((document::beyond(frame.covered, 29) == Beyond::inside));
  BOOST_TEST((document::beyond(frame.covered, -1) == Beyond::below));
  BOOST_TEST(document::point_on(frame, chart.points[3].place).y == 0.0);
}

BOOST_AUTO_TEST_CASE(an_open_band_widens_the_chart_by_its_own_height_at_most) {
  document::Chart chart = document_test::bare_chart();
  chart.points = {document_test::counted(0, 10), document_test::counted(10, 20)};
  chart.bands = {{"band",
                  {{chart_value(0, 0), chart_value(-500, 0), chart_value(900, 0)},
                   {chart_value(10, 0), chart_value(14, 0), chart_value(16, 0)}}}};
  BOOST_TEST(document::y_extent(chart).low == 0.0);
  BOOST_TEST(document::y_extent(chart).high == 30.0);
}

BOOST_AUTO_TEST_CASE(flagged_points_alone_are_covered) {
  document::Chart chart = document_test::bare_chart();
  chart.points = {document_test::flagged(5, 29, "alone")};
  BOOST_TEST(document::y_extent(chart).low < 29.0);
  BOOST_TEST(document::y_extent(chart).high > 29.0);
}

BOOST_AUTO_TEST_CASE(coordinates_stand_in_proportion) {
  const document::Frame frame{{10, 20, 110, 70}, {0, 200, {}}, {-10, 40, {}}, {-10, 40}};
  BOOST_TEST(document::x_on(frame, 0) == 10.0);
  BOOST_TEST(document::x_on(frame, 50) == 35.0);
  BOOST_TEST(document::x_on(frame, 200) == 110.0);
  BOOST_TEST(document::x_on(frame, 999) == 110.0);
  BOOST_TEST(document::y_on(frame, -10) == 70.0);
  BOOST_TEST(document::y_on(frame, 40) == 20.0);
  BOOST_TEST(document::y_on(frame, 15) == 45.0);
}

BOOST_AUTO_TEST_CASE(a_line_is_held_within_with_corners_where_it_crosses) {
  check_spots(document::held_within({{0, 5}, {10, 5}}, {0, 10}), {{0, 5}, {10, 5}});
  check_spots(document::held_within({{0, 5}, {10, 15}}, {0, 10}), {{0, 5}, {5, 10}, {10, 10}});
  check_spots(document::held_within({{0, 20}, {10, -20}}, {0, 10}),
              {{0, 10}, {2.5, 10}, {5, 0}, {10, 0}});
  check_spots(document::held_within({{0, -20}, {10, 20}}, {0, 10}),
              {{0, 0}, {5, 0}, {7.5, 10}, {10, 10}});
  check_spots(document::held_within({{0, 12}, {10, 15}}, {0, 10}), {{0, 10}, {10, 10}});
  check_spots(document::held_within({{0, 10}, {10, 0}}, {0, 10}), {{0, 10}, {10, 0}});
}

BOOST_AUTO_TEST_CASE(the_edges_of_a_band_keep_their_sides) {
  document::Chart chart = document_test::small_chart();
  const document::Frame frame = document::frame_of(chart, {0, 0, 100, 100}, {5, 5});
  const document::BandEdges edges = document::edges_on(frame, chart.bands[0]);
  BOOST_REQUIRE_EQUAL(edges.upper.size(), 5U);
  for (std::size_t i = 0; i < 5; ++i) BOOST_TEST(edges.upper[i].y < edges.lower[i].y);
}

BOOST_AUTO_TEST_CASE(places_are_spread) {
  using Places = std::vector<double>;
  BOOST_TEST((document::spread({}, 10, {0, 100}) == Places{}));
  BOOST_TEST((document::spread({50, 20}, 10, {0, 100}) == Places{50, 20}));
  BOOST_TEST((document::spread({20, 22}, 10, {0, 100}) == Places{20, 30}));
  BOOST_TEST((document::spread({99, 98, 97}, 10, {0, 100}) == Places{100, 90, 80}));
  BOOST_TEST((document::spread({5, 5, 5}, 80, {0, 100}) == Places{0, 50, 100}));
}

BOOST_AUTO_TEST_CASE(spread_places_keep_gap_and_room) {
  std::mt19937_64 engine(text_test::printed_seed("spread places keep gap and room"));
  std::uniform_real_distribution<double> anywhere(-20, 120);
  for (int round = 0; round < 5000; ++round) {
    std::vector<double> wanted(1 + engine() % 8);
    for (double& at : wanted) at = anywhere(engine);
    std::vector<double> places = document::spread(wanted, 10, {0, 100});
    for (std::size_t i = 0; i < wanted.size(); ++i) {
      for (std::size_t k = 0; k < wanted.size(); ++k) {
        if (wanted[i] < wanted[k]) BOOST_REQUIRE(places[i] < places[k]);
      }
    }
    std::sort(places.begin(), places.end());
    BOOST_REQUIRE(places.front() >= -hair && places.back() <= 100 + hair);
    for (std::size_t i = 1; i < places.size(); ++i) {
      BOOST_REQUIRE(places[i] - places[i - 1] >= 10 - hair);
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
