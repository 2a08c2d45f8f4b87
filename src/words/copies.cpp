#include "words/copies.h"

#include "words/grammar.h"
#include "words/words.h"

namespace words {

namespace {

constexpr std::int64_t hour = 3600;
constexpr std::int64_t longest_without_copy = 24 * hour;

// Whole hours up to two days, then whole days; both rounded down.
std::string age_text(std::int64_t seconds) {
  const std::int64_t hours = seconds / hour;
  return hours < 48 ? counted(hours, "hour", "hours") : counted(hours / 24, "day", "days");
}

}  // namespace

std::string not_copied_text(const NotCopied& not_copied, quantity::Instant now) {
  if ((now - not_copied.since).count() <= longest_without_copy) return {};
  const std::string entries = counted(not_copied.entries, "entry", "entries");
  if (!not_copied.newest_copy) {
    return fill("No copy of this book lies elsewhere; it holds {}. Say timeworn backup FOLDER.",
                {entries});
  }
  return fill("The newest copy elsewhere is {} old and lacks {}. Say timeworn backup.",
              {age_text((now - *not_copied.newest_copy).count()), entries});
}

std::string cut_or_older_text(const logbook::EntryId& missing) {
  return fill(
      "This machine wrote {}, and this book does not hold it as written: it was cut off or made "
      "anew, or this is an older copy. Say timeworn check.",
      {entry_name(missing)});
}

}  // namespace words
