#include "report/life_parts.h"

#include "report/pieces.h"
#include "words/dues.h"
#include "words/figures.h"
#include "words/grammar.h"
#include "words/shares.h"
#include "words/workings.h"

namespace report {

namespace {

using document::Align;
using document::Table;
using reckon::Item;
using reckon::PartUsed;
using reckon::Side;

// A counter of a mixed limit used every term of its total of its own whole.
std::vector<PartUsed> parts_of(const Item& item, const Side& side) {
  if (item.mixed == nullptr) return side.parts;
  std::vector<PartUsed> parts;
  for (const auto& term : side.used.because) parts.push_back({term, *side.limit});
  return parts;
}

std::string what_text(const Item* mixed, const PartUsed& part) {
  return mixed != nullptr ? words::term_text(part.term) : words::part_text(part);
}

Table empty_table(std::string key) {
  return {std::move(key), {{"amount", "", Align::right}, {"what", "", Align::left}}, {}, ""};
}

void add_life_used(const Side& side, Table& table) {
  const bool is_exact = side.life_used->is_exact_in_ten_thousandths();
  table.rows.push_back(
      {words_cell("= " + words::life_used_text(side)),
       words_cell(is_exact ? "of its life used" : "of its life used, rounded up")});
}

void add_left(const Side& side, const std::string& what, Table& table) {
  document::Cell cell = left_cell(side);
  cell.shown = "= " + cell.shown;
  const bool is_over = side.left && side.left->raw() < 0;
  table.rows.push_back({std::move(cell), words_cell(is_over ? "" : what)});
}

}  // namespace

Table parts_table(const Side& side, std::string key) {
  Table table = empty_table(std::move(key));
  for (const PartUsed& part : side.parts) {
    table.rows.push_back({words_cell(words::part_amount_text(part, side.clock)),
                          words_cell(what_text(nullptr, part))});
  }
  add_life_used(side, table);
  add_left(side, words::fill("left, of {}", {words::limit_text(side)}), table);
  return table;
}

Table mix_table(const Item& item, std::string key) {
  Table table = empty_table(std::move(key));
  for (const Side& side : item.sides) {
    for (const PartUsed& part : parts_of(item, side)) {
      table.rows.push_back({words_cell(words::part_amount_text(part, side.clock)),
                            words_cell(what_text(&item, part))});
    }
  }
  if (item.sides.front().life_used) add_life_used(item.sides.front(), table);
  for (const Side& side : item.sides) {
    const std::string what =
        side.life_used ? "left " + words::mix_text(side) : words::lack_text(item);
    add_left(side, what, table);
  }
  return table;
}

document::Json parts_json(const Item& item, const Side& side) {
  document::Json array = document::Json::array();
  const Item* mixed = item.mixed == nullptr ? nullptr : &item;
  for (const PartUsed& part : parts_of(item, side)) {
    document::Json object = document::Json::object();
    object.set("amount", figure_json(part.term.figure, Toward::up));
    object.set("of", figure_json(part.whole, Toward::down)).set("subtract", part.term.subtract);
    array.add(object.set("what", what_text(mixed, part)));
  }
  return array;
}

}  // namespace report
