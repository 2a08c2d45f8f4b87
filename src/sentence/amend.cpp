// Corrections as people type them: only the clauses that change.
#include "sentence/explain.h"
#include "sentence/explain_clauses.h"
#include "sentence/prepare.h"
#include "sentence/reader.h"

namespace sentence {
namespace {

using logbook::Said;

// The old fact with the clauses of the new one in their places.
Said amended(const Said& old, const Kind& kind, const Clauses& clauses) {
  Said result = old;
  clauses.amend(kind.at(result.fact), result);
  return result;
}

}  // namespace

Read amend(std::string_view clauses_text, const Said& old, const Reading& reading) {
  Read result;
  result.wrong = faults_of_bytes(clauses_text);
  if (!result.wrong.empty()) return result;
  const Kind& kind = kind_of(old.fact);
  Said given;
  Clauses clauses(kind, kind.make(given.fact), given);
  Cursor cursor(clauses_text, end_of_language(clauses_text), reading);
  cursor.spans_to(&result.spans);
  const bool is_read = !cursor.is_at_end() && read_clauses(cursor, clauses);
  if (is_read) {
    clauses.settle();
    result.said = amended(old, kind, clauses);
    return result;
  }
  result.spans.clear();
  Cursor again(clauses_text, end_of_language(clauses_text), reading);
  result.wrong = explain_given_clauses(again, kind);
  return result;
}

}  // namespace sentence
