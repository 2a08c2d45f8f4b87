// Open questions, and the caution that stands below every answer.
#include "words/grammar.h"
#include "words/words.h"

namespace words {

std::string question_text(const reckon::Question& question) {
  std::vector<std::string> entries;
  for (const auto& entry : question.entries) entries.push_back(entry_name(entry));
  std::vector<std::string> things;
  for (const auto& thing : question.about) things.push_back(thing_name(thing));
  std::string text = fill("Question {}, {}", {question.name, question.class_});
  if (!entries.empty()) text += fill(": {}", {listed(entries, "and")});
  if (!things.empty()) text += fill(" about {}", {listed(things, "and")});
  if (!question.figure.empty()) text += fill(", {}", {question.figure});
  return text + ". Correct or strike what is wrong; until then the safe side counts.";
}

std::string_view caution() {
  return "This reports the record only. Approved maintenance data, local rules and a licensed "
         "person decide.";
}

}  // namespace words
