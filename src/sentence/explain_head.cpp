#include "sentence/explain_head.h"

#include <algorithm>
#include <iterator>
#include <optional>

#include "sentence/skip.h"

namespace sentence {
namespace {

struct Attempt {
  const Kind* kind = nullptr;
  Trace trace;
  bool is_whole = false;
  bool is_meant = false;  // its verb stands in the line, but a name before it is not to be taken
  std::size_t reach = 0;  // the end of a whole head, else how far it came
};

// The last words of a head: its verb. Empty if it ends in a word of a list.
std::string_view verb_of(const Kind& kind) {
  std::string_view verb;
  for (const Piece& piece : kind.head.pieces()) {
    if (piece.kind == PieceKind::words && piece.text != ":") verb = piece.text;
  }
  return verb;
}

Attempt attempt(Cursor cursor, const Kind& kind) {
  Attempt result;
  result.kind = &kind;
  result.trace.farthest = cursor.at();
  const std::string_view verb = verb_of(kind);
  const bool has_verb = !verb.empty() && end_of_words(cursor, verb).has_value();
  cursor.trace_to(&result.trace);
  logbook::Fact fact;
  result.is_whole = read_head(cursor, kind, kind.make(fact));
  result.is_meant = has_verb && result.trace.refused.has_value();
  result.reach = result.is_whole ? cursor.at() : reach_of(result.trace);
  return result;
}

// The longest whole head; without one, a value understood but refused outweighs how far it came.
bool is_better(const Attempt& one, const Attempt& other) {
  if (one.is_whole != other.is_whole) return one.is_whole;
  if (one.is_meant != other.is_meant) return one.is_meant;
  return one.reach > other.reach;
}

bool ends_with_verb(const Kind& kind) { return kind.head.pieces().back().kind == PieceKind::words; }

// Where clauses go on after the verb that ends there.
void go_on_after(Cursor& cursor, const Kind& kind, std::size_t end_of_verb) {
  cursor.go_to(end_of_verb);
  if (!ends_with_verb(kind)) skip_clause(cursor);
}

// Goes on by the verb, if it stands further on in the line although the subject was not read.
bool go_on_by_verb(Cursor& cursor, const Kind& kind) {
  const std::string_view verb = verb_of(kind);
  if (verb.empty()) return false;
  const std::optional<std::size_t> end = end_of_words(cursor, verb);
  if (end) go_on_after(cursor, kind, *end);
  return end.has_value();
}

// Goes on after a mistyped verb.
bool go_on_by_guess(Cursor& cursor, const Kind& kind, const Misreading& misreading) {
  const std::string_view verb = verb_of(kind);
  if (misreading.nearest.empty() || verb != misreading.nearest) return false;
  go_on_after(cursor, kind, misreading.to);
  return true;
}

HeadFound find_kind(Cursor& cursor, const std::vector<Attempt>& attempts,
                    const Misreading& misreading) {
  for (const Attempt& attempt : attempts) {
    if (go_on_by_verb(cursor, *attempt.kind)) return {attempt.kind, false};
  }
  for (const Attempt& attempt : attempts) {
    if (go_on_by_guess(cursor, *attempt.kind, misreading)) return {attempt.kind, false};
  }
  return {};
}

}  // namespace

HeadFound explain_head(Cursor& cursor, std::vector<Misreading>& wrong) {
  const std::size_t start = cursor.skip_blanks();
  std::vector<Attempt> attempts;
  for (const Kind* kind : all_kinds()) attempts.push_back(attempt(cursor, *kind));
  std::stable_sort(attempts.begin(), attempts.end(), is_better);
  const Attempt best = attempts.front();
  if (best.is_whole) {
    cursor.go_to(best.reach);
    return {best.kind, true};
  }
  if (!best.trace.inner.empty()) {
    wrong.insert(wrong.end(), best.trace.inner.begin(), best.trace.inner.end());
    return {};
  }
  std::erase_if(attempts, [&](const Attempt& one) { return one.reach < best.reach; });
  Trace all;
  all.farthest = start;
  for (const Attempt& one : attempts) merge(all, one.trace);
  Misreading misreading = misreading_of(cursor, all);
  const bool is_nothing = all.farthest == start && misreading.fault == Fault::unknown_word;
  if (is_nothing) misreading.fault = Fault::unknown_kind;
  wrong.push_back(misreading);
  return find_kind(cursor, attempts, misreading);
}

}  // namespace sentence
