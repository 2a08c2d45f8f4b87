// Puts case files through the built program: run_cases PROGRAM FOLDER|FILE… Further folders may
// be named by the variable TIMEWORN_MORE_CASES, separated by colons.
#include <algorithm>
#include <cstdlib>
#include <exception>
#include <filesystem>
#include <iostream>

#include "cases/bench.h"
#include "cases/pieces.h"

namespace {

namespace fs = std::filesystem;

std::vector<fs::path> case_files(const std::vector<std::string>& places) {
  std::vector<fs::path> files;
  for (const std::string& place : places) {
    if (!fs::is_directory(place)) {
      files.emplace_back(place);
      continue;
    }
    for (const auto& file : fs::recursive_directory_iterator(place)) {
      if (file.path().extension() == ".case") files.push_back(file.path());
    }
  }
  std::sort(files.begin(), files.end());
  return files;
}

std::vector<cases::Failure> failures_of(const std::string& program, const fs::path& path) {
  try {
    if (!fs::exists(path)) return {{0, "there is no such file"}};
    const cases::CaseFile file = cases::read_case(path.string(), cases::file_text(path));
    return cases::Bench(program, file).failures();
  } catch (const std::exception& trouble) {
    return {{0, trouble.what()}};
  }
}

void tell(const fs::path& path, const std::vector<cases::Failure>& failures) {
  for (const cases::Failure& failure : failures) {
    std::cout << path.string() << ":" << failure.line << ": " << failure.what << "\n";
  }
}

std::vector<std::string> places(int count, char** words) {
  std::vector<std::string> result(words + 2, words + count);
  const char* more = std::getenv("TIMEWORN_MORE_CASES");
  if (more == nullptr || *more == '\0') return result;
  for (std::string& place : cases::pieces_of(more, ":")) result.push_back(std::move(place));
  return result;
}

}  // namespace

int main(int count, char** words) {
  if (count < 3) {
    std::cerr << "Use: run_cases PROGRAM FOLDER|FILE...\n";
    return 2;
  }
  std::size_t passed = 0;
  std::size_t failed = 0;
  const std::string program = fs::absolute(words[1]).string();
  for (const fs::path& path : case_files(places(count, words))) {
    const auto failures = failures_of(program, path);
    tell(path, failures);
    ++(failures.empty() ? passed : failed);
  }
  std::cout << "cases: " << passed << " passed, " << failed << " failed\n";
  return failed == 0 && passed > 0 ? 0 : 1;
}
