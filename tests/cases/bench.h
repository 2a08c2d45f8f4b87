// cases/bench.h: one case's book in a folder of its own, and what is done with it.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "cases/answer.h"
#include "cases/case_file.h"
#include "cases/process.h"

namespace cases {

struct Failure {
  std::size_t line = 0;
  std::string what;
};

class Bench {
 public:
  Bench(std::string program, const CaseFile& file);
  // Everything that came otherwise than the file says; after a book that would not begin, no more.
  std::vector<Failure> failures();

 private:
  void begin();
  void take(const Step& step);
  void say(const Step& step);
  void accept(const Step& step);
  void refuse(const Step& step, bool is_acceptable);
  void type(const Step& step);
  void perform(const Step& step);
  void ask(const Step& step);

  Outcome run(const std::vector<std::string>& words, const std::string& input = {});
  Answer answer(const Line& command);
  std::string with_names(const std::string& text) const;  // {a} becomes K7QXM-12
  void name(const std::string& label, const std::string& entry, std::size_t line);
  void fail(std::size_t line, const std::string& what);
  void hold(const Line& expectation, const Answer& answer);

  std::string program_;
  const CaseFile& file_;
  ScratchFolder folder_;
  std::map<std::string, std::string> names_;
  std::vector<Failure> failures_;
};

}  // namespace cases
