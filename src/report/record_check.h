// report/record_check.h: what check found: chain and file, derived figures, doubts and questions.
#pragma once

#include <string>
#include <vector>

#include "reckon/check.h"
#include "report/sheet.h"

namespace report {

// A fault of the book itself, as store or the derived figures found it.
struct BookFault {
  std::string what;
  std::string entry;  // "K7QXM-12" or empty
  std::string detail;
};
struct Checked {
  std::vector<BookFault> faults;
  std::vector<reckon::RecordFinding> findings;
  std::vector<reckon::RecordFinding> accepted;  // doubts that their sentences accept
  std::vector<reckon::Question> questions;
  std::int64_t entries = 0;
  std::int64_t figures_compared = 0;  // running totals proved in two more ways
  std::vector<std::string> heads;     // "K7QXM-130 3f2a…": newest digest per writer
};
Answer record_check(const Checked& checked, const Sheet& sheet);

}  // namespace report
