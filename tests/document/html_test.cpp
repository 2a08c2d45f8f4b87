#include <boost/test/unit_test.hpp>

#include "document/as_html.h"
#include "document/chart_samples.h"
#include "document/contrast.h"
#include "document/markup.h"
#include "document/markup_reader.h"
#include "document/render.h"
#include "document/samples.h"
#include "text/pieces.h"
#include "text/random_words.h"
#include "text/visible.h"

namespace {

using document_test::all_of;
using document_test::attribute;
using document_test::Node;
using document_test::text_in;

Node page_of(const document::Document& document) {
  return document_test::read_markup(document::as_html(document));
}

std::vector<std::string> texts(const Node& page, std::string_view name) {
  std::vector<std::string> result;
  for (const Node* node : all_of(page, name)) result.push_back(text_in(*node));
  return result;
}

using Lines = std::vector<std::string>;

}  // namespace

BOOST_AUTO_TEST_SUITE(html)

// XML 1.0 section 2.4 and the attribute rules of HTML: five characters have a meaning.
BOOST_AUTO_TEST_CASE(characters_with_a_meaning_are_escaped) {
  BOOST_TEST(document::escaped("a<b>&\"c\"'d'") == "a&lt;b&gt;&amp;&quot;c&quot;&#39;d&#39;");
  BOOST_TEST(document::escaped("caf\xC3\xA9") == "caf\xC3\xA9");
  BOOST_TEST(document::escaped("a\nb\xE2\x80\xAE\x9B") ==
             "a&lt;U+000A&gt;b&lt;U+202E&gt;&lt;byte 9B&gt;");
  BOOST_TEST(document::escaped("\xEF\xBF\xBE") == "&lt;U+FFFE&gt;");
}

BOOST_AUTO_TEST_CASE(only_long_words_may_break) {
  const std::string longest(24, 'a');
  BOOST_TEST(document::escaped_text("b " + longest) == "b " + longest);
  BOOST_TEST(document::escaped_text("b " + longest + "a c") ==
             "b <span class=\"long\">" + longest + "a</span> c");
}

BOOST_AUTO_TEST_CASE(a_page_says_everything_in_order) {
  const Node page = page_of(document_test::due_list());
  BOOST_TEST((texts(page, "h1") == Lines{"Due list of ZZ-KIT"}));
  BOOST_TEST((texts(page, "h2") == Lines{"Next"}));
  BOOST_TEST((texts(page, "title") == Lines{"Due list of ZZ-KIT"}));
  BOOST_TEST((texts(page, "p") == Lines{"As of 2026-03-04.", "K7QXM-130",
                                        "Note: One base was not heard.", "Name:", "Certificate:"}));
  BOOST_TEST((texts(page, "th") == Lines{"Item", "Left", "State"}));
  BOOST_TEST((texts(page, "blockquote") == Lines{"\"I have seen this list.\""}));
}

BOOST_AUTO_TEST_CASE(a_cell_carries_what_machines_want) {
  const Node page = page_of(document_test::due_list());
  const Node& cell = *all_of(page, "td")[7];
  BOOST_TEST(text_in(cell) == "-0.2 h (over)");
  BOOST_TEST(attribute(cell, "data-column") == "left");
  BOOST_TEST(attribute(cell, "data-exact") == "-720");
  BOOST_TEST(attribute(cell, "data-unit") == "s");
  BOOST_TEST(attribute(cell, "data-state") == "over");
  BOOST_TEST(attribute(cell, "class") == "state-over right figure");
  BOOST_TEST(attribute(*all_of(page, "table")[0], "data-key") == "due");
  BOOST_TEST(attribute(*all_of(page, "tr")[3], "data-row") == "3");
}

BOOST_AUTO_TEST_CASE(an_empty_table_and_one_without_a_head) {
  document::Document document{"T", {}, {document_test::working_table()}};
  BOOST_TEST(all_of(page_of(document), "thead").empty());
  document::Table table = document_test::due_table();
  table.rows.clear();
  table.if_empty = "Nothing is due.";
  document.blocks = {table};
  BOOST_TEST((texts(page_of(document), "p") == Lines{"Nothing is due."}));
}

BOOST_AUTO_TEST_CASE(a_chart_has_its_sentence_picture_key_and_points) {
  const Node page = page_of(document_test::with(document_test::small_chart()));
  BOOST_TEST(texts(page, "figcaption")[0] ==
             "Temperature margin of engine E-1001 The margin falls by 4.0 C per 100 h; it may "
             "reach the floor from 1480 h on.");
  const Lines key = texts(page, "li");
  BOOST_REQUIRE_EQUAL(key.size(), 6U);
  BOOST_TEST(key[0] == "readings counted: 5");
  BOOST_TEST(key[5] == "1washed 11 March 2026, at 1245.0 h");
  BOOST_TEST(all_of(page, "svg").size() == 6U);  // the picture and a mark for each entry but one
  const std::vector<const Node*> rows = all_of(page, "tr");
  BOOST_REQUIRE_EQUAL(rows.size(), 7U);
  BOOST_TEST(text_in(*rows[3]) == "1240.0 h18.0 Cflagged: not stabilised");
}

