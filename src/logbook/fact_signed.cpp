#include "logbook/fact_signed.h"

#include <algorithm>

namespace logbook {

bool is_range(const EntryName& first, const EntryName& last) {
  const bool is_one_writer =
      last.writer.starts_with(first.writer) || first.writer.starts_with(last.writer);
  return is_one_writer && last.number > first.number &&
         last.number - first.number < most_in_a_range;
}

std::vector<EntryName> between(const Signed& fact) {
  std::vector<EntryName> names;
  if (!fact.through || !is_range(fact.entry, *fact.through)) return names;
  // Of a name that was written longer at one end, the longer one.
  const std::string& writer = std::max(fact.entry.writer, fact.through->writer);
  for (std::int64_t number = fact.entry.number + 1; number < fact.through->number; ++number) {
    names.push_back({writer, number});
  }
  return names;
}

}  // namespace logbook
