// tests/faults/pages.h: what lies where in a book's file, and what the file holds, past all of our
// own reading: by the database's own program library.
#pragma once

#include <set>
#include <string>

namespace faults {

// Puts the book into pages of the smallest size, so that little of the file is empty.
void put_into_small_pages(const std::string& path);

// In bytes, as the file's first page says (sqlite.org/fileformat2.html, 1.3.2).
std::size_t page_size_of(const std::string& content);

// The pages of the schema and of the tables that are never changed, with what they spill over into
// (sqlite.org/dbstat.html). Pages count from zero here.
std::set<std::size_t> pages_never_changed(const std::string& path);

// Every row of every table and all of the schema as text; empty if the database finds a fault in
// its own structure (sqlite.org/pragma.html#pragma_integrity_check) or cannot read them.
std::string rows_of(const std::string& path);

}  // namespace faults
