// tests/sentence/pieces_of_sentence.h: a canonical sentence taken apart into head and clauses.
#pragma once

#include <string>
#include <vector>

#include "sentence/table.h"

namespace sentence {

struct Pieces {
  std::string head;  // with the day, and with what parts it from the first clause
  std::vector<std::string> clauses;
};
Pieces pieces_of(const std::string& text);
std::string put_together(const Pieces& pieces);
const Sort& day_sort();

}  // namespace sentence
