#include "text/unicode.h"

#include <locale.h>
#include <wchar.h>

#include <boost/test/unit_test.hpp>

#include "text/random_words.h"

namespace {

using text_test::utf8;

std::string joined(const std::vector<std::string_view>& pieces) {
  std::string result;
  for (const std::string_view piece : pieces) result += piece;
  return result;
}

// glibc's own table, the second way to a width; it knows no clusters.
int width_by_c_library(std::string_view words) {
  const locale_t place = newlocale(LC_CTYPE_MASK, "C.UTF-8", nullptr);
  const locale_t before = uselocale(place);
  std::wstring wide;
  for (const text::Character& character : text::characters(words)) {
    wide += static_cast<wchar_t>(*character.code);
  }
  const int result = wcswidth(wide.c_str(), wide.size());
  uselocale(before);
  freelocale(place);
  return result;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(unicode)

// RFC 3629 sections 3, 4 and 10: the ends of each range of well-formed sequences.
BOOST_AUTO_TEST_CASE(well_formed_sequences_of_every_length_are_valid) {
  for (const char* good :
       {"", "\x7F", "\xC2\x80", "\xDF\xBF", "\xE0\xA0\x80", "\xED\x9F\xBF", "\xEE\x80\x80",
        "\xEF\xBF\xBF", "\xF0\x90\x80\x80", "\xF4\x8F\xBF\xBF"}) {
    BOOST_TEST(text::is_valid_utf8(good), good);
  }
  BOOST_TEST(text::is_valid_utf8(std::string_view("a\0b", 3)));
}

BOOST_AUTO_TEST_CASE(overlong_forms_surrogates_and_broken_sequences_are_not_valid) {
  for (const char* bad : {"\x80", "\xBF", "\xC0\x80", "\xC1\xBF", "\xE0\x9F\xBF", "\xED\xA0\x80",
                          "\xED\xBF\xBF", "\xF0\x8F\xBF\xBF", "\xF4\x90\x80\x80",
                          "\xF5\x80\x80\x80", "\xFE", "\xFF", "\xC2", "\xE2\x82", "\xF0\x9F\x9A",
                          "a\xC2"
                          "b",
                          "\x9B[2J"}) {
    BOOST_TEST(!text::is_valid_utf8(bad), bad);
  }
}

BOOST_AUTO_TEST_CASE(every_code_point_is_valid_except_the_surrogates) {
  std::size_t wrong = 0;
  for (char32_t code = 0; code < 0x110000; ++code) {
    const bool is_surrogate = code >= 0xD800 && code <= 0xDFFF;
    const std::string bytes = utf8(code);
    if (text::is_valid_utf8(bytes) == is_surrogate) ++wrong;
    if (!is_surrogate && text::first_character(bytes).code != code) ++wrong;
  }
  BOOST_TEST(wrong == 0U);
}

// Unicode Standard Annex 15, figures 3 to 5 and the composition exclusions of its section 5.
BOOST_AUTO_TEST_CASE(form_c_composes_as_the_annex_shows) {
  BOOST_TEST(text::nfc("A\xCC\x8A") == "\xC3\x85");     // A, ring -> A with ring
  BOOST_TEST(text::nfc("\xE2\x84\xAB") == "\xC3\x85");  // Angstrom sign
  BOOST_TEST(text::nfc("\xE2\x84\xA6") == "\xCE\xA9");  // Ohm sign -> Omega
  BOOST_TEST(text::nfc("\xE1\xB8\x8A\xCC\xA3") == "\xE1\xB8\x8C\xCC\x87");  // D: dots reordered
  BOOST_TEST(text::nfc("\xE1\xBA\x9B\xCC\xA3") == "\xE1\xBA\x9B\xCC\xA3");  // long s stays
  BOOST_TEST(text::nfc("\xEF\xAC\x81") == "\xEF\xAC\x81");                  // fi ligature stays
  BOOST_TEST(text::nfc("\xE0\xA5\x98") == "\xE0\xA4\x95\xE0\xA4\xBC");      // an exclusion
  BOOST_TEST(text::nfc("ZZ-KIT 1.7 h") == "ZZ-KIT 1.7 h");
  BOOST_TEST(text::nfc("e\xCC\x81\xFF") == "e\xCC\x81\xFF");  // not UTF-8: as it was
}

BOOST_AUTO_TEST_CASE(form_c_keeps_a_nul_and_is_reached_in_one_step) {
  const std::string with_nul("e\xCC\x81\0x", 5);
  BOOST_TEST(text::nfc(with_nul) == std::string("\xC3\xA9\0x", 4));
  text_test::RandomWords random(text_test::printed_seed("form C is reached in one step"));
  for (int round = 0; round < 5000; ++round) {
    const std::string once = text::nfc(random.words(12));
    BOOST_REQUIRE_EQUAL(text::nfc(once), once);
  }
}

// Unicode's CaseFolding.txt, statuses C and F.
BOOST_AUTO_TEST_CASE(folding_forgets_case_and_nothing_else) {
  BOOST_TEST(text::fold("ZZ-Kit 5") == "zz-kit 5");
  BOOST_TEST(text::fold("STRASSE") == text::fold("Stra\xC3\x9F"
                                                 "e"));
  BOOST_TEST(text::fold("\xC3\x89") == "\xC3\xA9");
  BOOST_TEST(text::fold("E\xCC\x81") == "\xC3\xA9");
  BOOST_TEST(text::fold("\xCE\xA3") == text::fold("\xCF\x82"));  // capital and final sigma
  BOOST_TEST(text::fold("e") != text::fold("\xC3\xA9"));
}

BOOST_AUTO_TEST_CASE(folding_twice_is_folding_once_for_every_code_point) {
  std::size_t wrong = 0;
  for (char32_t code = 0; code < 0x110000; ++code) {
    if (code >= 0xD800 && code <= 0xDFFF) continue;
    const std::string once = text::fold(utf8(code));
    if (text::fold(once) != once) ++wrong;
  }
  BOOST_TEST(wrong == 0U);
}

// The expected columns of the comparison of width libraries (Unicode Annex 11 and 29).
BOOST_AUTO_TEST_CASE(columns_are_those_of_a_terminal) {
  BOOST_TEST(text::columns("") == 0U);
  BOOST_TEST(text::columns("ZZ-KIT 1.7 h") == 12U);
  BOOST_TEST(text::columns("\xC3\xA9") == 1U);   // e acute, one character
  BOOST_TEST(text::columns("e\xCC\x81") == 1U);  // e acute, two characters
  BOOST_TEST(text::columns("24 \xC2\xB0"
                           "C") == 5U);                         // degree sign
  BOOST_TEST(text::columns("\xE2\x80\x93\xE2\x80\x94") == 2U);  // two dashes
  BOOST_TEST(text::columns("\xE6\x97\xA5\xE6\x9C\xAC") == 4U);  // two ideographs
  BOOST_TEST(text::columns("\xE2\x94\x80\xE2\x94\xBC") == 2U);  // box drawing
  BOOST_TEST(text::columns("\xF0\x9F\x9A\x80") == 2U);          // rocket
  BOOST_TEST(text::columns("a\xE2\x80\x8B"
                           "b") == 2U);  // zero-width space between
  BOOST_TEST(text::columns("\xF0\x9F\x91\xA8\xE2\x80\x8D\xF0\x9F\x91\xA9\xE2\x80\x8D"
                           "\xF0\x9F\x91\xA7") == 2U);                  // a joined family
  BOOST_TEST(text::columns("\xF0\x9F\x87\xA8\xF0\x9F\x87\xAD") == 2U);  // a flag of two letters
  BOOST_TEST(text::columns("a\xFF") == 2U);                             // a byte that is not UTF-8
}

BOOST_AUTO_TEST_CASE(columns_agree_with_the_c_library_where_nothing_is_joined) {
  for (const char* words :
       {"ZZ-KIT", "\xC3\xA9", "e\xCC\x81",
        "24 \xC2\xB0"
        "C",
        "\xE2\x80\x93", "\xE6\x97\xA5\xE6\x9C\xAC", "\xE2\x94\x80", "\xF0\x9F\x9A\x80",
        "a\xE2\x80\x8B"
        "b",
        "\xED\x95\x9C", "\xEF\xBC\xA1"}) {
    BOOST_TEST(text::columns(words) == static_cast<std::size_t>(width_by_c_library(words)), words);
  }
}

// Unicode Standard Annex 29, table 1a and rules GB3 to GB13.
BOOST_AUTO_TEST_CASE(clusters_are_what_a_reader_sees_as_one) {
  BOOST_TEST(text::clusters("abc").size() == 3U);
  BOOST_TEST(text::clusters("e\xCC\x81x").size() == 2U);
  BOOST_TEST(text::clusters("\r\n").size() == 1U);
  BOOST_TEST(text::clusters("\xE1\x84\x80\xE1\x85\xA1\xE1\x86\xA8").size() == 1U);  // Hangul
  BOOST_TEST(text::clusters("\xF0\x9F\x87\xA8\xF0\x9F\x87\xAD\xF0\x9F\x87\xA8").size() == 2U);
  BOOST_TEST(text::clusters("e\xFF\xCC\x81").size() == 3U);
}

BOOST_AUTO_TEST_CASE(clusters_and_characters_lose_nothing_of_any_bytes) {
  text_test::RandomWords random(text_test::printed_seed("nothing is lost"));
  for (int round = 0; round < 5000; ++round) {
    const std::vector<std::uint8_t> bytes = random.bytes(12);
    const std::string words = random.words(8) + std::string(bytes.begin(), bytes.end());
    BOOST_REQUIRE_EQUAL(joined(text::clusters(words)), words);
    std::string characters;
    for (const text::Character& each : text::characters(words)) characters += each.bytes;
    BOOST_REQUIRE_EQUAL(characters, words);
  }
}

BOOST_AUTO_TEST_SUITE_END()
