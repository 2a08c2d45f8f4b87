#include "report/start_notices.h"

#include <algorithm>

#include "reckon/exceedances.h"
#include "words/starts.h"

namespace report {

namespace {

const logbook::Fact& stated_in(const logbook::Said& said) {
  const auto* corrected = std::get_if<logbook::Corrected>(&said.fact);
  return corrected != nullptr ? (*corrected->instead).fact : said.fact;
}

bool tells_of_a_gauge(const logbook::Entry& entry) {
  if (!entry.said) return false;
  const logbook::Fact& fact = stated_in(*entry.said);
  return std::holds_alternative<logbook::Started>(fact) ||
         std::holds_alternative<logbook::Exceeded>(fact);
}

bool is_plain(const reckon::StartJudged& start) {
  return start.findings.empty() && start.untold.empty();
}

}  // namespace

std::vector<std::string> start_notices(const reckon::Histories& histories,
                                       const reckon::Standing& standing, const Saved& saved) {
  std::vector<std::string> notices;
  if (std::none_of(saved.entries.begin(), saved.entries.end(), tells_of_a_gauge)) return notices;
  const auto open = reckon::open_exceedances(histories, standing);
  for (const reckon::StartJudged& start : reckon::judged_starts(histories, standing)) {
    if (!is_saved(start.newest, saved) || is_plain(start)) continue;
    const bool stands = std::any_of(open.begin(), open.end(), [&](const reckon::Exceedance& one) {
      return one.newest == start.newest;
    });
    notices.push_back(words::start_text(start) +
                      (stands ? " It stands until it is looked into." : ""));
  }
  for (const reckon::Exceedance& one : open) {
    if (one.what && is_saved(one.newest, saved)) notices.push_back(words::exceedance_text(one));
  }
  return notices;
}

}  // namespace report
