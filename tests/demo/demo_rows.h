// demo/demo_rows.h: the table in demo_db/README.md, and the sentences of demo_db/story.record by
// the numbers that their entries get.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "logbook/fact.h"

namespace demo {

// One row of the table: what is shown, its name in that sort, the entry, and words of its sentence.
struct Row {
  std::string sort;
  std::string name;
  std::string writer;  // short name
  int number = 0;
  std::string words;
};

// All rows with a name of an entry in the third column, in the order of the page.
std::vector<Row> rows();

struct Sentence {
  std::string text;
  logbook::Said said;
};
// By number of entry. A line that is no sentence fails the test.
std::map<int, Sentence> sentences();

}  // namespace demo
