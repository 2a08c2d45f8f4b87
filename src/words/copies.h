// words/copies.h: what is said about copies of the book.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "logbook/entry.h"
#include "quantity/calendar.h"

namespace words {

// Entries that no copy elsewhere holds. Times by one clock.
struct NotCopied {
  std::int64_t entries = 0;
  quantity::Instant since;                       // when the oldest of them came
  std::optional<quantity::Instant> newest_copy;  // absent: no copy lies elsewhere
};
// "The newest copy elsewhere is 3 days old and lacks 12 entries. …" Nothing as long as the oldest
// entry without a copy came at most 24 hours ago (AMC1 ML.A.305(e), AMC 21.B.55(a): a copy
// elsewhere within 24 hours of a new entry).
std::string not_copied_text(const NotCopied& not_copied, quantity::Instant now);
// That the book ends before an entry which this machine wrote.
std::string cut_or_older_text(const logbook::EntryId& missing);

}  // namespace words
