#include "document/chart/event_labels.h"

#include <boost/test/unit_test.hpp>
#include <random>

#include "document/chart/letters.h"
#include "text/random_words.h"
#include "text/unicode.h"

namespace {

using document::EventLabel;
using document::EventName;

const document::LabelRoom cells{100, 1, text::columns, 26, 4};

bool touch(const EventLabel& a, const EventLabel& b) {
  return a.row == b.row && a.left < b.right && b.left < a.right;
}

// The line of one event runs from the plot up to its own row.
bool is_run_through(const EventLabel& label, const EventLabel& line) {
  return line.row > label.row && line.x > label.left && line.x < label.right;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(event_labels)

BOOST_AUTO_TEST_CASE(words_are_shortened_at_a_whole_character) {
  BOOST_TEST(document::shortened("washed", 6) == "washed");
  BOOST_TEST(document::shortened("washed", 5) == "wash\xE2\x80\xA6");
  BOOST_TEST(document::shortened("was hed", 5) == "was\xE2\x80\xA6");
  BOOST_TEST(document::shortened("e\xCC\x81t\xC3\xA9s", 2) == "e\xCC\x81\xE2\x80\xA6");
  BOOST_TEST(document::shortened("\xE6\x97\xA5\xE6\x9C\xAC\xE6\x97\xA5", 4) ==
             "\xE6\x97\xA5\xE2\x80\xA6");
}

BOOST_AUTO_TEST_CASE(a_label_that_has_room_stands_next_to_the_plot) {
  const auto labels = document::placed_labels({{1, 10, "washed"}, {2, 40, "filter"}}, cells);
  BOOST_TEST(labels[0].words == "1 washed");
  BOOST_TEST(labels[0].left == 11.0);
  BOOST_TEST(labels[0].right == 19.0);
  BOOST_TEST(labels[0].row == 0U);
  BOOST_TEST(labels[1].row == 0U);
  BOOST_TEST(document::rows_of(labels) == 1U);
}

BOOST_AUTO_TEST_CASE(a_label_over_the_line_of_another_event_stands_above_its_label) {
  const auto labels = document::placed_labels({{1, 10, "washed again"}, {2, 14, "filter"}}, cells);
  BOOST_TEST(labels[0].row == 1U);
  BOOST_TEST(labels[1].row == 0U);
}

BOOST_AUTO_TEST_CASE(a_label_at_the_edge_is_shortened) {
  const auto labels = document::placed_labels({{1, 85, "washed with a very long story"}}, cells);
  BOOST_TEST(labels[0].words == "1 washed with\xE2\x80\xA6");
  BOOST_TEST(labels[0].right <= 100.0);
}

BOOST_AUTO_TEST_CASE(where_one_has_no_room_all_are_numbers) {
  const auto labels = document::placed_labels({{1, 10, "washed"}, {2, 99, "filter"}}, cells);
  BOOST_TEST(labels[0].words == "1");
  BOOST_TEST(labels[1].words == "2");
  BOOST_TEST(labels[1].right <= 100.0);
}

BOOST_AUTO_TEST_CASE(no_label_touches_another_or_is_run_through) {
  text_test::RandomWords random(text_test::printed_seed("labels keep apart"));
  for (int round = 0; round < 3000; ++round) {
    std::vector<EventName> names(1 + random.below(12));
    for (std::size_t i = 0; i < names.size(); ++i) {
      const auto x = static_cast<double>(random.below(680));
      names[i] = {i + 1, x, std::string(1 + random.below(40), 'w')};
    }
    const document::LabelRoom room{720, 4, document::drawn_width, 26, 4};
    const std::vector<EventLabel> labels = document::placed_labels(names, room);
    BOOST_REQUIRE_EQUAL(labels.size(), names.size());
    for (std::size_t i = 0; i < labels.size(); ++i) {
      BOOST_REQUIRE(labels[i].words.starts_with(std::to_string(i + 1)));
      BOOST_REQUIRE(labels[i].right <= 720);
      for (std::size_t k = 0; k < labels.size(); ++k) {
        if (i == k) continue;
        BOOST_REQUIRE(!touch(labels[i], labels[k]));
        BOOST_REQUIRE(!is_run_through(labels[i], labels[k]));
      }
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
