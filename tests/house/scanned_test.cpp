// The scanner: what is code, what is a literal, what is a comment.

#include "house/scanned.h"

#include <boost/test/unit_test.hpp>

#include "house/source.h"

using house::scan;

BOOST_AUTO_TEST_SUITE(scanned)

BOOST_AUTO_TEST_CASE(comments_are_blank_and_lines_stay) {
  const auto code = scan("int a;  // {\n/* {\n*/ int b;").code;
  BOOST_TEST(code.find('{') == std::string::npos);
  BOOST_TEST(house::lines_of(code).size() == 3U);
  BOOST_TEST(house::lines_of(code)[2] == "   int b;");
}

BOOST_AUTO_TEST_CASE(literals_are_taken_out_with_their_lines) {
  const auto scanned = scan("f(\"one\");\ng(\"say \\\"two\\\"\", '\"', 1'000);");
  BOOST_REQUIRE(scanned.literals.size() == 2U);
  BOOST_TEST(scanned.literals[0].text == "one");
  BOOST_TEST(scanned.literals[1].text == "say \\\"two\\\"");
  BOOST_TEST(scanned.literals[1].line == 2U);
  BOOST_TEST(scanned.code.find("1'000") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(raw_strings_end_at_their_own_mark) {
  const auto scanned = scan("auto a = R\"x(one \" )\" // two)x\"; int b;");
  BOOST_REQUIRE(scanned.literals.size() == 1U);
  BOOST_TEST(scanned.literals[0].text == "one \" )\" // two");
  BOOST_TEST(scanned.code.find("int b;") != std::string::npos);
}

BOOST_AUTO_TEST_CASE(includes_are_read_outside_comments_and_are_no_literals) {
  const std::string text = "#include \"a/b.h\"\n// #include <x>\n#include <y/z.h>\n";
  const auto includes = house::includes_of(text);
  BOOST_REQUIRE(includes.size() == 2U);
  BOOST_TEST(includes[0].path == "a/b.h");
  BOOST_TEST(includes[0].is_quoted);
  BOOST_TEST(includes[1].path == "y/z.h");
  BOOST_TEST(!includes[1].is_quoted);
  BOOST_TEST(includes[1].line == 3U);
  BOOST_TEST(scan(text).literals.empty());
}

BOOST_AUTO_TEST_CASE(directives_go_with_their_continued_lines) {
  const auto code = house::without_directives("#define F(x) \\\n  { x\nint a;");
  BOOST_TEST(code.find('{') == std::string::npos);
  BOOST_TEST(code.find("int a;") != std::string::npos);
}

BOOST_AUTO_TEST_SUITE_END()
