// The proving half of store/book.h: everything that can be checked without knowing what flying is.
#include <algorithm>
#include <iterator>
#include <utility>

#include "store/arrival_digests.h"
#include "store/book.h"
#include "store/finding_lists.h"
#include "store/inside.h"
#include "store/schema_proof.h"
#include "store/sql.h"
#include "store/walk.h"

namespace store {
namespace {

// The file as SQLite sees it.
void check_file(Database& database, Depth depth, std::vector<Finding>& findings) {
  Statement integrity =
      database.statement(depth == Depth::whole ? "PRAGMA integrity_check" : "PRAGMA quick_check");
  while (integrity.next()) {
    if (integrity.text(0) != "ok") findings.push_back({"file", {}, std::string(integrity.text(0))});
  }
  Statement keys = database.statement("PRAGMA foreign_key_check");
  while (keys.next()) {
    findings.push_back({"derived", {}, "a row of " + std::string(keys.text(0)) + " leads nowhere"});
  }
}

// What the schema has otherwise than ours; how much it weighs.
SchemaDifference::Weight check_schema(Database& database, Form form,
                                      std::vector<Finding>& findings) {
  using Weight = SchemaDifference::Weight;
  auto heaviest = Weight::derived;
  for (const SchemaDifference& one : schema_differences(database, form)) {
    const std::string what = one.weight == Weight::derived ? "form"
                             : one.weight == Weight::guard ? "guard"
                                                           : "schema";
    findings.push_back({what, {}, one.detail});
    heaviest = std::max(heaviest, one.weight);
  }
  return heaviest;
}

// Each row that the lists lack or have too many.
void check_lists(Database& database, Listed expected, std::vector<Finding>& findings) {
  std::sort(expected.begin(), expected.end());
  const Listed there = listed(database);
  Listed wrong;
  std::set_symmetric_difference(expected.begin(), expected.end(), there.begin(), there.end(),
                                std::back_inserter(wrong));
  for (const auto& [place, row] : wrong) {
    Statement found =
        database.statement("SELECT writer, number, digest FROM arrived WHERE place = ?", place);
    const auto entry = found.next() ? std::optional(entry_in(database, found, 0)) : std::nullopt;
    findings.push_back({"derived", entry, "the list " + row.table + " under " + row.thing});
  }
}

void check_entries(BookInside& inside, Depth depth, std::vector<Finding>& findings) {
  Database& database = inside.database;
  Walked walked = walk(database, inside.record, depth, findings);
  if (depth == Depth::quick) return;
  if (has_our_table(database, "proof") && walked.proved != proofs_in(database)) {
    findings.push_back({"derived", {}, "the list of proved signatures"});
  }
  inside.proved = std::move(walked.proved);
  if (depth != Depth::whole) return;
  for (const logbook::EntryId& entry : changed_arrivals(database)) {
    findings.push_back({"arrived", entry, "when it came is not what was noted then"});
  }
  if (has_other_derived_form(database)) return;
  check_lists(database, std::move(walked.expected), findings);
}

// The mark speaks for this machine alone, so another one's books are without this finding.
void check_mark(const BookInside& inside, std::vector<Finding>& findings) {
  if (!inside.known.missing) return;
  findings.push_back({"mark", inside.known.missing,
                      "this machine wrote it, and the book does not hold it as written: it was "
                      "cut off or made anew, or this is an older copy"});
}

std::vector<Finding> check_all(BookInside& inside, Depth depth) {
  Database& database = inside.database;
  std::vector<Finding> findings;
  try {
    check_file(database, depth, findings);
    check_mark(inside, findings);
    const auto weight =
        check_schema(database, inside.is_newer ? Form::newer : Form::ours, findings);
    const bool is_legible = inside.is_newer || weight != SchemaDifference::Weight::table;
    if (is_legible) check_entries(inside, depth, findings);
  } catch (const Trouble& trouble) {
    // A page that cannot be read ends the walk; what was found so far stands.
    if (trouble.what().kind != logbook::TroubleKind::damaged) throw;
    findings.push_back({"file", {}, trouble.what().detail});
  }
  return findings;
}

}  // namespace

std::vector<Finding> Book::check(Depth depth) const {
  const Look look(*this);
  return check_all(*inside_, depth);
}

}  // namespace store