BOOST_AUTO_TEST_CASE(tiles_that_follow_each_other_stand_together) {
  document::Document document = document_test::with(document_test::small_chart());
  for (const char* key : {"a", "b", "c"}) {
    document::Chart tile = document_test::small_chart();
    tile.key = key;
    tile.size = document::ChartSize::tile;
    if (tile.key == "c") document.blocks.push_back(document::Paragraph{"Between."});
    document.blocks.push_back(tile);
  }
  std::vector<std::size_t> groups;
  const Node page = page_of(document);
  for (const Node* div : all_of(page, "div")) {
    if (attribute(*div, "class") == "tiles") groups.push_back(all_of(*div, "figure").size());
  }
  BOOST_TEST((groups == std::vector<std::size_t>{2, 1}));
}

// No tag that runs or loads, no address outside, and a policy that forbids both.
BOOST_AUTO_TEST_CASE(a_page_needs_nothing_and_runs_nothing) {
  document::Document document = document_test::due_list();
  document.blocks.push_back(document_test::small_chart());
  const std::string file = document::as_html(document);
  BOOST_TEST(file.find("content=\"default-src 'none'; style-src 'unsafe-inline'; img-src data:;") !=
             std::string::npos);
  for (const char* outside : {"<script", "href", "src=", "url(", "@import", "<link", "<img",
                              "onload", "onclick", "https:", "//"}) {
    const std::string words(outside);
    std::size_t found = 0;
    for (std::size_t at = file.find(words); at != file.npos; at = file.find(words, at + 1)) ++found;
    // The name of the language of pictures is written as an address and never looked up.
    const bool is_name = words == "//";
    BOOST_TEST(found == (is_name ? all_of(page_of(document), "svg").size() : 0U), words);
  }
}

// WCAG 2.1, 1.4.6: text 7 to 1. In the style a colour is text where it is named so.
BOOST_AUTO_TEST_CASE(text_stands_out_from_the_page) {
  const std::string style = texts(page_of({"T", {}, {}}), "style")[0];
  std::size_t count = 0;
  for (const std::string name : {"--ink: ", "--muted: ", "--accent: ", " color: #"}) {
    for (std::size_t at = style.find(name); at != style.npos; at = style.find(name, at + 1)) {
      const std::string colour = style.substr(style.find('#', at), 7);
      BOOST_TEST(document_test::contrast(colour, "#ffffff") >= 7, colour);
      ++count;
    }
  }
  BOOST_TEST(count == 4U);
}

BOOST_AUTO_TEST_CASE(print_repeats_heads_and_splits_no_row) {
  const std::string file = document::as_html(document_test::due_list());
  for (const char* rule : {"display: table-header-group", "break-inside: avoid", "@page"}) {
    BOOST_TEST(file.find(rule) != std::string::npos, rule);
  }
}

BOOST_AUTO_TEST_CASE(hostile_words_come_back_as_text) {
  text_test::RandomWords random(text_test::printed_seed("hostile words on pages"));
  const Lines payloads{"<script>alert(1)</script>", "\"><img src=x onerror=alert(1)>",
                       "' onmouseover='alert(1)", "&lt;b&gt; &#60;b&#62;",
                       "-->]]></style><svg/onload=1>"};
  for (int round = 0; round < 300; ++round) {
    const std::string bad = payloads[random.below(payloads.size())] + random.words(20);
    document::Table table{"t", {{"a", bad}}, {{{bad, "", bad, {}}}}, ""};
    document::Document document{bad, {bad}, {}};
    document.blocks = {document::Heading{bad}, document::Paragraph{bad}, table, document::Note{bad},
                       document::SignatureBlock{bad, {bad}}};
    const Node page = page_of(document);
    std::string shown = text::visible_line(bad);
    // Two noncharacters have no place in a page and are shown by their number.
    for (const std::string code : {"\xEF\xBF\xBE", "\xEF\xBF\xBF"}) {
      for (std::size_t at = shown.find(code); at != shown.npos; at = shown.find(code)) {
        shown.replace(at, 3, code.back() == '\xBE' ? "<U+FFFE>" : "<U+FFFF>");
      }
    }
    BOOST_REQUIRE_EQUAL(texts(page, "h1")[0], shown);
    BOOST_REQUIRE_EQUAL(texts(page, "title")[0], shown);
    BOOST_REQUIRE_EQUAL(texts(page, "h2")[0], shown);
    BOOST_REQUIRE_EQUAL(texts(page, "th")[0], shown);
    BOOST_REQUIRE_EQUAL(texts(page, "td")[0], shown);
    BOOST_REQUIRE_EQUAL(attribute(*all_of(page, "td")[0], "data-unit"), shown);
    BOOST_REQUIRE_EQUAL(texts(page, "p")[2], "Note: " + shown);
    BOOST_REQUIRE(all_of(page, "script").empty() && all_of(page, "img").empty());
  }
}

BOOST_AUTO_TEST_SUITE_END()
