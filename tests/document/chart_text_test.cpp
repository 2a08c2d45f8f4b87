#include <algorithm>
#include <boost/test/unit_test.hpp>

#include "document/as_text.h"
#include "document/chart/cells.h"
#include "document/chart_lines.h"
#include "document/chart_samples.h"
#include "text/pieces.h"
#include "text/random_words.h"
#include "text/unicode.h"

namespace {

using document::Chart;
using document_test::chart_value;
using document_test::counted;
using document_test::flagged;

Chart square(std::vector<document::ChartPoint> points) {
  Chart chart = document_test::bare_chart();
  chart.points = {counted(0, 0), counted(100, 100)};
  chart.points.insert(chart.points.end(), points.begin(), points.end());
  return chart;
}

std::size_t count_in(const std::vector<std::string>& rows, char mark) {
  std::size_t count = 0;
  for (const std::string& row : rows) {
    count += static_cast<std::size_t>(std::count(row.begin(), row.end(), mark));
  }
  return count;
}

std::size_t marks(const Chart& chart, char mark) {
  return count_in(document::cell_plot(chart, 60, 17).rows, mark);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(chart_text)

BOOST_AUTO_TEST_CASE(a_small_chart_in_characters) {
  const std::string wanted =
      R"(Temperature margin of engine E-1001
The margin falls by 4.0 C per 100 h; it may reach the floor
from 1480 h on.
Margin, C
                             1
35 |                         |
   | :                       |
   | o::::::::::::::         |
30 | -------------o------------:o::::::::::::
   | ::::::::::::::::::::::::::--------------o---------::::
25 |                         |           ::::::::::::::---o
   |                         |                         ::::
   |                         |
20 |                         |
   |                      x  |
   |                         |
15 |                         |
   |                         |
10 |========================================================
   |                         |
   |                         |
 5 |                         |
   +-+--------------------------+-------------------------+-
   1200                       1250                      1300
                                             Engine hours, h
o  readings counted: 5
x  readings flagged, not stabilised: 18.0 C at 1240.0 h
-  line from 30.3 C at 1200.0 h to 26.3 C at 1300.0 h
:  95 % band of the line: 28.30 to 32.30 C at 1200.0 h,
   24.30 to 28.30 C at 1300.0 h
=  floor 10 C
1  washed 11 March 2026, at 1245.0 h)";
  const std::vector<std::string> lines = document::chart_lines(document_test::small_chart(), 60);
  BOOST_TEST(text::join(lines, "\n") == wanted);
}

BOOST_AUTO_TEST_CASE(several_points_in_one_place_are_told_apart_from_one) {
  BOOST_TEST(marks(square({}), 'o') == 2U);
  BOOST_TEST(marks(square({counted(50, 50), counted(50, 50)}), 'O') == 1U);
  BOOST_TEST(marks(square({flagged(50, 50, "a")}), 'x') == 1U);
  BOOST_TEST(marks(square({flagged(50, 50, "a"), flagged(50, 50, "b")}), 'X') == 1U);
  BOOST_TEST(marks(square({flagged(50, 50, "a"), counted(50, 50)}), '*') == 1U);
  BOOST_TEST(marks(square({flagged(50, 1000, "a")}), '^') == 1U);
  BOOST_TEST(marks(square({flagged(50, -1000, "a")}), 'v') == 1U);
  const std::vector<std::string> lines =
      document::chart_lines(square({flagged(50, 50, "a"), counted(50, 50)}), 80);
  BOOST_TEST(lines.back() == "*  counted and flagged in one place");
}

// The marks of cells that hold one point, and the sums that the key says.
BOOST_AUTO_TEST_CASE(no_point_is_lost) {
  text_test::RandomWords random(text_test::printed_seed("no point is lost in cells"));
  for (int round = 0; round < 300; ++round) {
    std::vector<document::ChartPoint> points;
    for (std::size_t left = random.below(30); left > 0; --left) {
      const auto x = static_cast<double>(random.below(101));
      const auto y = static_cast<double>(random.below(101));
      points.push_back(random.below(4) == 0 ? flagged(x, y, "odd") : counted(x, y));
    }
    const Chart chart = square(points);
    const document::CellPlot plot = document::cell_plot(chart, 60, 17);
    for (const document::ChartPoint& point : chart.points) {
      const document::Spot spot = document::point_on(plot.frame, point.place);
      const char mark = plot.rows[document::cell_of(spot.y)][document::cell_of(spot.x)];
      const bool is_counted = point.mark == document::ChartMark::counted;
      const std::string_view may_be = is_counted ? "oO*" : "xX*";
      BOOST_REQUIRE(may_be.find(mark) != std::string_view::npos);
    }
  }
}

BOOST_AUTO_TEST_CASE(a_drawing_is_never_wider_than_the_screen) {
  Chart big = document_test::large_chart(800, 12);
  big.levels.push_back({chart_value(123456789, 0), "far off"});
  for (const Chart& chart : {document_test::small_chart(), big, square({})}) {
    for (std::size_t columns = 40; columns <= 200; columns += 3) {
      for (const std::string& line : document::chart_lines(chart, columns)) {
        BOOST_TEST(text::columns(line) <= columns, line);
        BOOST_TEST(!line.ends_with(' '));
      }
    }
  }
}

BOOST_AUTO_TEST_CASE(a_narrow_screen_keeps_the_words) {
  const Chart chart = document_test::small_chart();
  const std::string narrow = text::join(document::chart_lines(chart, 39), " ");
  BOOST_TEST(narrow.find('+') == std::string::npos);
  BOOST_TEST(narrow.find("washed 11 March 2026,") != std::string::npos);
  BOOST_TEST(narrow.find("floor 10 C") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_chart_stands_apart_from_its_neighbours) {
  document::Document document = document_test::with(document_test::small_chart());
  document.blocks.insert(document.blocks.begin(), document::Paragraph{"Before."});
  document.blocks.push_back(document::Paragraph{"After."});
  const std::string words = document::as_text(document, 80);
  BOOST_TEST(words.find("Before.\n\nTemperature") != std::string::npos);
  BOOST_TEST(words.find("\n\nAfter.\n") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(hostile_words_do_not_act) {
  Chart chart = document_test::small_chart();
  const std::string bad = "a\x1B[2J\nb\xE2\x80\xAE\x9B";
  chart.title = chart.alt = chart.points_name = bad;
  chart.x = chart.y = {bad, bad};
  chart.points[2].reason = chart.levels[0].label = chart.events[0].label = bad;
  chart.bands[0].label = bad;
  for (const std::string& line : document::chart_lines(chart, 80)) {
    BOOST_TEST(line.find_first_of("\x1B\n") == std::string::npos);
    BOOST_TEST(text::is_valid_utf8(line));
  }
}

BOOST_AUTO_TEST_SUITE_END()
