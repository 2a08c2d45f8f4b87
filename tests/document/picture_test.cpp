#include "document/chart/picture.h"

#include <boost/test/unit_test.hpp>
#include <cmath>

#include "document/as_svg.h"
#include "document/chart/layout.h"
#include "document/chart/letters.h"
#include "document/chart/shapes.h"
#include "document/chart_samples.h"
#include "document/contrast.h"
#include "document/markup_reader.h"
#include "document/render.h"
#include "text/random_words.h"

namespace {

using document_test::all_of;
using document_test::attribute;
using document_test::contrast;
using document_test::Node;

std::string svg_of(const document::Chart& chart) {
  return document::as_svg(document_test::with(chart)).value();
}

}  // namespace

BOOST_AUTO_TEST_SUITE(pictures)

// WCAG 2.1: text 1.4.6 (7 to 1), graphics 1.4.11 (3 to 1), also where a band lies behind.
BOOST_AUTO_TEST_CASE(colours_stand_out) {
  BOOST_TEST(std::round(100 * contrast("#000000", "#ffffff")) == 2100);  // the same page
  for (const std::string_view ground : {std::string_view("#ffffff"), document::band_fill}) {
    BOOST_TEST(contrast(document::ink, ground) >= 7);
    BOOST_TEST(contrast(document::accent, ground) >= 7);
    BOOST_TEST(contrast(document::edge, ground) >= 3);
  }
  BOOST_TEST(contrast(document::muted, "#ffffff") >= 7);
}

BOOST_AUTO_TEST_CASE(each_point_is_drawn_with_its_digits) {
  const document::Chart chart = document_test::small_chart();
  const Node svg = document_test::read_markup(svg_of(chart));
  std::vector<const Node*> points;
  for (const Node* group : all_of(svg, "g")) {
    if (!attribute(*group, "data-x").empty()) points.push_back(group);
  }
  BOOST_REQUIRE_EQUAL(points.size(), 6U);
  BOOST_TEST(attribute(*points[0], "data-x") == "1200.0");
  BOOST_TEST(attribute(*points[0], "data-y") == "30.5");
  BOOST_TEST(attribute(*points[0], "data-state") == "counted");
  BOOST_TEST(all_of(*points[0], "circle").size() == 1U);
  BOOST_TEST(attribute(*points[5], "data-state") == "flagged");
  BOOST_TEST(all_of(*points[5], "polygon").size() == 1U);
  BOOST_TEST(document_test::text_in(*points[5]) == "18.0 C at 1240.0 h, not stabilised");
}

