// cases/answer.h: what is expected of an answer, held against its JSON and its words.
#pragma once

#include <nlohmann/json.hpp>
#include <string>
#include <vector>

#include "cases/case_file.h"

namespace cases {

struct Answer {
  int exit = -1;
  nlohmann::json json;  // null if the answer was none
  std::string text;     // as people read it, complaints included
};

// What the answer is otherwise than the line expects; empty: it is as expected.
std::string against(const std::string& expectation, const Answer& answer);

}  // namespace cases
