#include "store/layout.h"

#include <algorithm>
#include <map>
#include <string>
#include <utility>

#include "store/schema_sql.h"

namespace store {
namespace {

using Layout = std::map<std::pair<std::string, std::string>, std::string>;  // kind, name: its SQL

// Without comments and with single blanks: these may read otherwise in another release.
std::string plain(std::string_view sql) {
  std::string words;
  for (std::size_t i = 0; i < sql.size(); ++i) {
    if (sql.substr(i, 2) == "--") i = std::min(sql.find('\n', i), sql.size() - 1);
    const bool is_blank = sql[i] == ' ' || sql[i] == '\n';
    if (!is_blank) {
      words += sql[i];
    } else if (!words.empty() && words.back() != ' ') {
      words += ' ';
    }
  }
  return words;
}

// Indexes that come with a table have no SQL, and SQLite's own tables are its own matter.
Layout layout_of(Database& database) {
  Layout layout;
  Statement found = database.statement(
      "SELECT type, name, sql FROM sqlite_schema WHERE sql IS NOT NULL "
      "AND substr(name, 1, 7) <> 'sqlite_'");
  while (found.next()) {
    layout[{std::string(found.text(0)), std::string(found.text(1))}] = plain(found.text(2));
  }
  return layout;
}

Layout right_layout() {
  Database fresh(":memory:", Database::Mode::create);
  fresh.run(permanent_sql);
  fresh.run(local_sql);
  fresh.run(derived_sql);
  return layout_of(fresh);
}

}  // namespace

void check_layout(Database& database, std::vector<Finding>& findings) {
  Layout there = layout_of(database);
  for (const auto& [name, sql] : right_layout()) {
    const auto found = there.find(name);
    const std::string of = "the " + name.first + ' ' + name.second;
    if (found == there.end()) {
      findings.push_back({"layout", {}, of + " is missing"});
      continue;
    }
    if (found->second != sql) findings.push_back({"layout", {}, of + " was changed"});
    there.erase(found);
  }
  for (const auto& [name, sql] : there) {
    findings.push_back(
        {"layout", {}, "the " + name.first + ' ' + name.second + " does not belong to a book"});
  }
}

}  // namespace store
