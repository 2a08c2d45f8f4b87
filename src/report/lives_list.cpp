#include "report/lives_list.h"

#include "report/pieces.h"
#include "words/dues.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/shares.h"
#include "words/words.h"

namespace report {

namespace {

using document::Align;
using document::Cell;
using document::Table;
using reckon::Item;
using reckon::Side;
using Row = std::vector<Cell>;

// Which of several sides runs out first is said by a word, beside its state.
std::string basis_of(const Side& side) {
  if (side.after) return "after " + quantity::say_long(*side.after);
  return side.since ? std::string(words::basis_text(*side.since)) : std::string();
}

Cell since_cell(const Item& item, const Side& side) {
  std::string shown = basis_of(side);
  const std::string sharing = words::sharing_text(item, side);
  if (!sharing.empty()) shown += ", " + sharing;
  const bool has_choice = item.sides.size() > 1;
  if (has_choice && &side == words::governing(item)) {
    shown += item.combine == logbook::Combine::latest ? " (governs, the latest)" : " (governs)";
  }
  return words_cell(std::move(shown));
}

Row side_row(const Item& item, const Side& side) {
  return {words_cell(words::item_name(item)),
          limit_cell(side),
          since_cell(item, side),
          used_cell(side),
          left_cell(side),
          state_cell(side.state)};
}

Row row_without_sides(const Item& item) {
  const bool is_known = item.kind == Item::Kind::on_condition;
  return {words_cell(words::item_name(item)),
          words_cell(is_known ? "on condition" : "not known"),
          words_cell(""),
          words_cell(""),
          words_cell(is_known ? "" : "not known"),
          state_cell(item.state)};
}

Table lives_table(const std::string& title_of, const std::vector<Item>& items) {
  Table table{"lives",
              {{"item", "Item", Align::left},
               {"limit", "Limit", Align::right},
               {"since", "Counted", Align::left},
               {"used", "Used", Align::right},
               {"left", "Left", Align::right},
               {"state", "State", Align::left}},
              {},
              words::fill("Nothing is listed: no limit is on record for {}.", {title_of})};
  for (const Item& item : items) {
    for (const Side& side : item.sides) table.rows.push_back(side_row(item, side));
    if (item.sides.empty()) table.rows.push_back(row_without_sides(item));
  }
  return table;
}

Table source_table(const std::vector<Item>& items) {
  Table table{"sources",
              {{"item", "Item", Align::left},
               {"where", "Where", Align::left},
               {"source", "Source", Align::left},
               {"entry", "Entry", Align::left}},
              {},
              "There is nothing more to tell."};
  for (const Item& item : items) {
    table.rows.push_back({words_cell(words::item_name(item)), words_cell(words::where_text(item)),
                          words_cell(words::source_text(item.source)),
                          words_cell(words::entry_name(item.entry))});
  }
  return table;
}

}  // namespace

Answer lives_list(const reckon::Histories&, const std::string& title_of,
                  const std::vector<Item>& items, const Sheet& sheet) {
  Answer answer;
  document::Document& page = answer.document;
  page.title = words::fill("Lives of {}", {title_of});
  page.head = {as_of_line(sheet)};
  add_attention(items, page);
  page.blocks.emplace_back(lives_table(title_of, items));
  if (!items.empty()) page.blocks.emplace_back(source_table(items));
  add_foot(page, sheet);
  answer.json = json_head(sheet);
  answer.json.set("items", items_json(items));
  answer.needs_attention = wants_attention(items);
  return answer;
}

}  // namespace report
