#include "demo/demo_rows.h"

#include <boost/test/unit_test.hpp>
#include <fstream>
#include <sstream>

#include "sentence/sentence.h"

namespace demo {

namespace {

// The first sentence of a book is that of `timeworn new`; the record on file begins with the next.
constexpr int first_number = 2;

std::string trimmed(const std::string& text) {
  const auto begin = text.find_first_not_of(' ');
  if (begin == std::string::npos) return {};
  return text.substr(begin, text.find_last_not_of(' ') - begin + 1);
}

std::vector<std::string> cells_of(const std::string& line) {
  std::vector<std::string> cells;
  std::istringstream rest(line.substr(1));
  for (std::string cell; std::getline(rest, cell, '|');) cells.push_back(trimmed(cell));
  return cells;
}

bool is_entry(const std::string& name) {
  const auto dash = name.find('-');
  return dash == 5 && name.find_first_not_of("0123456789", dash + 1) == std::string::npos &&
         name.find_first_not_of("0123456789ABCDEFGHJKMNPQRSTVWXYZ") == dash;
}

}  // namespace

std::vector<Row> rows() {
  std::vector<Row> all;
  std::ifstream page(TIMEWORN_TREE "/demo_db/README.md");
  for (std::string line; std::getline(page, line);) {
    if (!line.starts_with('|')) continue;
    const auto cells = cells_of(line);
    if (cells.size() != 4 || !is_entry(cells[2])) continue;
    all.push_back(
        {cells[0], cells[1], cells[2].substr(0, 5), std::stoi(cells[2].substr(6)), cells[3]});
  }
  return all;
}

std::map<int, Sentence> sentences() {
  std::map<int, Sentence> all;
  std::ifstream record(TIMEWORN_TREE "/demo_db/story.record");
  int number = first_number;
  for (std::string line; std::getline(record, line);) {
    if (line.empty() || line.starts_with('#')) continue;
    const auto read = sentence::read(line, {});
    BOOST_TEST_REQUIRE(read.said.has_value(), "not read: " << line);
    all[number++] = {line, *read.said};
  }
  return all;
}

}  // namespace demo
