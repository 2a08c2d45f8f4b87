#include "store/schema_proof.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>

#include "store/schema_sql.h"
#include "store/trouble.h"

namespace store {
namespace {

using logbook::TroubleKind;
using Weight = SchemaDifference::Weight;

struct Object {
  std::string type;  // table, view, index or trigger
  std::string sql;
  bool operator==(const Object&) const = default;
};
using Schema = std::map<std::string, Object>;

constexpr std::string_view plain_table = "CREATE TABLE ";

Schema schema_in(Database& database) {
  Schema schema;
  Statement rows = database.statement("SELECT name, type, ifnull(sql, '') FROM sqlite_schema");
  while (rows.next()) {
    const std::string name(rows.text(0));
    const bool belongs_to_its_table = rows.text(2).empty() && name.starts_with("sqlite_autoindex_");
    if (belongs_to_its_table) continue;
    schema.emplace(name, Object{std::string(rows.text(1)), std::string(rows.text(2))});
  }
  return schema;
}

// What a book that is made today holds, and which of it is only worked out.
struct Ours {
  Schema schema;
  std::set<std::string> derived;
};

Ours ours() {
  Database made(":memory:", Database::Mode::create);
  made.run(permanent_sql);
  made.run(local_sql);
  const Schema kept = schema_in(made);
  made.run(derived_sql);
  Ours result{schema_in(made), {}};
  for (const auto& [name, object] : result.schema) {
    if (!kept.contains(name)) result.derived.insert(name);
  }
  return result;
}

bool is_plain_table(const Object& object) {
  return object.type == "table" && object.sql.starts_with(plain_table);
}

std::string named(const Object& object, const std::string& name) {
  return "the " + object.type + ' ' + name;
}

void compare(const std::string& name, const Object* there, const Ours& wanted,
             std::vector<SchemaDifference>& differences) {
  const Object& wants = wanted.schema.at(name);
  if (there != nullptr && *there == wants) return;
  const bool is_derived = wanted.derived.contains(name);
  Weight weight = wants.type == "table" ? Weight::table : Weight::guard;
  if (is_derived && (there == nullptr || is_plain_table(*there))) weight = Weight::derived;
  const std::string which = named(wants, name);
  differences.push_back(
      {weight, there == nullptr ? "it lacks " + which : which + " is not as a book has it"});
}

// The library keeps the words by which a table was made, so that all of them stand in our own
// script.
bool is_in_our_script(std::string_view table_sql) {
  return derived_sql.find(std::string(table_sql) + ';') != derived_sql.npos;
}

// The quick way, for each writing.
bool holds_each_derived_table(Database& database) {
  std::size_t wanted = 0;
  for (auto at = derived_sql.find(plain_table); at != derived_sql.npos;
       at = derived_sql.find(plain_table, at + 1)) {
    ++wanted;
  }
  std::size_t there = 0;
  Statement tables = database.statement("SELECT sql FROM sqlite_schema WHERE type = 'table'");
  while (tables.next()) {
    if (is_in_our_script(tables.text(0))) ++there;
  }
  return there == wanted;
}

std::string first_row(Database& database, std::string_view pragma) {
  Statement rows = database.statement(pragma);
  return rows.next() ? std::string(rows.text(0)) : std::string();
}

[[noreturn]] void refuse_unproved(const std::string& path, const std::string& detail) {
  throw Trouble({TroubleKind::not_proved, path, detail});
}

}  // namespace

std::vector<SchemaDifference> schema_differences(Database& database, Form form) {
  const Ours wanted = ours();
  const Schema there = schema_in(database);
  std::vector<SchemaDifference> differences;
  for (const auto& [name, object] : wanted.schema) {
    const auto found = there.find(name);
    compare(name, found == there.end() ? nullptr : &found->second, wanted, differences);
  }
  if (form == Form::newer) return differences;
  for (const auto& [name, object] : there) {
    if (wanted.schema.contains(name)) continue;
    differences.push_back(
        {Weight::guard, "it holds " + named(object, name) + ", which no book has"});
  }
  return differences;
}

bool has_our_table(Database& database, std::string_view name) {
  Statement table =
      database.statement("SELECT sql FROM sqlite_schema WHERE type = 'table' AND name = ?", name);
  return table.next() && is_in_our_script(table.text(0));
}

bool has_other_derived_form(Database& database) {
  if (holds_each_derived_table(database)) return false;
  const auto differences = schema_differences(database);
  return std::any_of(differences.begin(), differences.end(),
                     [](const SchemaDifference& one) { return one.weight == Weight::derived; });
}

void expect_whole(Database& database, Form form, const std::string& path) {
  const std::string pages = first_row(database, "PRAGMA quick_check(1)");
  if (pages != "ok") refuse_unproved(path, pages);
  const std::string astray = first_row(database, "PRAGMA foreign_key_check");
  if (!astray.empty()) refuse_unproved(path, "a row of the table " + astray + " leads nowhere");
  if (form == Form::newer) return;
  for (const SchemaDifference& one : schema_differences(database)) {
    if (one.weight != Weight::derived) refuse_unproved(path, one.detail);
  }
}

void expect_tables(Database& database, const std::string& path) {
  constexpr std::array<std::string_view, 4> needed = {"record", "entry", "own_writer", "arrived"};
  const Schema schema = schema_in(database);
  for (const std::string_view name : needed) {
    const auto found = schema.find(std::string(name));
    if (found != schema.end() && is_plain_table(found->second)) continue;
    throw Trouble({TroubleKind::damaged, path, "it has no table " + std::string(name)});
  }
}

}  // namespace store
