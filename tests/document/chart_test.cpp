#include "document/chart/chart.h"

#include <boost/test/unit_test.hpp>
#include <limits>

#include "document/chart/legend.h"
#include "document/chart_samples.h"
#include "text/pieces.h"

namespace {

using document::Chart;
using document_test::chart_value;

std::string fault_of(const Chart& chart) { return text::join(document::faults(chart), ". "); }

// What is said of the sample after one thing was spoilt, without the words in front.
template <typename Change>
std::string spoilt(Change change) {
  Chart chart = document_test::small_chart();
  change(chart);
  const std::string found = fault_of(chart);
  const std::string place = "chart \"" + chart.key + "\" ";
  BOOST_TEST(found.starts_with(place), found);
  return found.substr(std::min(place.size(), found.size()));
}

std::string legend_words(const Chart& chart) {
  std::string words;
  for (const document::LegendEntry& entry : document::legend(chart)) {
    if (entry.number > 0) words += std::to_string(entry.number) + " ";
    words += entry.words + "\n";
  }
  return words;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(chart_model)

BOOST_AUTO_TEST_CASE(sound_charts_have_no_faults) {
  BOOST_TEST(fault_of(document_test::small_chart()) == "");
  BOOST_TEST(fault_of(document_test::large_chart(800, 12)) == "");
  Chart one = document_test::bare_chart();
  one.points = {document_test::counted(1, 2)};
  BOOST_TEST(fault_of(one) == "");
}

BOOST_AUTO_TEST_CASE(a_value_is_drawn_where_its_digits_say) {
  BOOST_TEST(chart_value(-0.04, 1).exact == "0.0");
  BOOST_TEST(chart_value(30.25, 1).exact == "30.2");
  BOOST_TEST(chart_value(30.25, 1).at == 30.25);
  BOOST_TEST(chart_value(std::numeric_limits<double>::infinity(), 1).exact == "");
  BOOST_TEST(document::figure(chart_value(12, 0), {"Starts", ""}) == "12");
  BOOST_TEST(document::figure(chart_value(12, 1), {"Margin", "C"}) == "12.0 C");
}

BOOST_AUTO_TEST_CASE(missing_words_are_faults) {
  BOOST_TEST(spoilt([](Chart& chart) { chart.key = "A b"; }) == "has no proper key");
  BOOST_TEST(spoilt([](Chart& chart) { chart.title = ""; }) == "has no title");
  BOOST_TEST(spoilt([](Chart& chart) { chart.alt = ""; }) ==
             "has no sentence that says what it shows");
  BOOST_TEST(spoilt([](Chart& chart) { chart.y.name = ""; }) ==
             "has an axis or points without a name");
  BOOST_TEST(spoilt([](Chart& chart) { chart.levels[0].label = ""; }) ==
             "has a level without a label");
  BOOST_TEST(spoilt([](Chart& chart) { chart.events[0].label = ""; }) ==
             "has an event without a label");
  BOOST_TEST(spoilt([](Chart& chart) { chart.points[2].reason = ""; }) ==
             "has a flag without a reason, or the other way");
  BOOST_TEST(spoilt([](Chart& chart) { chart.points[0].reason = "odd"; }) ==
             "has a flag without a reason, or the other way");
}

BOOST_AUTO_TEST_CASE(a_chart_without_points_is_a_fault) {
  Chart chart = document_test::bare_chart();
  BOOST_TEST(fault_of(chart) == "chart \"margin\" has no points");
}

BOOST_AUTO_TEST_CASE(digits_that_are_not_what_is_drawn_are_a_fault) {
  const auto said = [](std::string exact) {
    return "has \"" + exact + "\", which is not the number that is drawn";
  };
  const auto with_digits = [&](double at, const std::string& exact) {
    return spoilt([&](Chart& chart) { chart.levels[0].y = {at, exact}; });
  };
  BOOST_TEST(with_digits(10, "11") == said("11"));
  BOOST_TEST(with_digits(10, "") == said(""));
  BOOST_TEST(with_digits(10, "10 C") == said("10 C"));
  BOOST_TEST(with_digits(10.06, "10.0") == said("10.0"));
  BOOST_TEST(with_digits(2e12, "2000000000000") == said("2000000000000"));
  BOOST_TEST(with_digits(std::numeric_limits<double>::quiet_NaN(), "1") == said("1"));
  Chart rounded = document_test::small_chart();
  rounded.levels[0].y = {10.049, "10.0"};
  BOOST_TEST(fault_of(rounded) == "");
}

BOOST_AUTO_TEST_CASE(lines_and_bands_outside_their_points_are_faults) {
  BOOST_TEST(spoilt([](Chart& chart) { chart.lines[0].to.x = chart_value(1301, 0); }) ==
             "has a line outside its points");
  BOOST_TEST(spoilt([](Chart& chart) { std::swap(chart.lines[0].from, chart.lines[0].to); }) ==
             "has a line that runs backward");
  BOOST_TEST(spoilt([](Chart& chart) { chart.bands[0].samples[4].x = chart_value(1400, 0); }) ==
             "has a band outside its points and lines");
  BOOST_TEST(spoilt([](Chart& chart) {
               std::swap(chart.bands[0].samples[1].lower, chart.bands[0].samples[1].upper);
             }) == "has a band upside down");
  BOOST_TEST(spoilt([](Chart& chart) {
               std::swap(chart.bands[0].samples[1].x, chart.bands[0].samples[2].x);
             }) == "has a band that runs backward");
  BOOST_TEST(spoilt([](Chart& chart) { chart.bands[0].samples.resize(1); }) ==
             "has a band of less than two samples");
  Chart ahead = document_test::small_chart();
  ahead.lines.push_back({{chart_value(1300, 0), chart_value(26.3, 1)},
                         {chart_value(1500, 0), chart_value(18.3, 1)},
                         document::ChartReach::ahead});
  ahead.bands[0].samples[4].x = chart_value(1400, 0);
  BOOST_TEST(fault_of(ahead) == "");
}

BOOST_AUTO_TEST_CASE(a_document_tells_the_faults_and_the_taken_keys_of_its_charts) {
  document::Document document = document_test::with(document_test::small_chart());
  BOOST_TEST(document::faults(document).empty());
  document.blocks.push_back(
      document::Table{"margin_line", {{"a", "A"}}, {}, "Nothing stands here."});
  BOOST_TEST(document::faults(document).size() == 1U);
  document.blocks.pop_back();
  document.blocks.push_back(document_test::bare_chart());
  document::Document twice = document_test::with(document_test::small_chart());
  twice.blocks.push_back(document_test::small_chart());
  BOOST_TEST(text::join(document::faults(twice), "; ").find("has a key that is taken") !=
             std::string::npos);
}

BOOST_AUTO_TEST_CASE(the_legend_says_each_figure) {
  BOOST_TEST(legend_words(document_test::small_chart()) ==
             "readings counted: 5\n"
             "readings flagged, not stabilised: 18.0 C at 1240.0 h\n"
             "line from 30.3 C at 1200.0 h to 26.3 C at 1300.0 h\n"
             "95 % band of the line: 28.30 to 32.30 C at 1200.0 h, 24.30 to 28.30 C at 1300.0 h\n"
             "floor 10 C\n"
             "1 washed 11 March 2026, at 1245.0 h\n");
}

BOOST_AUTO_TEST_CASE(the_legend_of_a_tile_is_short) {
  Chart chart = document_test::small_chart();
  chart.size = document::ChartSize::tile;
  chart.lines.push_back(chart.lines[0]);
  BOOST_TEST(legend_words(chart) ==
             "readings counted: 5\n"
             "readings flagged, not stabilised: 1\n"
             "line\n"
             "95 % band of the line\n"
             "floor 10 C\n"
             "1 washed 11 March 2026, at 1245.0 h\n");
}

BOOST_AUTO_TEST_CASE(the_legend_groups_flags_and_orders_events) {
  Chart chart = document_test::bare_chart();
  chart.points = {document_test::counted(0, 10), document_test::flagged(1, 400, "typed wrong"),
                  document_test::flagged(2, 11, "bleed open"),
                  document_test::flagged(3, 12, "typed wrong"), document_test::counted(100, 20)};
  chart.events = {{chart_value(50, 0), "second"},
                  {chart_value(900, 0), "sold"},
                  {chart_value(20, 0), "first"},
                  {chart_value(-900, 0), "new"}};
  BOOST_TEST(legend_words(chart) ==
             "readings counted: 2\n"
             "readings flagged, typed wrong: 400.0 C at 1.0 h (higher than the chart reaches); "
             "12.0 C at 3.0 h\n"
             "readings flagged, bleed open: 11.0 C at 2.0 h\n"
             "before the chart: new, at -900 h\n"
             "1 first, at 20 h\n"
             "2 second, at 50 h\n"
             "after the chart: sold, at 900 h\n");
}

BOOST_AUTO_TEST_SUITE_END()
