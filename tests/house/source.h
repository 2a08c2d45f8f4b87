// house/source.h: one file of the tree, and what a rule finds wrong in it.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

namespace house {

// A file: its path from the root of the tree, with forward slashes, and its text.
struct Source {
  std::string path;
  std::string text;
};

// What is wrong, where, and what to do instead. Lines count from 1; 0 means the file as a whole.
struct Finding {
  std::string path;
  std::size_t line = 0;
  std::string what;
};
using Findings = std::vector<Finding>;

// One line a finding, `path:line: what`; empty when there is none.
std::string told(const Findings& findings);

void append(Findings& findings, const Findings& more);

// Every text file below the root except what is built and what git keeps.
std::vector<Source> read_tree(const std::string& root);

std::vector<std::string_view> lines_of(std::string_view text);
std::string_view trimmed(std::string_view text);
std::size_t line_at(std::string_view text, std::size_t offset);

bool is_under(std::string_view path, std::string_view folder);
bool is_code(std::string_view path);
// The folder of src that a file belongs to, such as `reckon`; `main` for src/main.cpp; else empty.
std::string floor_of(std::string_view path);

// Where the word stands whole in the text, from the given offset on; npos when it does not.
// Letters, digits and underscores continue a word.
std::size_t find_word(std::string_view text, std::string_view word, std::size_t from = 0);

}  // namespace house
