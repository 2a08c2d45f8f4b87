// sentence/cursor.h: a place in one typed line, and what can be taken from there. It knows blanks,
// words, numbers and quotes, and nothing of the language.
#pragma once

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "sentence/sentence.h"

namespace sentence {

// What was wanted at the farthest place that was reached: kept only while a failing line is
// explained.
struct Wanted {
  std::string shown;  // "took off", "hours such as 1.7 h"
  std::string word;   // the word to compare with; empty for sorts
};
struct Trace {
  std::size_t farthest = 0;
  std::vector<Wanted> wanted;
  std::vector<std::string> names;     // known names that would have done there
  std::optional<Misreading> refused;  // understood, but not to be taken
  std::size_t refused_at = 0;
  std::vector<Misreading> inner;  // faults of the sentence inside this one
};

class Cursor {
 public:
  Cursor(std::string_view text, std::size_t end, const Reading& reading)
      : text_(text), end_(end), reading_(&reading) {}

  std::string_view text() const { return text_; }
  std::size_t at() const { return at_; }
  std::size_t end() const { return end_; }
  void go_to(std::size_t at) { at_ = at; }
  const Known* known() const { return takes_short_forms_ ? reading_->known : nullptr; }
  const Reading& reading() const { return *reading_; }
  // While false, short forms are not looked for. Returns what it was.
  bool take_short_forms(bool takes);

  // The next place that is no blank; the cursor goes there.
  std::size_t skip_blanks();
  bool is_at_end();
  // At the end, or at a comma that is no decimal comma.
  bool is_at_clause_end();
  bool take_comma();
  // The words, in any case, with blanks between them; nothing is taken unless all are there.
  bool take_words(std::string_view words);
  // Digits with points, commas and colons inside: 1.7, 1,7, 1:42, -12. Empty if there is none.
  std::string_view take_number();
  std::string_view take_signed_number();
  // Letters, digits, hyphens and slashes. Empty if there are none, or if they go on as no name
  // does.
  std::string_view take_bare();
  // Everything up to a blank or a comma that is no decimal comma.
  std::string_view take_blankless();
  // What stands between quotes: unescaped, in form C, blanks trimmed and collapsed.
  std::optional<std::string> take_quoted();
  // The word at the cursor, for a message.
  std::string_view peek_word() const;

  Trace* trace() const { return trace_; }
  void trace_to(Trace* trace) { trace_ = trace; }
  void want(std::size_t at, std::string_view shown, std::string_view word);
  void want_name(std::size_t at, std::string_view name);
  // The text from a place up to the cursor was understood, but is not taken. Always false.
  bool refuse(std::size_t from, Fault fault);
  bool refuse(Misreading misreading);

  std::vector<ClauseSpan>* spans() const { return spans_; }
  void spans_to(std::vector<ClauseSpan>* spans) { spans_ = spans; }

 private:
  bool take_word(std::string_view word);

  std::string_view text_;
  std::size_t at_ = 0;
  std::size_t end_;
  const Reading* reading_;
  bool takes_short_forms_ = true;
  Trace* trace_ = nullptr;
  std::vector<ClauseSpan>* spans_ = nullptr;
};

// Takes without a word about what was wanted: for further ways to type what was asked for already.
template <class Takes>
bool take_quietly(Cursor& cursor, Takes takes) {
  Trace* trace = cursor.trace();
  cursor.trace_to(nullptr);
  const bool is_taken = takes();
  cursor.trace_to(trace);
  return is_taken;
}

inline constexpr std::string_view no_break_space = "\xC2\xA0";
// Blank, tab or no-break space; how many bytes, 0 if none.
std::size_t blank_size(std::string_view text, std::size_t at);
// True if the comma there stands between clauses.
bool is_clause_comma(std::string_view text, std::size_t at);
// The end of the quoted text whose opening mark stands there: one past its closing mark. Empty if
// it is not closed, or if no quote opens there.
std::optional<std::size_t> end_of_quote(std::string_view text, std::size_t at);
bool opens_quote(std::string_view text, std::size_t at);

}  // namespace sentence
