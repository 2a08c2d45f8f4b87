// Due points against a second way of reckoning them: a walk through the history, tenth of an hour
// by tenth. Seeds are printed.

#include <boost/test/unit_test.hpp>
#include <random>

#include "definitions.h"

using namespace definitions;

BOOST_AUTO_TEST_SUITE(due_walk)

namespace {

const logbook::Aircraft kit = support::aircraft("ZZ-KIT");

constexpr std::int64_t seconds_of_a_tenth = 360;

std::string tenths(std::int64_t number) {
  return quantity::say(quantity::Hours::of(number * seconds_of_a_tenth));
}

struct Story {
  support::Book book;
  quantity::Day day = support::day("2025-01-01");
  std::int64_t left = 0;  // tenths, walked
  std::string today() const { return quantity::say(day); }
};

enum class Policy { from_done, excess_counts, from_due };

Story begun(Policy policy, std::int64_t interval) {
  Story story;
  story.book.say(story.today(), support::forward(kit, "1000.0"));
  logbook::Task check = task("check", kit, {hours(tenths(interval))});
  check.excess_counts = policy == Policy::excess_counts;
  if (policy == Policy::from_due) check.next_from = logbook::NextFrom::due;
  story.book.say(story.today(), check);
  story.book.say(story.today(), support::done("check", kit));
  story.left = interval;
  return story;
}

// Each tenth that is flown takes one from what is left; a done gives a new interval, of which what
// was flown too much (or, from due, what was still left) is taken off (or put on).
void walk(Story& story, std::int64_t flown) {
  story.day = quantity::day_after(story.day);
  story.book.say(story.today(), support::flew(kit, tenths(flown)));
  for (std::int64_t tenth = 0; tenth < flown; ++tenth) --story.left;
}

void walk_done(Story& story, Policy policy, std::int64_t interval) {
  story.day = quantity::day_after(story.day);
  story.book.say(story.today(), support::done("check", kit));
  std::int64_t carried = policy == Policy::from_done ? 0 : story.left;
  if (policy == Policy::excess_counts && carried > 0) carried = 0;
  story.left = interval + carried;
}

void try_policy(Policy policy, std::mt19937& random) {
  std::uniform_int_distribution<std::int64_t> any_interval(1, 400);
  std::uniform_int_distribution<std::int64_t> any_flight(1, 60);
  std::uniform_int_distribution<int> any_step(0, 5);
  const std::int64_t interval = any_interval(random);
  Story story = begun(policy, interval);
  for (int step = 0; step < 25; ++step) {
    if (any_step(random) == 0) {
      walk_done(story, policy, interval);
    } else {
      walk(story, any_flight(random));
    }
  }
  const AsOf asked(story.book, story.today());
  const reckon::Item item = due_item(asked, kit, "task:check");
  const std::int64_t expected = story.left * seconds_of_a_tenth * 1000;
  BOOST_TEST(governing(item).left->raw() == expected);
  BOOST_TEST((item.state == reckon::State::over) == (story.left < 0));
}

}  // namespace

BOOST_AUTO_TEST_CASE(a_walk_by_tenths_of_an_hour_leaves_the_same) {
  const unsigned seed = std::random_device{}();
  BOOST_TEST_MESSAGE("seed " << seed);
  std::mt19937 random(seed);
  for (int round = 0; round < 60; ++round) {
    BOOST_TEST_CONTEXT("seed " << seed << " round " << round) {
      try_policy(Policy::from_done, random);
      try_policy(Policy::excess_counts, random);
      try_policy(Policy::from_due, random);
    }
  }
}

BOOST_AUTO_TEST_SUITE_END()
