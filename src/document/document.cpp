#include "document/document.h"

#include <set>

#include "document/key.h"
#include "document/number.h"

namespace document {
namespace {

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

// Finds the faults of each block and the keys that are taken already.
class BlockFaults {
 public:
  void operator()(const Table& table) {
    const std::string place = "table \"" + table.key + "\"";
    if (!is_key(table.key)) found_.push_back(place + " has no proper key");
    take(table.key, place);
    find_in_columns(table, found_);
    find_in_rows(table, found_);
  }

  void operator()(const Chart& chart) {
    for (const std::string& fault : faults(chart)) found_.push_back(fault);
    for (const char* part : {"", "_line", "_band", "_level", "_event"}) {
      take(chart.key + part, "chart \"" + chart.key + "\"");
    }
  }

  template <typename Sentence>
  void operator()(const Sentence&) {}

  const std::vector<std::string>& found() const { return found_; }

 private:
  void take(const std::string& key, const std::string& place) {
    if (!taken_.insert(key).second) found_.push_back(place + " has a key that is taken");
  }

  // The sections under which as_csv lists what stands outside of tables.
  std::set<std::string> taken_{"title", "head",  "heading",  "paragraph",
                               "note",  "chart", "signature"};
  std::vector<std::string> found_;
};

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
  BlockFaults faults;
  for (const Block& block : document.blocks) std::visit(faults, block);
  return faults.found();
}

std::vector<const Chart*> charts_of(const Document& document) {
  std::vector<const Chart*> charts;
  for (const Block& block : document.blocks) {
    if (const Chart* chart = std::get_if<Chart>(&block)) charts.push_back(chart);
  }
  return charts;
}

}  // namespace document
