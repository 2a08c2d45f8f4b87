// The finished files say the same, cell by cell: read back from each, compared with each.

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <map>
#include <nlohmann/json.hpp>
#include <tuple>

#include "document/chart_samples.h"
#include "document/markup_reader.h"
#include "document/render.h"
#include "document/samples.h"
#include "text/pieces.h"
#include "text/random_words.h"

namespace {

using document::Format;
using document_test::all_of;
using document_test::attribute;
using document_test::Node;
using document_test::text_in;
using nlohmann::json;

using Words = std::vector<std::string>;

// Table key, row, column key.
using Place = std::tuple<std::string, std::size_t, std::string>;

struct Shown {
  std::string words;  // with the word of the state, unless it is that word already
  std::string exact, unit;
  bool operator==(const Shown&) const = default;
};
std::ostream& operator<<(std::ostream& out, const Shown& shown) {
  return out << shown.words << '|' << shown.exact << '|' << shown.unit;
}
using Cells = std::map<Place, Shown>;

std::string with_state(const std::string& shown, const std::string& state) {
  if (state.empty() || shown == state) return shown;
  return shown.empty() ? state : shown + " (" + state + ")";
}

Cells cells_of_json(const json& document) {
  Cells cells;
  for (const json& block : document["blocks"]) {
    if (block["kind"] != "table") continue;
    std::size_t number = 0;
    for (const json& row : block["rows"]) {
      ++number;
      for (const auto& [key, cell] : row.items()) {
        cells[{block["key"], number, key}] = {with_state(cell["shown"], cell["state"]),
                                              cell["exact"], cell["unit"]};
      }
    }
  }
  return cells;
}

// The words of this test hold no comma and no quote, so a line splits at its commas.
std::vector<Words> lines_of_csv(const std::string& file) {
  std::vector<Words> lines;
  for (std::string_view line : text::split(file, '\n')) {
    if (line.ends_with('\r')) line.remove_suffix(1);
    Words fields;
    for (std::string_view field : text::split(line, ',')) {
      if (field.starts_with("'")) field.remove_prefix(1);
      fields.emplace_back(field);
    }
    if (fields.size() == 7) lines.push_back(fields);
  }
  return lines;
}

Cells cells_of_csv(const std::string& file, const std::string& key) {
  Cells cells;
  for (const Words& line : lines_of_csv(file)) {
    if (line[0] != key) continue;
    cells[{key, std::stoul(line[1]), line[2]}] = {with_state(line[3], line[6]), line[4], line[5]};
  }
  return cells;
}

Cells cells_of_html(const Node& page) {
  Cells cells;
  for (const Node* table : all_of(page, "table")) {
    for (const Node* row : all_of(*table, "tr")) {
      for (const Node* cell : all_of(*row, "td")) {
        cells[{attribute(*table, "data-key"), std::stoul(attribute(*row, "data-row")),
               attribute(*cell, "data-column")}] = {text_in(*cell), attribute(*cell, "data-exact"),
                                                    attribute(*cell, "data-unit")};
      }
    }
  }
  return cells;
}

std::string trimmed(std::string_view words) { return std::string(text::trim(words)); }

// The words of a table in text: below the line of rules, cut where the rules stand.
std::vector<Words> rows_of_text(const std::string& file) {
  std::vector<Words> rows;
  std::vector<std::pair<std::size_t, std::size_t>> places;
  for (const std::string_view line : text::split(file, '\n')) {
    if (places.empty()) {
      if (line.find("--  --") == line.npos) continue;
      for (std::size_t at = 0; at < line.size();) {
        const std::size_t end = std::min(line.find(' ', at), line.size());
        places.emplace_back(at, end - at);
        at = std::min(line.find_first_not_of(' ', end), line.size());
      }
      continue;
    }
    if (line.empty()) break;
    Words row;
    for (const auto& [at, length] : places) {
      row.push_back(at < line.size() ? trimmed(line.substr(at, length)) : "");
    }
    rows.push_back(row);
  }
  return rows;
}

void check_text(const document::Table& table, const Cells& cells, const std::string& file) {
  const std::vector<Words> rows = rows_of_text(file);
  BOOST_REQUIRE_EQUAL(rows.size(), table.rows.size());
  for (std::size_t row = 0; row < rows.size(); ++row) {
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
      BOOST_REQUIRE_EQUAL(rows[row][i], cells.at({table.key, row + 1, table.columns[i].key}).words);
    }
  }
}

