// The clauses that every kind may take.
#include "sentence/kinds/kinds.h"
#include "sentence/sorts/figures.h"
#include "sentence/sorts/names.h"

namespace sentence {

using logbook::AcceptedDoubt;
using logbook::FromRow;
using logbook::Said;

namespace {

constexpr Option from_row_options[] = {option<&FromRow::file, &FromRow::row>("{file} row {row}")};
constexpr Option although_options[] = {
    option<&AcceptedDoubt::doubt, &AcceptedDoubt::because>("{doubt} because {because}")};

}  // namespace

template <>
inline constexpr Sort sort_of<FromRow> = choice<FromRow>("row-of-file", from_row_options);
template <>
inline constexpr Sort sort_of<AcceptedDoubt> = choice<AcceptedDoubt>("accepted-doubt",
                                                                     although_options);

namespace {

constexpr std::string_view by_name = "by";

constexpr Clause shared_clauses[] = {
    clause<&Said::instead_of>("instead of entry {instead_of}",
                              "the definition that this one replaces"),
    clause<&Said::paper>("paper {paper}", "the paper on which it stands"),
    clause<&Said::by>("by {by}", "who did or decided it"),
    clause<as<&Said::scan, &scan_digest_sort>>("scan {scan}", "the SHA-256 of a scanned page"),
    clause<&Said::from>("from {from}", "the row of the table that it was taken from"),
    clause<&Said::remark>("remark {remark}", "anything else"),
    clause<&Said::although>("although {although}", "a doubt that was accepted, and why")};

}  // namespace

std::span<const Clause> common_clauses() { return shared_clauses; }

bool takes_common(const Kind& kind, const Clause& clause) {
  switch (kind.common) {
    case Common::all:
      return true;
    case Common::without_by:
      return clause.name != by_name;
    case Common::none:
      return false;
  }
  return false;
}

}  // namespace sentence
