// tests/together/program.h: the built program, started by a shell in a clerk's folder, as many
// times at once as wanted.
#pragma once

#include <cstdio>
#include <string>

#include "faults/clerk.h"

namespace together {

struct Ended {
  int code = 0;
  std::string printed;  // both streams
};

// A shell with a script in which "timeworn" is the program, the book is the clerk's, and nothing of
// the user's own is read.
class Started {
 public:
  Started(const faults::Clerk& clerk, const std::string& script);
  ~Started();
  Started(const Started&) = delete;
  Started& operator=(const Started&) = delete;
  // Waits for its end.
  Ended ended();

 private:
  std::FILE* pipe_;
};

Ended run(const faults::Clerk& clerk, const std::string& script);

}  // namespace together
