// words/receipts.h: what is said after something was saved.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "logbook/entry.h"
#include "reckon/lives.h"
#include "reckon/unreached.h"

namespace words {

// "Saved K7QXM-512 (today): 2026-03-04 aircraft ZZ-KIT flew 1.7 h."
std::string saved_text(const logbook::Entry& entry, bool day_was_left_out);
// "Saved 240 entries, K7QXM-3 to K7QXM-242."
std::string saved_many_text(const std::vector<logbook::Entry>& entries);
// "ZZ-KIT now has 4323.3 h and 5611 landings."
std::string now_has_text(const logbook::Thing& thing, const reckon::Figure& hours,
                         const std::optional<reckon::Figure>& count,
                         const logbook::Counter& counter);
// "Life of part T1 D-1 went over by 0.6 h in this flight."
std::string went_over_text(const reckon::Item& item, const reckon::Side& side, bool is_one_flight);

// "When these came is not what was noted then: K7QXM-3. …"
std::string changed_arrivals_text(const std::vector<logbook::EntryId>& entries);
// "Nothing of model TS-4O is on record, so this rules nothing yet. Did you mean TS-40?"
std::string unreached_text(const reckon::Unreached& rule);

}  // namespace words
