#include "faults/pages.h"

#include <sqlite3.h>

#include <cstdint>
#include <vector>

namespace faults {

namespace {

std::size_t number(const std::string& content, std::size_t at, int bytes) {
  std::size_t value = 0;
  for (int i = 0; i < bytes; ++i) {
    value = value << 8 | static_cast<std::uint8_t>(content.at(at + static_cast<std::size_t>(i)));
  }
  return value;
}

// An inner page has a child at the beginning of each cell, and one more in its header.
void walk(const std::string& content, std::size_t page, std::set<std::size_t>& met) {
  if (!met.insert(page).second) return;
  const std::size_t begin = page * page_size;
  const std::size_t kind = number(content, begin, 1);
  const bool is_inner = kind == 2 || kind == 5;
  if (!is_inner) return;
  walk(content, number(content, begin + 8, 4) - 1, met);
  for (std::size_t cell = 0; cell < number(content, begin + 3, 2); ++cell) {
    const std::size_t at = number(content, begin + 12 + 2 * cell, 2);
    walk(content, number(content, begin + at, 4) - 1, met);
  }
}

std::vector<std::size_t> roots(const std::string& path) {
  std::vector<std::size_t> pages;
  sqlite3* database = nullptr;
  sqlite3_open(path.c_str(), &database);
  sqlite3_stmt* found = nullptr;
  sqlite3_prepare_v2(database,
                     "SELECT rootpage FROM sqlite_schema WHERE type = 'table' AND name IN "
                     "('record', 'entry', 'own_writer', 'arrived', 'printed', 'quarantine')",
                     -1, &found, nullptr);
  while (sqlite3_step(found) == SQLITE_ROW) {
    pages.push_back(static_cast<std::size_t>(sqlite3_column_int64(found, 0)));
  }
  sqlite3_finalize(found);
  sqlite3_close(database);
  return pages;
}

}  // namespace

std::set<std::size_t> pages_never_changed(const std::string& path, const std::string& content) {
  std::set<std::size_t> pages = {0};
  for (const std::size_t root : roots(path)) walk(content, root - 1, pages);
  return pages;
}

}  // namespace faults
