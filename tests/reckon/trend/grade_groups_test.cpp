// Grades that hear Theil-Sen too, and grades of readings in groups. Series are derived from
// practice cases, not published.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "reckon/trend/grade.h"
#include "reckon/trend/published.h"
#include "reckon/trend/test_points.h"

namespace {

using namespace reckon::trend;
using trend_test::random_groups;
using trend_test::random_series;
using trend_test::seeded;
using trend_test::series;

using Places = std::vector<std::size_t>;

const std::vector<Point> falling_margin = series(0, 25, {30, 29, 29, 27, 26, 26, 24, 23});

Finding graded(const std::vector<Group>& groups, double serial_correlation) {
  return grade_points(groups, serial_correlation);
}

// S61 twice, a wash in between that gives 12 C back.
std::vector<Group> two_falls() {
  std::vector<Point> after = falling_margin;
  for (Point& point : after) point = {point.x + 200.0, point.y + 4.0};
  return {falling_margin, after};
}

BOOST_AUTO_TEST_SUITE(grade_of_groups)

BOOST_AUTO_TEST_CASE(the_evidence_holds_the_robust_line_and_its_chance) {
  const Evidence evidence = grade_points(trend_test::uneven_margins(), 0.0).evidence.value();
  BOOST_TEST(trend_test::is_printed_as(evidence.theil_sen.slope, -0.049221, 6));
  BOOST_TEST(evidence.theil_sen.interval.value().high < 0.0);
  BOOST_TEST(evidence.mann_kendall.s == -38);
  BOOST_TEST(trend_test::is_printed_as(evidence.mann_kendall.z, -2.5779, 4));
  BOOST_TEST((evidence.agreement == Agreement::agree));
  BOOST_TEST(evidence.levels.size() == 1u);
  BOOST_TEST(evidence.gains.empty());
}

// Anscombe 1973, third set: one wild point turns the line of least squares out of the other's band.
BOOST_AUTO_TEST_CASE(a_wild_reading_sets_the_two_lines_apart) {
  std::vector<Point> points = trend_test::anscombe(3);
  for (Point& point : points) point.x *= 10.0;
  const Evidence evidence = grade_points(points, 0.0).evidence.value();
  BOOST_TEST((evidence.agreement == Agreement::least_squares_apart));
  const Evidence first = grade_points(trend_test::uneven_margins(), 0.2).evidence.value();
  BOOST_TEST((first.agreement == Agreement::agree));
}

// A step down: least squares sees a fall beyond 99.5 %, now and one reading ago, and no reading
// carries it alone; but so many pairs are level that the robust slope may be none.
BOOST_AUTO_TEST_CASE(a_fall_that_the_robust_line_does_not_see_is_not_clear) {
  const auto points = series(0, 10, {40, 41, 39, 41, 40, 39, 41, 40, 28, 29, 28, 29, 28});
  const Finding finding = grade_points(points, 0.0);
  const Evidence& evidence = finding.evidence.value();
  BOOST_TEST((evidence.direction == Direction::falling));
  BOOST_TEST(evidence.is_beyond_with_all);
  BOOST_TEST(evidence.is_beyond_without_last);
  BOOST_TEST(evidence.deciding.empty());
  BOOST_TEST(evidence.theil_sen.interval.value().low < 0.0);
  BOOST_TEST(evidence.theil_sen.interval.value().high >= 0.0);
  BOOST_TEST((finding.grade == Grade::weak));
}

// Five readings on one line: least squares is certain, and the robust line has no interval of 95 %.
BOOST_AUTO_TEST_CASE(five_readings_are_never_clear) {
  const Finding finding = grade_points(series(0, 25, {30, 28.1, 26, 24.1, 22}), 0.0);
  BOOST_TEST(finding.evidence.value().is_beyond_with_all);
  BOOST_TEST(!finding.evidence.value().theil_sen.interval.has_value());
  BOOST_TEST((finding.grade == Grade::weak));
}

// The robust interval is widened as the others are.
BOOST_AUTO_TEST_CASE(the_robust_interval_takes_the_widening) {
  const auto plain = grade_points(falling_margin, 0.0).evidence.value().theil_sen.interval.value();
  const auto wide = grade_points(falling_margin, 0.4).evidence.value().theil_sen.interval.value();
  BOOST_TEST(wide.low < plain.low);
  BOOST_TEST(wide.high > plain.high);
}

BOOST_AUTO_TEST_CASE(one_group_is_graded_as_its_readings_alone) {
  std::mt19937_64 random = seeded("one group");
  for (int round = 0; round < 200; ++round) {
    const std::vector<Point> points = random_series(random);
    const Finding alone = grade_points(points, 0.2);
    const Finding grouped = graded({{}, points, {}}, 0.2);
    BOOST_TEST((alone.grade == grouped.grade));
    BOOST_TEST(alone.points == grouped.points);
    BOOST_TEST(alone.span_hours == grouped.span_hours);
    BOOST_REQUIRE(alone.evidence.has_value() == grouped.evidence.has_value());
    if (!alone.evidence) continue;
    BOOST_TEST(alone.evidence->line.slope == trend_test::line_of(points).slope);
    BOOST_TEST(alone.evidence->line.slope == grouped.evidence->line.slope);
    BOOST_TEST(alone.evidence->deciding == grouped.evidence->deciding);
    BOOST_TEST((alone.evidence->more_readings == grouped.evidence->more_readings));
  }
}

// A line over all would hardly fall at all; in groups it is as clear as it is.
BOOST_AUTO_TEST_CASE(a_wash_hides_no_fall) {
  const std::vector<Group> groups = two_falls();
  std::vector<Point> as_one = groups[0];
  as_one.insert(as_one.end(), groups[1].begin(), groups[1].end());
  BOOST_TEST((grade_points(as_one, 0.2).grade == Grade::cannot_tell));

  const Finding finding = graded(groups, 0.2);
  BOOST_TEST((finding.grade == Grade::clear));
  BOOST_TEST(finding.points == 16u);
  BOOST_TEST(finding.span_hours == 350.0);
  const Evidence& evidence = finding.evidence.value();
  BOOST_TEST((evidence.direction == Direction::falling));
  BOOST_TEST(evidence.line.slope == -0.04, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(evidence.line.n == 8u);
  BOOST_TEST(evidence.levels.size() == 2u);
  BOOST_TEST(evidence.gains.at(0).gain == 12.0, boost::test_tools::tolerance(1e-12));
  BOOST_TEST(evidence.gains[0].between.low > 9.0);
  BOOST_TEST((evidence.agreement == Agreement::agree));
}

// A lone wild reading after the wash: places are counted through all groups.
BOOST_AUTO_TEST_CASE(a_deciding_reading_is_named_through_all_groups) {
  const std::vector<Group> groups{
      series(0, 10, {40, 41, 40, 41}),
      series({100, 600, 610, 620, 630, 640, 650}, {60, 40, 41, 40, 41, 40, 41})};
  const Finding finding = graded(groups, 0.0);
  BOOST_TEST(finding.evidence.value().deciding == Places{4});
  BOOST_TEST((finding.grade == Grade::weak));
}

// Each further level takes a reading; hours between groups are no span.
BOOST_AUTO_TEST_CASE(groups_need_a_reading_more_each_and_their_own_span) {
  const Finding enough = graded({series(0, 20, {30, 29, 28}), series(100, 20, {35, 34, 33})}, 0.2);
  BOOST_TEST(enough.has_points_enough);
  BOOST_TEST(enough.has_span_enough);
  BOOST_TEST((enough.grade != Grade::too_few));
  const Finding few = graded({series(0, 20, {30, 29, 28}), series(100, 20, {35, 34})}, 0.2);
  BOOST_TEST(!few.has_points_enough);
  BOOST_TEST((few.grade == Grade::too_few));
  const Finding brief = graded({series(0, 4, {30, 29, 28}), series(500, 4, {35, 34, 33})}, 0.2);
  BOOST_TEST(brief.has_points_enough);
  BOOST_TEST(!brief.has_span_enough);
  BOOST_TEST(brief.span_hours == 16.0);
  BOOST_TEST((graded({}, 0.2).grade == Grade::too_few));
  BOOST_TEST((graded({{}, {}}, 0.2).grade == Grade::too_few));
}

// The wash day's only reading says nothing of the slope, so what was clear stays clear.
BOOST_AUTO_TEST_CASE(the_first_reading_after_a_wash_changes_no_grade) {
  const Finding finding = graded({falling_margin, {{200.0, 36.0}}}, 0.2);
  BOOST_TEST((finding.grade == Grade::clear));
  BOOST_TEST(finding.evidence.value().line.n == 1u);
  BOOST_TEST(finding.evidence.value().deciding.empty());
}

// A single wash and readings put down one by one: half the widened interval at the foretold number.
BOOST_AUTO_TEST_CASE(the_readings_still_needed_are_enough_in_groups_too) {
  std::mt19937_64 random = seeded("readings needed in groups");
  int seen = 0;
  for (int round = 0; round < 200; ++round) {
    std::vector<Group> groups = random_groups(random, 2);
    const Finding finding = graded(groups, 0.2);
    if (!finding.evidence || !finding.evidence->more_readings) continue;
    const std::size_t more = *finding.evidence->more_readings;
    if (more == 0 || more > 2000) continue;
    ++seen;
    const double scatter = finding.evidence->line.scatter;
    const double first = groups[0].front().x;
    const double last = groups[1].back().x;
    const double spacing = (last - first) / (static_cast<double>(points_in(groups)) - 1.0);
    for (std::size_t one = 1; one <= more; ++one) {
      groups[1].push_back({last + spacing * static_cast<double>(one), 0.0});
    }
    const auto half_with = [&](const std::vector<Group>& all) {
      const Line line = std::get<LevelledLine>(fit_levels(all)).newest();
      return errors_wide(line, {0.95, 0.2}) * scatter / std::sqrt(line.sxx);
    };
    BOOST_TEST(half_with(groups) < 0.01);
    groups[1].pop_back();
    BOOST_TEST(half_with(groups) >= 0.01 * (1.0 - 1e-9));
  }
  BOOST_TEST(seen > 5);
}

BOOST_AUTO_TEST_SUITE_END()

}  // namespace
