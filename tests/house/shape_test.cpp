// The limits of size: at the limit all is well, one more is told.

#include "house/shape.h"

#include <boost/test/unit_test.hpp>

using house::check_header;
using house::check_shape;
using house::Source;

namespace {

std::string repeated(const std::string& text, std::size_t count) {
  std::string result;
  for (std::size_t i = 0; i < count; ++i) result += text;
  return result;
}

std::size_t count_of(const std::string& text) { return check_shape({"src/a/a.cpp", text}).size(); }

}  // namespace

BOOST_AUTO_TEST_SUITE(shape)

BOOST_AUTO_TEST_CASE(a_file_too_long_is_told) {
  BOOST_TEST(count_of(repeated("int a;\n", 400)) == 0U);
  BOOST_TEST(count_of(repeated("int a;\n", 401)) == 1U);
}

BOOST_AUTO_TEST_CASE(a_line_too_wide_is_told_in_columns_and_not_bytes) {
  BOOST_TEST(count_of("// " + repeated("x", 97) + "\n") == 0U);
  BOOST_TEST(count_of("// " + repeated("\u00e9", 97) + "\n") == 0U);
  BOOST_TEST(count_of("// " + repeated("x", 98) + "\n") == 1U);
}

BOOST_AUTO_TEST_CASE(a_function_too_long_is_told) {
  BOOST_TEST(count_of("void f() {\n" + repeated("  g();\n", 48) + "}\n") == 0U);
  const auto findings =
      check_shape({"src/a/a.cpp", "\nvoid f() {\n" + repeated("  g();\n", 49) + "}\n"});
  BOOST_REQUIRE(findings.size() == 1U);
  BOOST_TEST(findings[0].line == 2U);
}

BOOST_AUTO_TEST_CASE(too_many_parameters_are_told) {
  BOOST_TEST(count_of("void f(int a, int b, int c, int d) {}\n") == 0U);
  BOOST_TEST(count_of("void f(int a, int b, int c, int d, int e) {}\n") == 1U);
}

BOOST_AUTO_TEST_CASE(too_deep_nesting_is_told) {
  BOOST_TEST(count_of("void f() { if (a) { for (b) { while (c) { d(); } } } }\n") == 0U);
  BOOST_TEST(count_of("void f() { if (a) { for (b) { while (c) { if (d) { e(); } } } } }\n") == 1U);
}

BOOST_AUTO_TEST_CASE(a_header_without_its_opening_is_told) {
  BOOST_TEST(check_header({"src/a/a.h", "// a/a.h: what lives here.\n#pragma once\n"}).empty());
  BOOST_TEST(check_header({"src/a/a.h", "#pragma once\n\n// What lives here.\n"}).empty());
  BOOST_TEST(check_header({"src/a/a.h", "// a/a.h: what lives here.\n"}).size() == 1U);
  BOOST_TEST(check_header({"src/a/a.h", "#pragma once\n"}).size() == 1U);
  BOOST_TEST(check_header({"src/a/a.cpp", "int a;\n"}).empty());
}

BOOST_AUTO_TEST_SUITE_END()
