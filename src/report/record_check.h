// report/record_check.h: what check found: chain and file, derived figures, doubts and questions.
#pragma once

#include <string>
#include <vector>

#include "reckon/check.h"
#include "report/refused.h"
#include "report/sheet.h"

namespace report {

// A fault of the book itself, as store or the derived figures found it.
struct BookFault {
  std::string what;
  std::string entry;  // "K7QXM-12" or empty
  std::string detail;
};
// How far the chain of one base is proved.
struct ProvedTo {
  std::string newest;  // "K7QXM-130"
  std::string last;    // the last that is proved; meaningless unless some are
  std::string next;    // from here on nothing is proved; meaningless if all are
  bool are_some = true;
  bool are_all = true;
};
struct Checked {
  std::vector<BookFault> faults;
  std::vector<reckon::RecordFinding> findings;
  std::vector<reckon::RecordFinding> accepted;  // doubts that their sentences accept
  std::vector<reckon::Question> questions;
  std::vector<RefusedSignature> refused;
  std::int64_t entries = 0;
  std::int64_t figures_compared = 0;  // running totals proved in two more ways
  bool is_quick = false;              // the file and the chain only
  std::vector<ProvedTo> proved;       // only where there are faults
  std::vector<std::string> notes;     // sentences that ask for nothing: an old sheet holds
  std::vector<std::string> heads;     // "K7QXM-130 3f2a…": newest digest per writer
};
Answer record_check(const Checked& checked, const Sheet& sheet);

}  // namespace report
