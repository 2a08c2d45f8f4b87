#include "document/json.h"

#include <boost/test/unit_test.hpp>
#include <limits>

#include "document/as_json.h"
#include "document/samples.h"
#include "text/random_words.h"
#include "text/unicode.h"
#include "text/visible.h"

namespace {

using document::Json;

int number_from(std::string_view four) {
  return static_cast<int>(std::stoul(std::string(four), nullptr, 16));
}

// A reader of JSON strings by the grammar of RFC 8259 section 7, nothing shared with the writer.
std::string read_string(std::string_view written) {
  BOOST_REQUIRE(written.size() >= 2 && written.front() == '"' && written.back() == '"');
  written = written.substr(1, written.size() - 2);
  std::string result;
  for (std::size_t i = 0; i < written.size(); ++i) {
    const char byte = written[i];
    BOOST_REQUIRE(static_cast<unsigned char>(byte) >= 0x20 && byte != '"');
    if (byte != '\\') {
      result += byte;
      continue;
    }
    constexpr std::string_view names = "\"\\/bfnrt";
    constexpr std::string_view meant = "\"\\/\b\f\n\r\t";
    const char name = written[++i];
    if (name == 'u') {
      result += text_test::utf8(static_cast<char32_t>(number_from(written.substr(i + 1, 4))));
      i += 4;
    } else {
      BOOST_REQUIRE(names.find(name) != names.npos);
      result += meant[names.find(name)];
    }
  }
  return result;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(json)

// RFC 8259 section 7: the two-character escapes, and \u for the other controls.
BOOST_AUTO_TEST_CASE(strings_are_escaped_as_the_standard_says) {
  BOOST_TEST(document::json_string("") == R"("")");
  BOOST_TEST(document::json_string("a\"b\\c/d") == R"("a\"b\\c/d")");
  BOOST_TEST(document::json_string("\b\f\n\r\t") == R"("\b\f\n\r\t")");
  BOOST_TEST(document::json_string(std::string_view("\0\x1B\x1F", 3)) == R"("\u0000\u001b\u001f")");
  BOOST_TEST(document::json_string("caf\xC3\xA9 \xF0\x9F\x9A\x80") ==
             "\"caf\xC3\xA9 \xF0\x9F\x9A\x80\"");
}

// They are allowed in JSON, but they act on a terminal.
BOOST_AUTO_TEST_CASE(controls_beyond_ascii_are_escaped_too) {
  BOOST_TEST(document::json_string("\x7F\xC2\x9B\xE2\x80\xAE") == R"("\u007f\u009b\u202e")");
}

BOOST_AUTO_TEST_CASE(a_byte_that_is_not_utf8_becomes_the_replacement_character) {
  BOOST_TEST(document::json_string("a\x9B") == "\"a\xEF\xBF\xBD\"");
}

BOOST_AUTO_TEST_CASE(strings_come_back_and_hold_no_control) {
  text_test::RandomWords random(text_test::printed_seed("JSON strings come back"));
  for (int round = 0; round < 10000; ++round) {
    const std::string words = random.words(20);
    const std::string written = document::json_string(words);
    BOOST_REQUIRE(!text::has_control(written));
    BOOST_REQUIRE_EQUAL(read_string(written), words);
  }
}

BOOST_AUTO_TEST_CASE(values_are_written_as_their_kind) {
  BOOST_TEST(Json().in_one_line() == "null");
  BOOST_TEST(Json(true).in_one_line() == "true");
  BOOST_TEST(Json(false).in_one_line() == "false");
  BOOST_TEST(Json(0).in_one_line() == "0");
  BOOST_TEST(Json(-720).in_one_line() == "-720");
  BOOST_TEST(Json("true").in_one_line() == "\"true\"");
  BOOST_TEST(Json::array().in_one_line() == "[]");
  BOOST_TEST(Json::object().in_lines() == "{}");
  static_assert(!std::is_constructible_v<Json, double>);
  static_assert(!std::is_constructible_v<Json, char>);
  static_assert(!std::is_constructible_v<Json, int*>);
}

// RFC 7493 section 2.2: whole numbers are safe up to 2^53 - 1 either way.
BOOST_AUTO_TEST_CASE(numbers_that_readers_would_round_are_strings) {
  BOOST_TEST(Json(std::int64_t{9007199254740991}).in_one_line() == "9007199254740991");
  BOOST_TEST(Json(std::int64_t{-9007199254740991}).in_one_line() == "-9007199254740991");
  BOOST_TEST(Json(std::int64_t{9007199254740992}).in_one_line() == "\"9007199254740992\"");
  BOOST_TEST(Json(std::numeric_limits<std::int64_t>::min()).in_one_line() ==
             "\"-9223372036854775808\"");
}

BOOST_AUTO_TEST_CASE(names_keep_their_order_and_stay_unique) {
  Json object = Json::object();
  object.set("z", 1).set("a", Json::array().add("x").add(2)).set("m", Json());
  BOOST_TEST(object.in_one_line() == R"({"z":1,"a":["x",2],"m":null})");
  object.set("a", "new");
  BOOST_TEST(object.in_one_line() == R"({"z":1,"a":"new","m":null})");
  BOOST_TEST(Json::object().set("a\nb", 1).in_one_line() == R"({"a\nb":1})");
}

BOOST_AUTO_TEST_CASE(lines_are_indented_by_two) {
  const Json value = Json::object().set("a", Json::array().add(1).add(Json::object())).set("b", 2);
  BOOST_TEST(value.in_lines() == "{\n  \"a\": [\n    1,\n    {}\n  ],\n  \"b\": 2\n}");
}

BOOST_AUTO_TEST_CASE(a_document_keeps_all_it_says) {
  document::Document document{"T", {"H"}, {document::Heading{"N"}, document::Paragraph{"P"}}};
  document::Table table{"due", {{"left", "Left", document::Align::right}}, {}, "None."};
  table.rows = {{{"-0.2 h", "-720", "s", document::State::over}}};
  document.blocks.push_back(table);
  document.blocks.push_back(document::Note{"K"});
  document.blocks.push_back(document::SignatureBlock{"S", {"Name"}});
  BOOST_TEST(document::as_json(document).in_one_line() ==
             R"({"title":"T","head":["H"],"blocks":[{"kind":"heading","text":"N"},)"
             R"({"kind":"paragraph","text":"P"},{"kind":"table","key":"due","columns":)"
             R"([{"key":"left","name":"Left","align":"right"}],"rows":[{"left":{"shown":"-0.2 h",)"
             R"("exact":"-720","unit":"s","state":"over"}}],"if_empty":"None."},)"
             R"({"kind":"note","text":"K"},{"kind":"signature","statement":"S",)"
             R"("labels":["Name"]}]})");
}

BOOST_AUTO_TEST_SUITE_END()