// Worked by hand from the frame: x over 1200 to 1300 with a fiftieth on either side, y from 5
// to 35.
BOOST_AUTO_TEST_CASE(a_point_stands_where_the_scale_says) {
  const document::Chart chart = document_test::small_chart();
  const document::Layout layout = document::layout_of(chart);
  const document::Box& plot = layout.frame.plot;
  const std::string svg = document::picture(chart);
  const std::string x = document::length(plot.left + (plot.right - plot.left) * 52 / 104);
  const std::string y = document::length(plot.top + (plot.bottom - plot.top) * (35 - 28.5) / 30);
  BOOST_TEST(svg.find("<circle cx=\"" + x + "\" cy=\"" + y + "\"") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(a_picture_is_told_to_those_who_do_not_see_it) {
  const Node svg = document_test::read_markup(document::picture(document_test::small_chart()));
  BOOST_TEST(attribute(svg, "role") == "img");
  BOOST_TEST(attribute(svg, "aria-labelledby") == "chart-margin-title chart-margin-desc");
  BOOST_TEST(attribute(svg.children[0], "id") == "chart-margin-title");
  BOOST_TEST(svg.children[0].name == "title");
  BOOST_TEST(document_test::text_in(svg.children[1]) == document_test::small_chart().alt);
}

BOOST_AUTO_TEST_CASE(a_file_holds_all_its_words_and_nothing_from_outside) {
  const std::string file = svg_of(document_test::small_chart());
  const Node svg = document_test::read_markup(file);
  std::string words;
  for (const Node* text : all_of(svg, "text")) words += document_test::text_in(*text) + "\n";
  for (const char* wanted : {"Temperature margin of engine E-1001\n", "readings counted: 5\n",
                             "floor 10 C\n", "1 washed 11 March 2026\n", "Engine hours, h\n"}) {
    BOOST_TEST(words.find(wanted) != std::string::npos, wanted);
  }
  for (const char* outside : {"script", "href", "url(", "@import", "<image", "<style"}) {
    BOOST_TEST(file.find(outside) == std::string::npos, outside);
  }
  BOOST_TEST(file.find("http") == file.find("http://www.w3.org/2000/svg\""));
  BOOST_TEST(file.rfind("http") == file.find("http"));
  BOOST_TEST(file == svg_of(document_test::small_chart()));
}

// Every mark and every letter, by the widths that letters.h gives, lies on the paper.
BOOST_AUTO_TEST_CASE(nothing_is_drawn_outside_its_layout) {
  document::Chart crowded = document_test::large_chart(60, 11);
  crowded.levels.push_back({document_test::chart_value(10.5, 1), "a level with a long label"});
  crowded.y.name = std::string(200, 'W');
  document::Chart tile = document_test::large_chart(60, 3);
  tile.size = document::ChartSize::tile;
  for (const document::Chart& chart : {crowded, tile, document_test::small_chart()}) {
    const document::Layout layout = document::layout_of(chart);
    const Node svg = document_test::read_markup(document::picture(chart));
    for (const Node* text : all_of(svg, "text")) {
      const double x = std::stod(attribute(*text, "x"));
      const double y = std::stod(attribute(*text, "y"));
      const auto wide = static_cast<double>(document::drawn_width(document_test::text_in(*text)));
      const std::string anchor = attribute(*text, "text-anchor");
      const double left = anchor == "end" ? x - wide : anchor == "middle" ? x - wide / 2 : x;
      BOOST_TEST(left >= -1);
      BOOST_TEST(left + wide <= layout.width + 1, document_test::text_in(*text));
      BOOST_TEST(y >= document::letter_height);
      BOOST_TEST(y <= layout.height);
    }
  }
}

BOOST_AUTO_TEST_CASE(several_charts_are_stacked_and_tiles_stand_in_rows) {
  document::Document document = document_test::with(document_test::small_chart());
  for (const char* key : {"a", "b", "c", "d"}) {
    document::Chart tile = document_test::small_chart();
    tile.key = key;
    tile.size = document::ChartSize::tile;
    document.blocks.push_back(tile);
  }
  const Node svg = document_test::read_markup(document::as_svg(document).value());
  std::vector<std::string> places;
  for (const Node& child : svg.children) {
    if (child.name == "g") places.push_back(attribute(child, "transform"));
  }
  BOOST_REQUIRE_EQUAL(places.size(), 5U);
  BOOST_TEST(places[0] == "translate(20,20)");
  BOOST_TEST(places[1].starts_with("translate(20,"));
  BOOST_TEST(places[2].starts_with("translate(276,"));
  BOOST_TEST(places[3].starts_with("translate(532,"));
  BOOST_TEST(places[4].starts_with("translate(20,"));
  BOOST_TEST(places[1].substr(13) == places[2].substr(14));
  BOOST_TEST(places[1] != places[4]);
}

BOOST_AUTO_TEST_CASE(a_document_without_a_chart_has_no_picture) {
  using document::Format;
  const document::Document none{"T", {}, {document::Paragraph{"P"}}};
  BOOST_TEST(!document::as_svg(none));
  BOOST_TEST((document::unrenderable(none, Format::svg) == document::Unrenderable::no_chart));
  BOOST_TEST(!document::unrenderable(none, Format::html));
  BOOST_TEST(
      !document::unrenderable(document_test::with(document_test::small_chart()), Format::svg));
  BOOST_CHECK_THROW(document::render(none, Format::svg, 80), std::logic_error);
}

BOOST_AUTO_TEST_CASE(hostile_words_stay_words) {
  text_test::RandomWords random(text_test::printed_seed("hostile words in pictures"));
  for (int round = 0; round < 200; ++round) {
    document::Chart chart = document_test::small_chart();
    chart.title = "</title><script>" + random.words(30);
    chart.alt = "\"'&" + random.words(30);
    chart.x = {random.words(20), random.words(8)};
    chart.events[0].label = random.words(60);
    chart.levels[0].label = random.words(20);
    chart.points[2].reason = "<" + random.words(20);
    const std::string file = svg_of(chart);
    const Node svg = document_test::read_markup(file);
    BOOST_REQUIRE(all_of(svg, "script").empty());
    BOOST_REQUIRE(file.find("\xEF\xBF\xBE") == std::string::npos);
    BOOST_REQUIRE(file.find("\xEF\xBF\xBF") == std::string::npos);
  }
}

BOOST_AUTO_TEST_SUITE_END()
