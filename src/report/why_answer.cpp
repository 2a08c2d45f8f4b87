#include "report/why_answer.h"

#include <algorithm>

#include "report/life_parts.h"
#include "report/pieces.h"
#include "words/dues.h"
#include "words/figures.h"
#include "words/grammar.h"
#include "words/signings.h"
#include "words/words.h"
#include "words/workings.h"

namespace report {

namespace {

using document::Align;
using document::Cell;
using document::Table;
using reckon::Figure;
using reckon::Item;
using reckon::Side;
using reckon::Term;

// A term as it stands in the sum of what is left: the limit less all that was used.
struct Line {
  Figure figure;
  bool subtract = false;
  std::string words;
};

std::vector<Line> lines_by_use(const Item& item, const Side& side) {
  std::vector<Line> lines;
  if (side.limit) lines.push_back({*side.limit, false, words::limit_term_text(item, side)});
  if (side.excess && side.excess->raw() != 0) {
    lines.push_back({*side.excess, true, "flown past the last due point"});
  }
  for (const Term& term : side.used.because) {
    lines.push_back({term.figure, !term.subtract, words::term_text(term)});
  }
  return lines;
}

// Where a due point is stated, or counts from another than the place of the work.
std::vector<Line> lines_by_due_point(const Side& side) {
  Figure now = *side.due_at - *side.left;
  if (side.left_is_at_most) now = now.as_sure_as(reckon::Sureness::at_least);
  return {{*side.due_at, false, "due point on record, on its own clock"},
          {now, true, "its total now"}};
}

bool adds_up(const std::vector<Line>& lines, const Side& side) {
  if (lines.empty()) return false;
  Figure sum = lines.front().figure - lines.front().figure;
  for (const Line& line : lines) {
    if (line.figure.unit() != sum.unit()) return false;
    sum = line.subtract ? sum - line.figure : sum + line.figure;
  }
  return side.left && sum.raw() == side.left->raw();
}

// The sum always adds up on paper: by use, else by the due point.
std::vector<Line> lines_of(const Item& item, const Side& side) {
  std::vector<Line> lines = lines_by_use(item, side);
  if (adds_up(lines, side) || !side.left || !side.due_at) return lines;
  return lines_by_due_point(side);
}

Cell amount_cell(const Line& line, const Side& side) {
  const std::string shown = words::figure_exact(line.figure, side.clock);
  if (line.figure.is_unknown()) return words_cell("? " + shown);
  return words_cell((line.subtract ? "-" : "") + shown +
                    std::string(words::sureness_text(line.figure)));
}

std::string result_words(const std::vector<Line>& lines, const Side& side) {
  if (!side.left) return words::lack_text(side);
  if (adds_up(lines, side)) return side.left->raw() < 0 ? "over" : "left";
  return "left: of two figures on record, the one that makes it fall due earlier";
}

Cell result_cell(const Side& side) {
  if (!side.left) return words_cell("= not known");
  Cell cell = left_cell(side);
  const std::string shown = words::figure_exact(*side.left, side.clock);
  cell.shown = (side.left_is_at_most ? "= at most " : "= ") + shown;
  return cell;
}

Table sum_table(const Item& item, const Side& side, std::string key) {
  Table table{std::move(key), {{"amount", "", Align::right}, {"what", "", Align::left}}, {}, ""};
  const std::vector<Line> lines = lines_of(item, side);
  for (const Line& line : lines) {
    table.rows.push_back({amount_cell(line, side), words_cell(line.words)});
  }
  table.rows.push_back({result_cell(side), words_cell(result_words(lines, side))});
  return table;
}

void add_side(const Item& item, const Side& side, document::Document& page) {
  if (side.is_calendar) {
    page.blocks.emplace_back(document::Paragraph{words::calendar_sentence(item, side)});
    return;
  }
  const std::string key = "sum_" + std::to_string(page.blocks.size());
  page.blocks.emplace_back(side.life_used ? parts_table(side, key) : sum_table(item, side, key));
}

std::string rests_on(const Item& item) {
  return words::fill("It rests on {}.", {entries_cell(item.because).shown});
}

void add_foundations(const Item& item, document::Document& page) {
  if (!item.because.empty()) page.blocks.emplace_back(document::Paragraph{rests_on(item)});
  if (item.last_done && item.last_done_signed) {
    page.blocks.emplace_back(document::Paragraph{words::fill(
        "{} is {}.",
        {words::entry_name(*item.last_done), words::sign_state_word(*item.last_done_signed)})});
  }
  if (!item.not_counted.empty()) {
    page.blocks.emplace_back(document::Paragraph{
        words::fill("Not counted, since the record counts work only once it is signed: {}.",
                    {entries_cell(item.not_counted).shown})});
  }
}

void add_item(const Item& item, document::Document& page) {
  page.blocks.emplace_back(document::Heading{words::left_sentence(item)});
  if (item.mixed != nullptr) {
    page.blocks.emplace_back(mix_table(item, "sum_" + std::to_string(page.blocks.size())));
    return add_foundations(item, page);
  }
  if (const Side* first = words::governing(item)) add_side(item, *first, page);
  for (const Side& side : item.sides) {
    if (&side != words::governing(item)) add_side(item, side, page);
  }
  add_foundations(item, page);
}

document::Json term_json(const Line& line) {
  document::Json object = document::Json::object();
  object.set("amount", figure_json(line.figure, Toward::up)).set("subtract", line.subtract);
  return object.set("what", line.words);
}

document::Json workings_json(const std::vector<Item>& items) {
  document::Json array = document::Json::array();
  for (const Item& item : items) {
    for (const Side& side : item.sides) {
      document::Json terms = document::Json::array();
      if (side.life_used) {
        terms = parts_json(item, side);
      } else {
        for (const Line& line : lines_of(item, side)) terms.add(term_json(line));
      }
      document::Json object = document::Json::object();
      object.set("id", item.id).set("unit", words::unit_key(side));
      array.add(object.set("terms", std::move(terms)));
    }
  }
  return array;
}

bool runs_out_before(const Item& a, const Item& b) {
  const Side* first = words::governing(a);
  const Side* second = words::governing(b);
  const auto rank = [](const Item& item) { return wants_attention(item.state) ? 0 : 1; };
  if (rank(a) != rank(b)) return rank(a) < rank(b);
  if (first == nullptr || second == nullptr) return first != nullptr && second == nullptr;
  return first->days_left < second->days_left;
}

}  // namespace

Answer why_answer(const reckon::Histories&, const std::vector<Item>& items, const Sheet& sheet) {
  std::vector<Item> ordered = items;
  std::stable_sort(ordered.begin(), ordered.end(), runs_out_before);
  Answer answer;
  document::Document& page = answer.document;
  page.head = {as_of_line(sheet)};
  for (const Item& item : ordered) add_item(item, page);
  if (ordered.empty()) {
    page.blocks.emplace_back(document::Paragraph{"No limit and no task is on record for it."});
  }
  add_foot(page, sheet);
  answer.json = json_head(sheet);
  answer.json.set("items", items_json(ordered)).set("workings", workings_json(ordered));
  answer.needs_attention = wants_attention(ordered);
  return answer;
}

}  // namespace report
