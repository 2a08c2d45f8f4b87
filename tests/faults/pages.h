// tests/faults/pages.h: which pages of a book's file hold permanent and local tables.
#pragma once

#include <set>
#include <string>

namespace faults {

constexpr std::size_t page_size = 4096;

// The first page, and every page of the trees of these tables, found by walking down from the root
// pages that the schema names (sqlite.org/fileformat2.html, 1.6). Pages count from zero here.
std::set<std::size_t> pages_never_changed(const std::string& path, const std::string& content);

}  // namespace faults
