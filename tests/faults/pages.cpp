#include "faults/pages.h"

#include <sqlite3.h>

#include <cstdint>
#include <optional>
#include <vector>

namespace faults {

namespace {

class Opened {
 public:
  explicit Opened(const std::string& path) { sqlite3_open(path.c_str(), &database_); }
  ~Opened() { sqlite3_close(database_); }
  Opened(const Opened&) = delete;
  Opened& operator=(const Opened&) = delete;

  // Each value with its kind and size, row by row; absent if it cannot be read to the end.
  std::optional<std::vector<std::string>> read(const std::string& sql) const {
    sqlite3_stmt* statement = nullptr;
    std::vector<std::string> values;
    int result = sqlite3_prepare_v2(database_, sql.c_str(), -1, &statement, nullptr);
    while (result == SQLITE_OK || result == SQLITE_ROW) {
      result = sqlite3_step(statement);
      if (result == SQLITE_ROW) add_row(statement, values);
    }
    sqlite3_finalize(statement);
    return result == SQLITE_DONE ? std::optional(values) : std::nullopt;
  }

 private:
  static void add_row(sqlite3_stmt* statement, std::vector<std::string>& values) {
    for (int column = 0; column < sqlite3_column_count(statement); ++column) {
      const auto* const bytes = static_cast<const char*>(sqlite3_column_blob(statement, column));
      const auto size = static_cast<std::size_t>(sqlite3_column_bytes(statement, column));
      values.push_back(bytes == nullptr ? std::string() : std::string(bytes, size));
    }
  }

  sqlite3* database_ = nullptr;
};

}  // namespace

void put_into_small_pages(const std::string& path) {
  const Opened book(path);
  book.read("PRAGMA page_size = 512");
  book.read("VACUUM");
}

std::size_t page_size_of(const std::string& content) {
  const auto byte = [&](std::size_t at) { return static_cast<std::uint8_t>(content.at(at)); };
  const std::size_t size = static_cast<std::size_t>(byte(16)) << 8 | byte(17);
  return size == 1 ? 65536 : size;
}

std::set<std::size_t> pages_never_changed(const std::string& path) {
  const auto numbers = Opened(path).read(
      "SELECT pageno FROM dbstat WHERE name IN ('sqlite_schema', 'record', 'entry', 'own_writer', "
      "'arrived', 'printed', 'quarantine')");
  std::set<std::size_t> pages;
  for (const std::string& number : numbers.value()) pages.insert(std::stoul(number) - 1);
  return pages;
}

std::string rows_of(const std::string& path) {
  const Opened book(path);
  std::string all;
  const auto add = [&](const std::string& sql) {
    const auto values = book.read(sql);
    if (!values) return false;
    for (const std::string& value : *values) all += std::to_string(value.size()) + ':' + value;
    return true;
  };
  const auto sound = book.read("PRAGMA integrity_check");
  if (!sound || *sound != std::vector<std::string>{"ok"}) return {};
  if (!add("SELECT * FROM sqlite_schema")) return {};
  const auto tables = book.read("SELECT name FROM sqlite_schema WHERE type = 'table'");
  for (const std::string& table : tables.value()) {
    if (!add("SELECT * FROM \"" + table + "\"")) return {};
  }
  return all;
}

}  // namespace faults
