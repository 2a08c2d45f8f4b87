// How a part whose limits differ from model to model uses up its life.
#include "sentence/kinds/kinds.h"
#include "sentence/sorts/things.h"

namespace sentence {

using logbook::LimitThatStays;
using logbook::SharesByFractions;
using logbook::ShorterLimitStays;

namespace {

constexpr Word limit_that_stays_words[] = {word(LimitThatStays::shorter, "shorter limit stays")};

}  // namespace

template <>
inline constexpr Sort sort_of<LimitThatStays> = words<LimitThatStays>("limit-that-stays",
                                                                      limit_that_stays_words);

namespace {

constexpr Clause by_fractions_clauses[] = {
    clause<&SharesByFractions::source>("source {source}", "where this stands")};
constexpr Clause shorter_limit_clauses[] = {
    clause<&ShorterLimitStays::limit>("{limit}", "which limit holds once it was under several"),
    clause<&ShorterLimitStays::source>("source {source}", "where this stands")};

}  // namespace

constexpr Kind declarations::shares_by_fractions = kind<SharesByFractions,
                                                        &SharesByFractions::scope>(
    "shares-by-fractions", "{scope} shares lives by fractions,", by_fractions_clauses,
    {"a part that has another limit on each model: the parts of its life used on each are added",
     "2026-01-01 part number PN-4411 shares lives by fractions.\n"
     "2026-01-01 part number PN-4411 shares lives by fractions, "
     "source \"limitations rev 4\"."});
constexpr Kind declarations::shorter_limit_stays =
    kind<ShorterLimitStays, &ShorterLimitStays::scope>(
        "shorter-limit-stays", "{scope} shares lives,", shorter_limit_clauses,
        {"a part that has another limit on each model: the shortest it ever came under holds for "
         "good",
         "2026-01-01 part number PN-4411 shares lives, shorter limit stays.\n"
         "2026-01-01 part number PN-4411 shares lives, shorter limit stays, "
         "source \"limitations rev 4\"."});

}  // namespace sentence
