#include "reckon/knowledge.h"

#include <algorithm>

namespace reckon {

bool is_seen(const Seen& seen, const logbook::EntryId& id) {
  const auto found = seen.find(id.writer);
  return found != seen.end() && id.number <= found->second;
}

Knowledge::Knowledge(const std::vector<logbook::Entry>& entries) {
  for (const logbook::Entry& entry : entries) {
    for (const logbook::Knows& knows : entry.frame.knows) {
      learned_[entry.id.writer][knows.writer].emplace_back(entry.id.number, knows.number);
    }
  }
  for (auto& [writer, others] : learned_) {
    for (auto& [other, learned] : others) {
      std::sort(learned.begin(), learned.end());
      std::int64_t most = 0;
      for (auto& [number, known] : learned) known = most = std::max(most, known);
    }
  }
}

std::int64_t Knowledge::newest(const Learned& learned, std::int64_t number) {
  const auto after = std::upper_bound(learned.begin(), learned.end(), std::pair(number, INT64_MAX));
  return after == learned.begin() ? 0 : std::prev(after)->second;
}

Seen Knowledge::seen_by(const logbook::EntryId& id) const {
  Seen seen{{id.writer, id.number - 1}};
  const auto others = learned_.find(id.writer);
  if (others == learned_.end()) return seen;
  for (const auto& [other, learned] : others->second) {
    if (other != id.writer) seen[other] = newest(learned, id.number);
  }
  return seen;
}

bool Knowledge::knew(const logbook::EntryId& by, const logbook::EntryId& of) const {
  if (by.writer == of.writer) return of.number < by.number;
  const auto others = learned_.find(by.writer);
  if (others == learned_.end()) return false;
  const auto learned = others->second.find(of.writer);
  return learned != others->second.end() && of.number <= newest(learned->second, by.number);
}

}  // namespace reckon
