// The tree itself, held against every rule.

#include <boost/test/unit_test.hpp>

#include "house/floors.h"
#include "house/functions.h"
#include "house/habits.h"
#include "house/lists.h"
#include "house/shape.h"
#include "house/words.h"

namespace {

const std::vector<house::Source>& tree() {
  static const auto sources = house::read_tree(TIMEWORN_TREE);
  return sources;
}

// What a rule for single files finds over all of them, or over those of code.
std::string told_of_all(house::Findings (*rule)(const house::Source&)) {
  house::Findings findings;
  for (const auto& source : tree()) house::append(findings, rule(source));
  return house::told(findings);
}

std::string told_of_code(house::Findings (*rule)(const house::Source&)) {
  house::Findings findings;
  for (const auto& source : tree()) {
    if (house::is_code(source.path)) house::append(findings, rule(source));
  }
  return house::told(findings);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(the_tree)

// If the walk went past the tree, all rules below would hold over nothing.
BOOST_AUTO_TEST_CASE(is_read_and_has_functions_in_it) {
  std::size_t functions = 0;
  for (const auto& source : tree()) {
    if (house::is_code(source.path)) functions += house::functions_of(source.text).size();
  }
  BOOST_TEST(functions > 100U);
}

BOOST_AUTO_TEST_CASE(keeps_files_functions_and_lines_small) {
  BOOST_TEST(told_of_code(&house::check_shape) == "");
}

BOOST_AUTO_TEST_CASE(opens_each_header_with_a_comment) {
  BOOST_TEST(told_of_code(&house::check_header) == "");
}

BOOST_AUTO_TEST_CASE(includes_only_downward) {
  BOOST_TEST(told_of_code(&house::check_floors) == "");
}

BOOST_AUTO_TEST_CASE(has_one_door_for_each_foreign_library) {
  BOOST_TEST(told_of_code(&house::check_doors) == "");
}

BOOST_AUTO_TEST_CASE(keeps_its_pure_floors_from_the_world) {
  BOOST_TEST(told_of_code(&house::check_purity) == "");
}

BOOST_AUTO_TEST_CASE(has_no_circle) { BOOST_TEST(house::told(house::check_circles(tree())) == ""); }

BOOST_AUTO_TEST_CASE(builds_every_file) {
  BOOST_TEST(house::told(house::check_cmake_lists(tree())) == "");
}

BOOST_AUTO_TEST_CASE(shows_and_explains_every_command) {
  BOOST_TEST(house::told(house::check_commands(tree())) == "");
}

BOOST_AUTO_TEST_CASE(proves_every_header) {
  BOOST_TEST(house::told(house::check_own_headers(tree())) == "");
}

BOOST_AUTO_TEST_CASE(says_no_banned_word) { BOOST_TEST(told_of_all(&house::check_words) == ""); }

BOOST_AUTO_TEST_CASE(leaves_nothing_unfinished) {
  BOOST_TEST(told_of_all(&house::check_leftovers) == "");
}

BOOST_AUTO_TEST_CASE(is_exact_outside_the_trend) {
  BOOST_TEST(told_of_code(&house::check_doubles) == "");
}

BOOST_AUTO_TEST_CASE(has_no_test_that_waits_or_is_switched_off) {
  BOOST_TEST(told_of_all(&house::check_tests) == "");
}

BOOST_AUTO_TEST_CASE(names_things_by_what_they_are) {
  BOOST_TEST(told_of_code(&house::check_names) == "");
}

BOOST_AUTO_TEST_SUITE_END()
