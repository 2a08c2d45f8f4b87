#include "sentence/findings.h"

#include <algorithm>
#include <utility>

#include "text/nearest.h"

namespace sentence {
namespace {

constexpr std::size_t most_hints = 1;

// The wanted word or known name that the typed word may have been meant for. One letter is near to
// every other: to offer C for F would make a wrong temperature of a right one.
std::string nearest_of(std::string_view word, const Trace& trace) {
  if (word.size() < 2) return {};
  std::vector<std::string> candidates;
  for (const Wanted& wanted : trace.wanted) {
    if (!wanted.word.empty() && wanted.word != ",") candidates.push_back(wanted.word);
  }
  candidates.insert(candidates.end(), trace.names.begin(), trace.names.end());
  const auto found = text::nearest(word, candidates, most_hints);
  if (found.empty()) return {};
  for (const Wanted& wanted : trace.wanted) {
    if (wanted.word == found.front()) return wanted.shown;
  }
  return found.front();
}

bool starts_another_sentence(std::string_view text, std::size_t at) {
  return at + 1 < text.size() && text[at] == '.' && blank_size(text, at + 1) != 0;
}

}  // namespace

std::size_t reach_of(const Trace& trace) {
  return trace.refused ? std::max(trace.farthest, trace.refused_at) : trace.farthest;
}

void merge(Trace& into, const Trace& other) {
  const bool is_refused_farther =
      other.refused && (!into.refused || other.refused_at > into.refused_at);
  if (is_refused_farther) {
    into.refused = other.refused;
    into.refused_at = other.refused_at;
  }
  if (other.farthest < into.farthest) return;
  if (other.farthest > into.farthest) {
    into.wanted.clear();
    into.names.clear();
    into.farthest = other.farthest;
  }
  for (const Wanted& wanted : other.wanted) {
    const bool is_there = std::any_of(into.wanted.begin(), into.wanted.end(),
                                      [&](const auto& w) { return w.shown == wanted.shown; });
    if (!is_there) into.wanted.push_back(wanted);
  }
  into.names.insert(into.names.end(), other.names.begin(), other.names.end());
}

Misreading misreading_of(const Cursor& cursor, const Trace& trace) {
  if (trace.refused) return *trace.refused;
  Cursor there = cursor;
  there.go_to(trace.farthest);
  const std::size_t from = there.skip_blanks();
  const std::string_view word = there.peek_word();
  Misreading misreading;
  misreading.fault = there.is_at_clause_end() ? Fault::missing : Fault::unknown_word;
  if (starts_another_sentence(cursor.text(), from)) misreading.fault = Fault::two_sentences;
  misreading.from = static_cast<std::uint16_t>(from);
  misreading.to = static_cast<std::uint16_t>(from + word.size());
  misreading.read = std::string(word);
  for (const Wanted& wanted : trace.wanted) misreading.expected.push_back(wanted.shown);
  if (misreading.fault == Fault::unknown_word) misreading.nearest = nearest_of(word, trace);
  return misreading;
}

Misreading missing_at(std::size_t at, std::vector<std::string> expected) {
  Misreading misreading;
  misreading.fault = Fault::missing;
  misreading.from = static_cast<std::uint16_t>(at);
  misreading.to = misreading.from;
  misreading.expected = std::move(expected);
  return misreading;
}

}  // namespace sentence
