#include "report/due_list.h"

#include <algorithm>

#include "report/due_page.h"
#include "report/pieces.h"
#include "words/dues.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/signings.h"
#include "words/words.h"

namespace report {

namespace {

using document::Align;
using document::Cell;
using document::Paragraph;
using document::Table;
using reckon::Item;
using reckon::Side;
using Rows = std::vector<std::vector<Cell>>;

bool is_on_condition(const Item& item) { return item.kind == Item::Kind::on_condition; }

// The governing side stands first and carries the name; the others are said to be the same item's.
std::string row_name(const Item& item, bool is_first) {
  const std::string name = words::item_name(item);
  return is_first ? name : "also: " + name;
}

std::vector<const Side*> governing_first(const Item& item) {
  std::vector<const Side*> sides;
  if (const Side* first = words::governing(item)) sides.push_back(first);
  for (const Side& side : item.sides) {
    if (&side != words::governing(item)) sides.push_back(&side);
  }
  return sides;
}

Cell expected_cell(const Side& side) {
  // What is left at most runs out on that day at the latest: no day to plan by.
  return side.is_calendar || side.left_is_at_most ? words_cell("") : day_cell(side.expected);
}

std::vector<Cell> side_row(const Item& item, const Side& side, bool is_first) {
  return {words_cell(row_name(item, is_first)), left_cell(side), due_cell(side),
          expected_cell(side), state_cell(side.state)};
}

void add_rows(const Item& item, Rows& rows) {
  bool is_first = true;
  for (const Side* side : governing_first(item)) {
    rows.push_back(side_row(item, *side, is_first));
    is_first = false;
  }
  if (!item.sides.empty()) return;
  rows.push_back({words_cell(words::item_name(item)), words_cell("not known"), words_cell(""),
                  words_cell(""), state_cell(item.state)});
}

std::string reason_for_nothing(const DuePage& about) {
  return words::fill(
      "Nothing is listed: no task and no limit is on record for {} or what is fitted to it.",
      {words::short_name(about.aircraft)});
}

Table due_table(const DuePage& about, const std::vector<Item>& items) {
  Table table{"due",
              {{"item", "Item", Align::left},
               {"left", "Left", Align::right},
               {"due", "Due", Align::left},
               {"expected", "Expected", Align::left},
               {"state", "State", Align::left}},
              {},
              reason_for_nothing(about)};
  for (const Item& item : items) {
    if (!is_on_condition(item)) add_rows(item, table.rows);
  }
  return table;
}

Cell last_done_cell(const Item& item) {
  if (!item.last_done_day) return words_cell(item.task != nullptr ? "not on record" : "");
  Cell cell = day_cell(item.last_done_day);
  if (!item.last_done) return cell;
  cell.shown += " (" + words::entry_name(*item.last_done);
  if (item.last_done_signed) {
    cell.shown += ", " + std::string(words::sign_state_word(*item.last_done_signed));
  }
  cell.shown += ")";
  return cell;
}

Table detail_table(const std::vector<Item>& items) {
  Table table{"details",
              {{"item", "Item", Align::left},
               {"where", "Where", Align::left},
               {"last_done", "Last done", Align::left},
               {"source", "Source", Align::left},
               {"entry", "Entry", Align::left}},
              {},
              "There is nothing more to tell."};
  for (const Item& item : items) {
    table.rows.push_back({words_cell(words::item_name(item)), words_cell(words::where_text(item)),
                          last_done_cell(item), words_cell(words::source_text(item.source)),
                          words_cell(words::entry_name(item.entry))});
  }
  return table;
}

bool has_dates_by_hours(const std::vector<Item>& items) {
  return std::any_of(items.begin(), items.end(), [](const Item& item) {
    return std::any_of(item.sides.begin(), item.sides.end(),
                       [](const Side& side) { return !side.is_calendar; });
  });
}

void add_notes(const DuePage& about, const std::vector<Item>& items, const Sheet& sheet,
               document::Document& page) {
  const auto on_condition = std::count_if(items.begin(), items.end(), is_on_condition);
  if (on_condition > 0) {
    page.blocks.emplace_back(
        Paragraph{words::counted(on_condition, "thing is on condition and falls due by no figure.",
                                 "things are on condition and fall due by no figure.")});
  }
  if (sheet.use_rate && has_dates_by_hours(items)) {
    page.blocks.emplace_back(Paragraph{words::rate_text(*sheet.use_rate)});
  }
  for (const auto& question : about.questions) {
    page.blocks.emplace_back(document::Note{words::question_text(question)});
  }
  add_foot(page, sheet);
}

}  // namespace

Answer due_page(const DuePage& about, const std::vector<Item>& items, const Sheet& sheet) {
  Answer answer;
  document::Document& page = answer.document;
  page.title = words::fill("Due on {}", {words::thing_name(about.aircraft)});
  page.head = {as_of_line(sheet), words::counted_to_text(about.last_flight, sheet.as_of)};
  add_attention(items, page);
  page.blocks.emplace_back(due_table(about, items));
  if (!items.empty()) page.blocks.emplace_back(detail_table(items));
  add_notes(about, items, sheet, page);
  answer.json = json_head(sheet);
  answer.json.set("counted_to", day_json(about.last_flight)).set("items", items_json(items));
  answer.needs_attention = wants_attention(items) || !about.questions.empty();
  return answer;
}

Answer due_list(const reckon::Histories& histories, const logbook::Aircraft& aircraft,
                const std::vector<Item>& items, const Sheet& sheet) {
  DuePage about{aircraft, histories.last_flight(aircraft), {}};
  for (const auto& question : histories.questions()) {
    const auto& things = question.about;
    const bool is_about_it = std::any_of(things.begin(), things.end(), [&](const auto& thing) {
      return thing == logbook::Thing(aircraft) || histories.aircraft_now(thing) == aircraft;
    });
    if (is_about_it) about.questions.push_back(question);
  }
  return due_page(about, items, sheet);
}

}  // namespace report
