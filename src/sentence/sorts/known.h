// sentence/sorts/known.h: names of the book, as people type them without class or quotes. They only
// widen what is read; nothing canonical means anything else because of them.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "sentence/cursor.h"

namespace sentence {

// True if the name stands at the cursor, in any case and with any blanks; then it is taken.
bool take_known(Cursor& cursor, std::string_view name);

// What a known name stands for, and its canonical text for the question which one is meant.
template <class Value>
struct Candidate {
  std::string_view name;
  Value value;
  std::string shown;
};

// Takes the longest known name at the cursor; several things with it are refused, naming two.
// Nothing is taken, and the names are kept as hints, if none is there.
template <class Value>
bool take_only(Cursor& cursor, const std::vector<Candidate<Value>>& candidates, Value& value);

// Refuses the text from there to the cursor, because both have this name.
bool refuse_two_things(Cursor& cursor, std::size_t from, const std::string& first,
                       const std::string& second);

template <class Value>
bool take_only(Cursor& cursor, const std::vector<Candidate<Value>>& candidates, Value& value) {
  const std::size_t start = cursor.skip_blanks();
  std::size_t farthest = start;
  std::vector<const Candidate<Value>*> found;
  for (const Candidate<Value>& candidate : candidates) {
    cursor.go_to(start);
    if (!take_known(cursor, candidate.name) || cursor.at() < farthest) {
      cursor.want_name(start, candidate.name);
      continue;
    }
    if (cursor.at() > farthest) found.clear();
    farthest = cursor.at();
    const bool is_new = found.empty() || !(found.front()->value == candidate.value);
    if (is_new) found.push_back(&candidate);
  }
  cursor.go_to(farthest);
  if (found.empty()) return false;
  if (found.size() > 1) {
    return refuse_two_things(cursor, start, found[0]->shown, found[1]->shown);
  }
  value = found.front()->value;
  return true;
}

}  // namespace sentence
