// Includes: downward, through doors, and never in a circle.

#include "house/floors.h"

#include <boost/test/unit_test.hpp>

using house::check_circles;
using house::check_doors;
using house::check_floors;
using house::check_purity;

BOOST_AUTO_TEST_SUITE(floors)

BOOST_AUTO_TEST_CASE(an_include_upward_is_told) {
  BOOST_TEST(check_floors({"src/reckon/a.cpp", "#include \"logbook/fact.h\"\n"}).empty());
  BOOST_TEST(check_floors({"src/reckon/a.cpp", "#include \"reckon/trend/b.h\"\n"}).empty());
  BOOST_TEST(check_floors({"src/logbook/a.h", "#include \"reckon/due.h\"\n"}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(an_include_sideways_is_told) {
  BOOST_TEST(check_floors({"src/reckon/a.cpp", "#include \"sentence/b.h\"\n"}).size() == 1U);
  BOOST_TEST(check_floors({"src/text/a.cpp", "#include \"quantity/b.h\"\n"}).size() == 1U);
  BOOST_TEST(check_floors({"src/report/a.cpp", "#include \"store/book.h\"\n"}).size() == 1U);
  BOOST_TEST(check_floors({"src/store/a.cpp", "#include \"reckon/b.h\"\n"}).size() == 1U);
  BOOST_TEST(check_floors({"src/words/a.cpp", "#include \"document/b.h\"\n"}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_folder_without_a_row_is_told) {
  BOOST_TEST(check_floors({"src/misc/a.cpp", "int a;\n"}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_foreign_library_outside_its_door_is_told) {
  BOOST_TEST(check_doors({"src/store/sqlite.cpp", "#include <sqlite3.h>\n"}).empty());
  BOOST_TEST(check_doors({"src/store/rows.cpp", "#include <sqlite3.h>\n"}).size() == 1U);
  BOOST_TEST(check_doors({"src/store/sqlite.h", "#include <sqlite3.h>\n"}).size() == 1U);
  BOOST_TEST(check_doors({"src/command/say.cpp", "#include <CLI/CLI.hpp>\n"}).size() == 1U);
  BOOST_TEST(check_doors({"src/quantity/hours.h", "#include <date/date.h>\n"}).size() == 1U);
  BOOST_TEST(check_doors({"src/quantity/calendar.cpp", "#include <date/date.h>\n"}).empty());
  BOOST_TEST(check_doors({"src/words/a.cpp", "#include <boost/test/unit_test.hpp>\n"}).size() ==
             1U);
}

BOOST_AUTO_TEST_CASE(a_pure_floor_that_touches_the_world_is_told) {
  BOOST_TEST(check_purity({"src/reckon/a.cpp", "#include <vector>\n"}).empty());
  BOOST_TEST(check_purity({"src/reckon/a.cpp", "#include <ctime>\n"}).size() == 1U);
  BOOST_TEST(check_purity({"src/words/a.cpp", "#include <fstream>\n"}).size() == 1U);
  BOOST_TEST(check_purity({"src/command/a.cpp", "#include <iostream>\n"}).empty());
}

BOOST_AUTO_TEST_CASE(a_circle_of_units_is_told) {
  // A header and its source file are one unit, so a circle through either is seen.
  const std::vector<house::Source> sources = {{"src/a/one.h", "#include \"a/two.h\"\n"},
                                              {"src/a/two.cpp", "#include \"a/three.h\"\n"},
                                              {"src/a/three.h", "#include \"a/one.h\"\n"},
                                              {"src/a/four.h", "#include \"a/one.h\"\n"}};
  BOOST_TEST(check_circles(sources).size() == 3U);
  BOOST_TEST(check_circles({sources[0], sources[1], sources[3]}).empty());
}

BOOST_AUTO_TEST_CASE(a_second_door_is_told) {
  const house::Source first = {"src/reckon/trend/a.cpp", "#include <boost/math/a.hpp>\n"};
  const house::Source second = {"src/reckon/trend/b.cpp", "#include <boost/math/b.hpp>\n"};
  BOOST_TEST(check_circles({first}).empty());
  BOOST_TEST(check_circles({first, second}).size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_source_that_does_not_begin_with_its_own_header_is_told) {
  const house::Source header{"src/a/b.h", "#pragma once\n"};
  const house::Source good{"src/a/b.cpp", "#include \"a/b.h\"\n\n#include <map>\n"};
  const house::Source bad{"src/a/b.cpp", "#include <map>\n\n#include \"a/b.h\"\n"};
  BOOST_TEST(house::check_own_headers({header, good}).empty());
  BOOST_TEST(house::check_own_headers({header, bad}).size() == 1U);
  BOOST_TEST(house::check_own_headers({bad}).empty());  // there is no header of its own
}

BOOST_AUTO_TEST_SUITE_END()
