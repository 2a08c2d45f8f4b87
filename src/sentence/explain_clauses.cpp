#include "sentence/explain_clauses.h"

#include <set>
#include <utility>

#include "sentence/describe.h"
#include "sentence/skip.h"

namespace sentence {
namespace {

class ClausesExplained {
 public:
  ClausesExplained(Cursor& cursor, const Kind& kind, std::vector<Misreading>& wrong)
      : cursor_(cursor), kind_(kind), wrong_(wrong), clauses_(kind, kind.make(said_.fact), said_) {}

  void explain(const HeadFound& found) {
    const bool starts_after_comma = kind_.head.has_comma_after() || !found.is_whole;
    if (starts_after_comma && !cursor_.is_at_clause_end()) explain_missing_comma(found);
    cursor_.take_comma();
    explain_all();
    tell_missing();
  }
  void explain_all() {
    while (!cursor_.is_at_end()) {
      explain_clause();
      if (!cursor_.take_comma()) break;
    }
  }

 private:
  // After the head there is neither a comma nor the end. After a guessed head the clause may
  // follow at once.
  void explain_missing_comma(const HeadFound& found) {
    if (!found.is_whole && !kind_.head.has_comma_after()) return;
    Trace trace;
    trace.farthest = cursor_.skip_blanks();
    trace.wanted.push_back({",", ","});
    wrong_.push_back(misreading_of(cursor_, trace));
    skip_clause(cursor_);
  }

  void explain_clause() {
    const std::size_t from = cursor_.skip_blanks();
    cursor_.trace_to(nullptr);
    if (!clauses_.take(cursor_)) return explain_failing(from);
    if (clauses_.is_twice()) wrong_.push_back(twice(from));
  }

  Misreading twice(std::size_t from) const {
    Misreading misreading;
    misreading.fault = Fault::said_twice;
    misreading.from = static_cast<std::uint16_t>(from);
    misreading.to = static_cast<std::uint16_t>(cursor_.at());
    misreading.read = std::string(cursor_.text().substr(from, cursor_.at() - from));
    return misreading;
  }

  void explain_failing(std::size_t from) {
    Trace all;
    all.farthest = from;
    std::vector<std::pair<const Clause*, std::size_t>> reaches;
    for (const Clause& clause : kind_.clauses) {
      Trace trace = attempt(clause, from, said_fact_.get(kind_));
      reaches.emplace_back(&clause, reach_of(trace));
      merge(all, trace);
    }
    for (const Clause& clause : common_clauses()) {
      logbook::Said scratch;
      if (takes_common(kind_, clause)) merge(all, attempt(clause, from, &scratch));
    }
    const Misreading misreading = misreading_of(cursor_, all);
    for (const auto& [clause, reach] : reaches) {
      const bool was_meant = reach > from && reach == reach_of(all);
      const bool is_near =
          wanted_clause(*clause).starts_with(misreading.nearest) && !misreading.nearest.empty();
      if (was_meant || is_near) meant_.insert(clause);
    }
    wrong_.push_back(misreading);
    skip_clause(cursor_);
  }

  Trace attempt(const Clause& clause, std::size_t from, void* owner) {
    Trace trace;
    trace.farthest = from;
    cursor_.go_to(from);
    cursor_.trace_to(&trace);
    clause.slot.take(cursor_, clause, owner);
    cursor_.trace_to(nullptr);
    cursor_.go_to(from);
    return trace;
  }

  void tell_missing() {
    for (const Clause& clause : kind_.clauses) {
      const bool is_missing =
          clause.is_needed && !clauses_.has(clause) && !meant_.contains(&clause);
      if (is_missing) wrong_.push_back(missing_at(cursor_.end(), {wanted_clause(clause)}));
    }
    if (!clauses_.needs_one() || !wrong_.empty()) return;
    std::vector<std::string> expected;
    for (const Clause& clause : kind_.clauses) expected.push_back(wanted_clause(clause));
    wrong_.push_back(missing_at(cursor_.end(), std::move(expected)));
  }

  // A fact that failing clauses may be tried on.
  struct Scratch {
    logbook::Fact fact;
    void* get(const Kind& kind) { return kind.make(fact); }
  };

  Cursor& cursor_;
  const Kind& kind_;
  std::vector<Misreading>& wrong_;
  logbook::Said said_;
  Clauses clauses_;
  Scratch said_fact_;
  std::set<const Clause*> meant_;
};

}  // namespace

void explain_clauses(Cursor& cursor, const HeadFound& found, std::vector<Misreading>& wrong) {
  ClausesExplained(cursor, *found.kind, wrong).explain(found);
}

std::vector<Misreading> explain_given_clauses(Cursor& cursor, const Kind& kind) {
  std::vector<Misreading> wrong;
  ClausesExplained(cursor, kind, wrong).explain_all();
  if (wrong.empty()) wrong.push_back(missing_at(cursor.at(), {"the clause that changes"}));
  return wrong;
}

}  // namespace sentence