// A table of random words and figures, each cell with something to see.
document::Table random_table(text_test::RandomWords& random) {
  const auto word = [&random] {
    return std::string(1 + random.below(9), "abcyz<>&"[random.below(8)]);
  };
  document::Table table{"things", {{"a", "First thing"}, {"b", "Second"}, {"c", "Third"}}, {}, ""};
  table.columns[1].align = document::Align::right;
  for (std::size_t left = 1 + random.below(12); left > 0; --left) {
    const std::string digits = "-" + std::to_string(random.below(99999)) + ".5";
    const auto state = static_cast<document::State>(random.below(6));
    table.rows.push_back({{word() + " " + word(), "", "", {}},
                          {digits + " h", digits, "h", state},
                          {word(), "", "", static_cast<document::State>(random.below(6))}});
  }
  return table;
}

struct Figure {
  std::string x, y, state;
  bool operator==(const Figure&) const = default;
  bool operator<(const Figure& other) const {
    return std::tie(x, y, state) < std::tie(other.x, other.y, other.state);
  }
};
using Figures = std::vector<Figure>;

Figures sorted(Figures figures) {
  std::sort(figures.begin(), figures.end());
  return figures;
}

// Digits as JSON writes them, by the text of the file and not by a double.
Figures figures_of_json(const std::string& file) {
  Figures figures;
  const json document = json::parse(file);
  for (const json& point : document["blocks"][0]["points"]) {
    const auto digits = [](double value) {
      std::string words = std::to_string(value);
      return words.substr(0, words.find('.') + 2);
    };
    figures.push_back({digits(point["x"]), digits(point["y"]), point["state"]});
  }
  return figures;
}

Figures figures_of_csv(const std::string& file) {
  std::map<std::size_t, Figure> rows;
  for (const Words& line : lines_of_csv(file)) {
    if (line[0] != "margin") continue;
    Figure& figure = rows[std::stoul(line[1])];
    if (line[2] == "x") figure.x = line[4];
    if (line[2] == "y") figure.y = line[4];
    if (line[2] == "state") figure.state = line[6];
  }
  Figures figures;
  for (const auto& [row, figure] : rows) figures.push_back(figure);
  return figures;
}

Figures figures_of_drawing(const Node& page) {
  Figures figures;
  for (const Node* group : all_of(page, "g")) {
    if (attribute(*group, "data-x").empty()) continue;
    figures.push_back({attribute(*group, "data-x"), attribute(*group, "data-y"),
                       attribute(*group, "data-state")});
  }
  return figures;
}

Figures figures_of_rows(const Node& page) {
  Figures figures;
  for (const Node* row : all_of(page, "tr")) {
    const auto cells = all_of(*row, "td");
    if (cells.empty()) continue;
    figures.push_back({attribute(*cells[0], "data-exact"), attribute(*cells[1], "data-exact"),
                       attribute(*cells[2], "data-state")});
  }
  return figures;
}

// What the key says in text: the lines below the drawing, without their marks.
Words key_of_text(const std::string& file, const std::string& last_of_drawing) {
  Words key;
  bool is_below = false;
  for (const std::string_view line : text::split(file, '\n')) {
    if (is_below && !line.empty()) key.push_back(trimmed(line.substr(3)));
    if (line.ends_with(last_of_drawing)) is_below = true;
  }
  return key;
}

