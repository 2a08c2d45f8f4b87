#include "document/as_csv.h"

#include <algorithm>
#include <cstddef>
#include <map>

#include "document/long_rows.h"
#include "document/number.h"
#include "text/visible.h"

namespace document {
namespace {

constexpr std::string_view dangerous("=+-@\t\r\0", 7);

bool begins_like_a_formula(std::string_view words) {
  return !words.empty() && dangerous.find(words.front()) != dangerous.npos;
}

std::string_view after_apostrophes(std::string_view words) {
  words.remove_prefix(std::min(words.find_first_not_of('\''), words.size()));
  return words;
}

std::string quoted(std::string_view words) {
  std::string result = "\"";
  for (const char byte : words) {
    if (byte == '"') result += '"';
    result += byte;
  }
  return result + '"';
}

// Where a cell stands in the long table.
struct Place {
  std::string_view section;
  std::size_t row;
};

std::string line(const Place& place, const LongCell& cell) {
  const std::string row = std::to_string(place.row);
  std::string result;
  for (const std::string_view field :
       {place.section, std::string_view(row), cell.column, std::string_view(cell.shown),
        std::string_view(cell.exact), std::string_view(cell.unit), cell.state}) {
    if (!result.empty()) result += ',';
    result += csv_field(text::visible_line(field));
  }
  return result + "\r\n";
}

// Walks over the blocks and counts the rows of each section on its way.
class RowWriter {
 public:
  void say(std::string_view section, std::string_view column, const std::string& words) {
    add_row(section, {{column, words, "", "", ""}});
  }

  void operator()(const Heading& heading) { say("heading", "text", heading.text); }
  void operator()(const Paragraph& paragraph) { say("paragraph", "text", paragraph.text); }
  void operator()(const Note& note) { say("note", "text", note.text); }

  void operator()(const SignatureBlock& block) {
    if (!block.statement.empty()) say("signature", "statement", block.statement);
    for (const std::string& label : block.labels) say("signature", "label", label);
  }

  void operator()(const Table& table) {
    if (table.rows.empty() && !table.if_empty.empty()) say(table.key, "text", table.if_empty);
    for (const std::vector<Cell>& row : table.rows) add_row(table.key, cells_of(table, row));
  }

  void operator()(const Chart& chart) {
    add_row("chart", {{"title", chart.title, "", "", ""}, {"text", chart.alt, "", "", ""}});
    for (const LongRow& row : long_rows(chart)) add_row(row.section, row.cells);
  }

  const std::string& out() const { return out_; }

 private:
  static std::vector<LongCell> cells_of(const Table& table, const std::vector<Cell>& row) {
    std::vector<LongCell> cells;
    for (std::size_t i = 0; i < row.size(); ++i) {
      std::string_view key;
      if (i < table.columns.size()) key = table.columns[i].key;
      cells.push_back({key, row[i].shown, row[i].exact, row[i].unit, word(row[i].state)});
    }
    return cells;
  }

  void add_row(std::string_view section, const std::vector<LongCell>& cells) {
    const std::size_t row = ++counted_[std::string(section)];
    for (const LongCell& cell : cells) out_ += line({section, row}, cell);
  }

  std::string out_ = "section,row,column,shown,exact,unit,state\r\n";
  std::map<std::string, std::size_t> counted_;
};

}  // namespace

std::string guarded(std::string_view words) {
  const bool is_guarded =
      begins_like_a_formula(after_apostrophes(words)) && !is_plain_number(words);
  return is_guarded ? "'" + std::string(words) : std::string(words);
}

std::string_view unguarded(std::string_view words) {
  const bool is_guarded =
      words.starts_with('\'') && begins_like_a_formula(after_apostrophes(words));
  return is_guarded ? words.substr(1) : words;
}

std::string csv_field(std::string_view words) {
  const std::string safe = guarded(words);
  return safe.find_first_of(",\"\r\n;\t") == safe.npos ? safe : quoted(safe);
}

std::string as_csv(const Document& document) {
  RowWriter rows;
  if (!document.title.empty()) rows.say("title", "text", document.title);
  for (const std::string& words : document.head) rows.say("head", "text", words);
  for (const Block& block : document.blocks) std::visit(rows, block);
  return rows.out();
}

}  // namespace document
