#include "store/trust.h"

#include <algorithm>
#include <map>

namespace store {
namespace {

// A fault behind which the chain proves nothing more. A fork or an unreadable sentence is told, but
// the entries follow one another all the same.
bool breaks_chain(const Finding& finding) {
  return finding.what == "chain" || finding.what == "frame" || finding.what == "gap";
}

bool breaks_all(const Finding& finding) {
  const bool is_nameless = breaks_chain(finding) && !finding.entry;
  return finding.what == "file" || finding.what == "schema" || is_nameless;
}

// Another entry stands where this machine wrote one, so the chain was made anew, and nobody can say
// from where on. A book that was cut, or an older one, has no entry there.
bool is_made_anew(const Finding& finding, const std::vector<logbook::EntryId>& entries) {
  return finding.what == "mark" &&
         std::any_of(entries.begin(), entries.end(), [&](const logbook::EntryId& entry) {
           return entry.writer == finding.entry->writer && entry.number == finding.entry->number;
         });
}

// The first number at which a base's chain is broken, of those that are.
std::map<logbook::WriterId, std::int64_t> first_faults(const std::vector<logbook::EntryId>& entries,
                                                       const std::vector<Finding>& findings) {
  std::map<logbook::WriterId, std::int64_t> faults;
  for (const Finding& finding : findings) {
    const bool is_anew = is_made_anew(finding, entries);
    if (!is_anew && !breaks_chain(finding)) continue;
    const std::int64_t number = is_anew ? 1 : finding.entry->number;
    const auto place = faults.emplace(finding.entry->writer, number).first;
    place->second = std::min(place->second, number);
  }
  return faults;
}

}  // namespace

std::vector<Trust> trust(const std::vector<logbook::EntryId>& entries,
                         const std::vector<Finding>& findings) {
  if (std::any_of(findings.begin(), findings.end(), breaks_all)) return {};
  const auto faults = first_faults(entries, findings);
  std::vector<Trust> result;
  for (const logbook::EntryId& entry : entries) {
    if (result.empty() || result.back().writer != entry.writer) {
      result.push_back({entry.writer, 0, 0, 0});
    }
    Trust& one = result.back();
    one.newest = entry.number;
    const auto fault = faults.find(entry.writer);
    const bool is_proved = fault == faults.end() || entry.number < fault->second;
    if (is_proved) one.proved = entry.number;
    if (!is_proved && one.next == 0) one.next = entry.number;
  }
  return result;
}

}  // namespace store
