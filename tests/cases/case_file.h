// cases/case_file.h: what stands in a .case file (README.md here says how it is written).
#pragma once

#include <string>
#include <vector>

namespace cases {

enum class Act {
  say,      // sentences that must all be taken, through `read -`
  accept,   // a doubtful sentence, taken with a reason
  refuse,   // a sentence that must be refused, whatever reason is given
  doubt,    // a sentence that must be refused, and is taken with a reason; nothing is kept of it
  type,     // a sentence as people type it, and its canonical form; nothing is kept of it
  perform,  // a command that must succeed
  ask,      // a command whose answer is looked at
};

struct Line {
  std::size_t number = 0;
  std::string text;
};

// One block: what is done, and what must come of it.
struct Step {
  Act act = Act::say;
  Line what;                // the sentence or command; of say: its line
  std::string label;        // {label} stands for the entry's name from here on
  std::vector<Line> lines;  // of say: sentences; else: expectations
};

struct CaseFile {
  std::string name;
  std::string source;
  std::string today = "2025-03-10";
  std::string settings;  // further options of `new`
  std::vector<Step> steps;
  std::vector<std::string> wrong;  // what cannot be read, with its line
};

CaseFile read_case(const std::string& name, const std::string& text);

// "a = 2025-03-04 aircraft …" has the label a.
std::string take_label(std::string& text);

}  // namespace cases
