#include "report/counting_notices.h"

#include "reckon/signing.h"
#include "words/signings.h"

namespace report {

namespace {

using reckon::StandingFact;

// How much older work is named; of more only the number is told.
constexpr std::size_t most_named = 5;

enum class Before { unchanged, not_there, uncounted, counted };

Before before_of(const StandingFact& fact, const Saved& saved) {
  if (!saved.counted_before) return Before::unchanged;
  const auto before = saved.counted_before->find(fact.root);
  if (before == saved.counted_before->end()) return Before::not_there;
  return before->second ? Before::counted : Before::uncounted;
}

using Work = std::vector<const StandingFact*>;

void add_list(std::string_view sentence, const Work& work, std::vector<std::string>& notices) {
  if (work.empty()) return;
  std::vector<std::string> named;
  for (const StandingFact* fact : work) {
    if (named.size() < most_named) named.push_back(words::work_text(*fact));
  }
  notices.push_back(words::some_text(sentence, named, work.size()));
}

// Work that was said just now, or stands again.
void add_fresh(const Work& work, std::vector<std::string>& notices) {
  if (work.size() > most_named) {
    return add_list("Not counted until it is signed: {}.", work, notices);
  }
  for (const StandingFact* fact : work) notices.push_back(words::not_counted_text(*fact));
}

}  // namespace

CountedWork counted_work(const reckon::Standing& standing) {
  CountedWork work;
  for (const StandingFact& fact : standing.facts) {
    if (reckon::is_work_that_resets(fact.said->fact)) work[fact.root] = fact.is_counted;
  }
  return work;
}

std::vector<std::string> counting_notices(const reckon::Standing& standing, const Saved& saved) {
  Work now;
  Work no_more;
  Work fresh;
  for (const StandingFact& fact : standing.facts) {
    const Before before = before_of(fact, saved);
    if (fact.is_counted) {
      if (before == Before::uncounted) now.push_back(&fact);
    } else if (before == Before::not_there || is_saved(fact.chain.back(), saved)) {
      fresh.push_back(&fact);
    } else if (before == Before::counted) {
      no_more.push_back(&fact);
    }
  }
  std::vector<std::string> notices;
  add_fresh(fresh, notices);
  add_list("This counts now: {}.", now, notices);
  add_list("This does not count any more: {}.", no_more, notices);
  return notices;
}

}  // namespace report
