// store/schema_proof.h: whether a file's tables, views, indexes and triggers are those of a book.
// Whatever else stands in a schema would be run by merely reading the file.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "store/sqlite.h"

namespace store {

struct SchemaDifference {
  enum class Weight {
    derived,  // a table that is worked out has another form, and is made anew
    guard,    // the entries can be read, but something was taken away or added
    table,    // a table of the record is not what a book has: nothing in it can be believed
  };
  Weight weight;
  std::string detail;  // "it lacks the trigger entry_is_never_changed"
};
// newer: a version that we do not know may have tables that we do not know.
enum class Form { ours, newer };
// What is missing, what is there besides, and what is other than in a book that we would make.
std::vector<SchemaDifference> schema_differences(Database& database, Form form = Form::ours);
// True if the derived table is there as this version makes it.
bool has_our_table(Database& database, std::string_view name);
// True if a derived table is missing or has another form than this version gives it.
bool has_other_derived_form(Database& database);

// Throws not_proved with the first thing that is wrong with a file from elsewhere: its pages, its
// references, its schema if it is ours.
void expect_whole(Database& database, Form form, const std::string& path);
// Throws not_a_book or damaged unless the tables that every version has are plain tables.
void expect_tables(Database& database, const std::string& path);

}  // namespace store