Words key_of_html(const Node& page) {
  Words key;
  for (const Node* item : all_of(page, "li")) key.push_back(text_in(item->children[1]));
  return key;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(same_content)

BOOST_AUTO_TEST_CASE(each_cell_says_the_same_everywhere) {
  text_test::RandomWords random(text_test::printed_seed("cells say the same"));
  for (int round = 0; round < 200; ++round) {
    const document::Table table = random_table(random);
    const document::Document document{"T", {}, {table}};
    const Cells wanted = cells_of_json(json::parse(render(document, Format::json, 80)));
    BOOST_REQUIRE_EQUAL(wanted.size(), 3 * table.rows.size());
    const std::string csv = render(document, Format::csv, 80);
    BOOST_REQUIRE(cells_of_csv(csv, "things") == wanted);
    const Node page = document_test::read_markup(render(document, Format::html, 80));
    BOOST_REQUIRE(cells_of_html(page) == wanted);
    check_text(table, wanted, render(document, Format::text, 1000));
  }
}

BOOST_AUTO_TEST_CASE(the_due_list_says_the_same_everywhere) {
  const document::Document document = document_test::due_list();
  const Cells wanted = cells_of_json(json::parse(render(document, Format::json, 80)));
  BOOST_REQUIRE_EQUAL(wanted.size(), 9U);
  BOOST_TEST(wanted.at({"due", 3, "left"}) == (Shown{"-0.2 h (over)", "-720", "s"}));
  BOOST_TEST((cells_of_csv(render(document, Format::csv, 80), "due") == wanted));
  BOOST_TEST(
      (cells_of_html(document_test::read_markup(render(document, Format::html, 80))) == wanted));
  check_text(document_test::due_table(), wanted, render(document, Format::text, 1000));
}

BOOST_AUTO_TEST_CASE(each_point_says_the_same_everywhere) {
  for (const document::Chart& chart :
       {document_test::small_chart(), document_test::large_chart(800, 12)}) {
    const document::Document document = document_test::with(chart);
    const Figures wanted = figures_of_json(render(document, Format::json, 80));
    BOOST_REQUIRE_EQUAL(wanted.size(), chart.points.size());
    BOOST_TEST((figures_of_csv(render(document, Format::csv, 80)) == wanted));
    const Node page = document_test::read_markup(render(document, Format::html, 80));
    BOOST_TEST((figures_of_rows(page) == wanted));
    BOOST_TEST((sorted(figures_of_drawing(page)) == sorted(wanted)));
    const Node picture = document_test::read_markup(render(document, Format::svg, 80));
    BOOST_TEST((sorted(figures_of_drawing(picture)) == sorted(wanted)));
  }
}

BOOST_AUTO_TEST_CASE(the_key_says_the_same_on_screen_and_paper) {
  const document::Document document = document_test::with(document_test::large_chart(200, 4));
  const Node page = document_test::read_markup(render(document, Format::html, 80));
  Words text = key_of_text(render(document, Format::text, 1000), "Engine hours, h");
  // What only cells need stands below the key.
  while (text.size() > key_of_html(page).size()) {
    BOOST_TEST(text.back().ends_with("in one place"), text.back());
    text.pop_back();
  }
  BOOST_TEST(text == key_of_html(page), boost::test_tools::per_element());
}

BOOST_AUTO_TEST_CASE(csv_and_json_say_lines_bands_levels_and_events) {
  const document::Document document = document_test::with(document_test::small_chart());
  const std::string csv = render(document, Format::csv, 80);
  for (const char* line :
       {"chart,1,title,Temperature margin of engine E-1001,,,\r\n",
        "margin,1,x,1200.0 h,1200.0,h,\r\n", "margin,1,y,30.5 C,30.5,C,counted\r\n",
        "margin,3,state,flagged: not stabilised,,,flagged\r\n",
        "margin_line,1,y_to,26.3 C,26.3,C,\r\n", "margin_line,1,reach,fitted,,,\r\n",
        "margin_band,5,upper,28.30 C,28.30,C,\r\n", "margin_level,1,label,floor,,,\r\n",
        "margin_level,1,y,10 C,10,C,\r\n", "margin_event,1,x,1245.0 h,1245.0,h,\r\n"}) {
    BOOST_TEST(csv.find(line) != csv.npos, line);
  }
  const json chart = json::parse(render(document, Format::json, 80))["blocks"][0];
  BOOST_TEST(chart["kind"] == "chart");
  BOOST_TEST(chart["lines"][0]["to"]["y"] == 26.3);
  BOOST_TEST(chart["lines"][0]["reach"] == "fitted");
  BOOST_TEST(chart["bands"][0]["samples"][4]["upper"] == 28.3);
  BOOST_TEST(chart["levels"][0]["label"] == "floor");
  BOOST_TEST(chart["events"][0]["x"] == 1245.0);
  BOOST_TEST(chart["points"][2]["reason"] == "not stabilised");
  BOOST_TEST(chart["alt"] == document_test::small_chart().alt);
  BOOST_TEST(chart["x"]["unit"] == "h");
}

BOOST_AUTO_TEST_SUITE_END()
