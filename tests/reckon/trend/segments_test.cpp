// A series cut at events. The practice cases are derived, not published.
#include "reckon/trend/segments.h"

#include <boost/test/unit_test.hpp>

#include "reckon/trend/series.h"

namespace {

using namespace reckon::trend;
using trend_test::is_printed_as;
using trend_test::line_of;

std::vector<Sample> samples(double spacing, const std::vector<double>& y) {
  std::vector<Sample> result;
  for (double const value : y) {
    result.push_back({spacing * static_cast<double>(result.size()), value, false});
  }
  return result;
}

std::vector<double> margins(const Segment& segment) {
  std::vector<double> result;
  for (const Sample& sample : segment) result.push_back(sample.y);
  return result;
}

using Margins = std::vector<double>;

BOOST_AUTO_TEST_SUITE(segments)

// Practice case S62: a compressor wash between 80 and 100 h.
BOOST_AUTO_TEST_CASE(a_wash_hides_a_loss_until_the_line_is_cut) {
  const auto series = samples(20, {28, 26, 24, 22, 20, 29, 27, 25, 23, 21});
  BOOST_TEST(is_printed_as(line_of(unflagged(series)).slope, -0.017, 3));
  const std::vector<Cut> wash{{90, Owner::later_segment}};
  const std::vector<Segment> parts = cut_into_segments(series, wash);
  BOOST_TEST(parts.size() == 2u);
  const Line before = line_of(unflagged(parts[0]));
  const Line after = line_of(unflagged(parts[1]));
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(before.slope == -0.10, close);
  BOOST_TEST(after.slope == -0.10, close);
  BOOST_TEST(value_at(before, 100) == 18.0, close);
  BOOST_TEST(value_at(after, 100) - value_at(before, 100) == 11.0, close);
  BOOST_TEST(value_at(after, 290) == 10.0, close);
}

// Practice case S68: the right engine steps down between 75 and 100 h, the left one does not.
BOOST_AUTO_TEST_CASE(a_step_on_one_side_is_no_slope) {
  const auto left = samples(25, {24, 23.5, 23, 22.5, 22, 21.5, 21, 20.5});
  const auto right = samples(25, {26, 25.5, 25, 24.5, 18.5, 18, 17.5, 17});
  const auto close = boost::test_tools::tolerance(1e-12);
  BOOST_TEST(line_of(unflagged(left)).slope == -0.020, close);
  BOOST_TEST(is_printed_as(line_of(unflagged(right)).slope, -0.062, 3));
  const std::vector<Cut> step{{88, Owner::later_segment}};
  const std::vector<Segment> parts = cut_into_segments(right, step);
  BOOST_TEST(line_of(unflagged(parts[0])).slope == -0.020, close);
  BOOST_TEST(line_of(unflagged(parts[1])).slope == -0.020, close);
  const double step_at_the_cut =
      value_at(line_of(unflagged(parts[1])), 88) - value_at(line_of(unflagged(parts[0])), 88);
  BOOST_TEST(step_at_the_cut == -5.5, close);
}

// Practice case S67: readings with bleed heat on stay in the series and out of the line.
BOOST_AUTO_TEST_CASE(a_flagged_reading_is_kept_and_left_out_of_the_line) {
  auto series = samples(25, {26, 25.5, 18, 24.5, 17, 23.5, 23});
  series[2].is_flagged = true;
  series[4].is_flagged = true;
  const std::vector<Segment> parts = cut_into_segments(series, {});
  BOOST_TEST(parts.size() == 1u);
  BOOST_TEST(parts[0].size() == 7u);
  BOOST_TEST(parts[0][2].is_flagged);
  const std::vector<Point> points = unflagged(parts[0]);
  BOOST_TEST(points.size() == 5u);
  BOOST_TEST(line_of(points).slope == -0.020, boost::test_tools::tolerance(1e-12));
}

BOOST_AUTO_TEST_CASE(a_reading_at_the_hours_of_the_cut_goes_where_the_cut_says) {
  const auto series = samples(10, {1, 2, 3, 4});
  const std::vector<Cut> flown_before{{20, Owner::earlier_segment}};
  const auto before = cut_into_segments(series, flown_before);
  BOOST_TEST(margins(before[0]) == (Margins{1, 2, 3}));
  BOOST_TEST(margins(before[1]) == Margins{4});
  const std::vector<Cut> flown_after{{20, Owner::later_segment}};
  const auto after = cut_into_segments(series, flown_after);
  BOOST_TEST(margins(after[0]) == (Margins{1, 2}));
  BOOST_TEST(margins(after[1]) == (Margins{3, 4}));
}

BOOST_AUTO_TEST_CASE(cuts_and_readings_in_any_order_give_segments_by_rising_hours) {
  const std::vector<Sample> series{{30, 4, false}, {0, 1, false}, {20, 3, true}, {10, 2, false}};
  const std::vector<Cut> cuts{{25, Owner::later_segment}, {5, Owner::later_segment}};
  const auto parts = cut_into_segments(series, cuts);
  BOOST_TEST(parts.size() == 3u);
  BOOST_TEST(margins(parts[0]) == Margins{1});
  BOOST_TEST(margins(parts[1]) == (Margins{2, 3}));
  BOOST_TEST(parts[1][1].is_flagged);
  BOOST_TEST(margins(parts[2]) == Margins{4});
}

BOOST_AUTO_TEST_CASE(there_is_a_segment_for_every_cut_even_an_empty_one) {
  const auto series = samples(10, {1, 2});
  const std::vector<Cut> cuts{{-5, Owner::later_segment},
                              {5, Owner::earlier_segment},
                              {5, Owner::earlier_segment},
                              {50, Owner::later_segment}};
  const auto parts = cut_into_segments(series, cuts);
  BOOST_TEST(parts.size() == 5u);
  BOOST_TEST(parts[0].empty());
  BOOST_TEST(margins(parts[1]) == Margins{1});
  BOOST_TEST(parts[2].empty());
  BOOST_TEST(margins(parts[3]) == Margins{2});
  BOOST_TEST(parts[4].empty());
  BOOST_TEST(cut_into_segments({}, {}).size() == 1u);
}

// Work before a flight and work after it, at the same hours: the reading at
// those hours stands between the two, whichever was written down first.
BOOST_AUTO_TEST_CASE(two_cuts_at_the_same_hours_keep_a_reading_between_them) {
  const auto series = samples(10, {1, 2, 3});
  const Cut onward{10, Owner::later_segment};
  const Cut behind{10, Owner::earlier_segment};
  for (const auto& cuts : {std::vector<Cut>{onward, behind}, std::vector<Cut>{behind, onward}}) {
    const auto parts = cut_into_segments(series, cuts);
    BOOST_TEST(margins(parts[0]) == Margins{1});
    BOOST_TEST(margins(parts[1]) == Margins{2});
    BOOST_TEST(margins(parts[2]) == Margins{3});
  }
}

BOOST_AUTO_TEST_CASE(readings_at_the_same_hours_keep_the_order_given) {
  const std::vector<Sample> series{{10, 3, false}, {0, 1, false}, {10, 2, false}, {10, 9, false}};
  BOOST_TEST(margins(cut_into_segments(series, {})[0]) == (Margins{1, 3, 2, 9}));
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
