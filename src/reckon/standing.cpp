#include "reckon/standing.h"

#include <algorithm>
#include <iterator>
#include <map>
#include <tuple>
#include <utility>

#include "reckon/question.h"
#include "reckon/signing.h"
#include "reckon/things.h"

namespace reckon {

namespace {

using Written = std::map<logbook::EntryId, std::int64_t>;

Written written_places(const std::vector<logbook::Entry>& entries) {
  Written written;
  for (const logbook::Entry& entry : entries) written.emplace(entry.id, 0);
  std::int64_t place = 0;
  for (auto& [id, at] : written) at = place++;
  return written;
}

std::vector<logbook::Thing> things_of(const Chain& chain) {
  std::vector<logbook::Thing> things;
  for (const Link& link : chain.links) {
    const logbook::Said* said = said_in(*link.entry);
    if (said == nullptr) continue;
    const std::vector<logbook::Thing> named = things_in(said->fact);
    things.insert(things.end(), named.begin(), named.end());
  }
  return things;
}

std::vector<logbook::EntryId> ids_of(const Chain& chain) {
  std::vector<logbook::EntryId> ids;
  std::transform(chain.links.begin(), chain.links.end(), std::back_inserter(ids),
                 [](const Link& link) { return link.entry->id; });
  return ids;
}

bool is_any_by(const Chain& chain, const std::vector<logbook::EntryId>& ids, quantity::Day day) {
  return std::any_of(chain.links.begin(), chain.links.end(), [&](const Link& link) {
    const bool is_named = std::find(ids.begin(), ids.end(), link.entry->id) != ids.end();
    return is_named && said_in(*link.entry)->day <= day;
  });
}

// The facts as they are gathered, with the ends of people and keys of every day.
struct Gathered {
  const Written written;
  const quantity::Day as_of;
  Standing result;
  std::vector<StandingFact> ends;
};

// Whichever of them is taken: the other may count by the day asked about, or already now.
void note_made_apart(const Chain& chain, const ChainValue& value, Gathered& gathered) {
  if (value.apart.empty() || !is_any_by(chain, value.apart, gathered.as_of)) return;
  MadeApart apart{chain.root(), value.apart};
  std::sort(apart.corrections.begin(), apart.corrections.end());
  gathered.result.made_apart.push_back(std::move(apart));
  gathered.result.questions.push_back(
      make_question("two corrections", value.apart, things_of(chain)));
}

void add_value(const Chain& chain, Gathered& gathered) {
  Standing& result = gathered.result;
  const ChainValue value = value_of(chain, result.knowledge, nullptr);
  const logbook::Said* said = value.said != nullptr ? value.said : value.last;
  if (said == nullptr) return;
  StandingFact fact;
  fact.root = chain.root();
  fact.chain = value.said != nullptr ? value.chain : ids_of(chain);
  fact.said = said;
  fact.written = gathered.written.at(fact.root);
  if (value.said != nullptr && is_end(said->fact)) gathered.ends.push_back(fact);
  note_made_apart(chain, value, gathered);
  if (said->day > gathered.as_of) return;
  if (value.is_corrected_and_struck) {
    result.questions.push_back(
        make_question("struck and corrected", ids_of(chain), things_of(chain)));
  }
  (value.said != nullptr ? result.facts : result.struck).push_back(std::move(fact));
}

void sort_by_day(std::vector<StandingFact>& facts) {
  std::sort(facts.begin(), facts.end(), [](const StandingFact& a, const StandingFact& b) {
    return std::tuple(a.said->day.count(), a.written) < std::tuple(b.said->day.count(), b.written);
  });
}

// What it would change is unknown as long as the entry that it names is not here.
void ask_about_missing(const logbook::Entry& entry, std::vector<Question>& questions) {
  questions.push_back(
      make_question("names an entry that is not here", {entry.id}, things_in(entry.said->fact)));
}

void read_as_decided(const Decided& decided, std::vector<Chain>& chains) {
  if (decided.empty()) return;
  for (Chain& chain : chains) {
    const auto found = decided.find(chain.root());
    if (found == decided.end()) continue;
    chain.taken = found->second;
    chain.is_left_out = !found->second;
  }
}

}  // namespace

Standing standing(const std::vector<logbook::Entry>& entries, quantity::Day as_of,
                  const Decided& decided) {
  Chains chains = chains_of(entries);
  read_as_decided(decided, chains.all);
  Gathered gathered{written_places(entries), as_of, {}, {}};
  Standing& result = gathered.result;
  result.knowledge = Knowledge(entries);
  result.unread = std::move(chains.unread);
  result.chains = std::move(chains.all);
  for (const Chain& chain : result.chains) add_value(chain, gathered);
  for (const logbook::Entry* entry : chains.without_target) {
    ask_about_missing(*entry, result.questions);
  }
  sort_by_day(result.facts);
  sort_by_day(result.struck);
  result.has_signing =
      judge_signatures(result.facts, gathered.ends, result.chains, result.knowledge);
  return std::move(gathered.result);
}

}  // namespace reckon
