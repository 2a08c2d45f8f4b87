#include "document/document.h"

#include <set>

#include "document/number.h"

namespace document {
namespace {

bool is_key(std::string_view key) {
  constexpr std::string_view letters = "abcdefghijklmnopqrstuvwxyz0123456789_";
  return !key.empty() && key.find_first_not_of(letters) == key.npos;
}

bool is_exact(std::string_view exact) {
  return exact.empty() || is_plain_number(exact) || looks_like_day(exact);
}

void find_in_columns(const Table& table, std::vector<std::string>& found) {
  std::set<std::string_view> taken;
  for (const Column& column : table.columns) {
    const std::string place = "column \"" + column.key + "\" of table \"" + table.key + "\"";
    if (!is_key(column.key)) found.push_back(place + " has no proper key");
    if (!taken.insert(column.key).second) found.push_back(place + " stands there twice");
  }
}

void find_in_rows(const Table& table, std::vector<std::string>& found) {
  const std::string place = "table \"" + table.key + "\"";
  const bool is_mute = table.rows.empty() && table.if_empty.empty();
  if (is_mute) found.push_back(place + " has neither rows nor a sentence in their place");
  for (const std::vector<Cell>& row : table.rows) {
    if (row.size() != table.columns.size()) found.push_back(place + " has a row of another length");
    for (const Cell& cell : row) {
      if (is_exact(cell.exact)) continue;
      found.push_back(place + " has \"" + cell.exact + "\", which is no number and no day");
    }
  }
}

}  // namespace

std::string_view word(State state) {
  switch (state) {
    case State::none:
      return "";
    case State::ok:
      return "ok";
    case State::soon:
      return "soon";
    case State::due:
      return "due";
    case State::over:
      return "over";
    case State::not_known:
      return "not known";
  }
  return "";
}

std::vector<std::string> faults(const Document& document) {
  // The sections under which as_csv lists what stands outside of tables.
  std::set<std::string_view> taken{"title", "head", "heading", "paragraph", "note", "signature"};
  std::vector<std::string> found;
  for (const Block& block : document.blocks) {
    const Table* table = std::get_if<Table>(&block);
    if (table == nullptr) continue;
    const std::string place = "table \"" + table->key + "\"";
    if (!is_key(table->key)) found.push_back(place + " has no proper key");
    if (!taken.insert(table->key).second) found.push_back(place + " has a key that is taken");
    find_in_columns(*table, found);
    find_in_rows(*table, found);
  }
  return found;
}

}  // namespace document
