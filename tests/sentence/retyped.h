// tests/sentence/retyped.h: canonical sentences typed the way people type. What stands in quotes
// stays as it is, but for the way that leaves the quotes out.
#pragma once

#include <string>
#include <vector>

namespace retyped {

struct Way {
  const char* name;
  std::string (*type)(const std::string& canonical);
};
const std::vector<Way>& ways();

}  // namespace retyped
