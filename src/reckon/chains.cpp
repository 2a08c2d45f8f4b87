#include "reckon/chains.h"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

#include "reckon/entry_named.h"

namespace reckon {

namespace {

const logbook::Corrected* correction_in(const logbook::Entry& entry) {
  return std::get_if<logbook::Corrected>(&entry.said->fact);
}
const logbook::Struck* strike_in(const logbook::Entry& entry) {
  return std::get_if<logbook::Struck>(&entry.said->fact);
}

// Works out which links of a chain stand. Targets come before what is said about them, so that a
// walk from the newest to the oldest settles strikes of strikes.
class Standings {
 public:
  Standings(const Chain& chain, const Knowledge& knowledge, const Seen* seen)
      : chain_(chain), knowledge_(knowledge) {
    for (const Link& link : chain.links) {
      is_there_.push_back(seen == nullptr || is_seen(*seen, link.entry->id));
    }
    settle_strikes();
  }

  bool is_value(std::size_t at) const {
    return is_there_[at] && strike_in(*chain_.links[at].entry) == nullptr;
  }
  // Struck itself, or with something it corrects, by someone who knew of it.
  bool is_gone(std::size_t at) const {
    for (std::size_t up = at;; up = chain_.links[up].target) {
      if (is_struck_from(up, at)) return true;
      if (up == 0) return false;
    }
  }
  bool is_below_a_strike(std::size_t at) const {
    for (std::size_t up = at;; up = chain_.links[up].target) {
      if (!strikes_[up].empty()) return true;
      if (up == 0) return false;
    }
  }

 private:
  void settle_strikes() {
    strikes_.resize(chain_.links.size());
    for (std::size_t at = chain_.links.size(); at-- > 1;) {
      const bool is_strike = is_there_[at] && strike_in(*chain_.links[at].entry) != nullptr;
      if (is_strike && strikes_[at].empty()) strikes_[chain_.links[at].target].push_back(at);
    }
  }
  bool is_struck_from(std::size_t up, std::size_t at) const {
    return std::any_of(strikes_[up].begin(), strikes_[up].end(), [&](std::size_t strike) {
      return up == at ||
             knowledge_.knew(chain_.links[strike].entry->id, chain_.links[at].entry->id);
    });
  }

  const Chain& chain_;
  const Knowledge& knowledge_;
  std::vector<bool> is_there_;
  std::vector<std::vector<std::size_t>> strikes_;  // standing strikes of each link
};

// Links that stand and that nothing standing corrects.
std::vector<std::size_t> newest_values(const Chain& chain, const Standings& standings) {
  std::vector<bool> is_corrected(chain.links.size(), false);
  std::vector<std::size_t> newest;
  for (std::size_t at = chain.links.size(); at-- > 0;) {
    if (!standings.is_value(at) || standings.is_gone(at)) continue;
    if (!is_corrected[at]) newest.push_back(at);
    for (std::size_t up = at; up != 0;) {
      up = chain.links[up].target;
      is_corrected[up] = true;
    }
  }
  return newest;
}

std::vector<logbook::EntryId> path_to(const Chain& chain, std::size_t at) {
  std::vector<logbook::EntryId> path;
  for (std::size_t up = at;; up = chain.links[up].target) {
    path.push_back(chain.links[up].entry->id);
    if (up == 0) break;
  }
  std::reverse(path.begin(), path.end());
  return path;
}

std::size_t last_value(const Chain& chain, const Standings& standings) {
  for (std::size_t at = chain.links.size(); at-- > 0;) {
    if (standings.is_value(at)) return at;
  }
  return 0;
}

// The most usual chain: one entry, nothing said about it.
ChainValue value_of_one(const logbook::Entry& entry, const Seen* seen) {
  ChainValue value;
  if (seen != nullptr && !is_seen(*seen, entry.id)) return value;
  value.said = value.last = said_in(entry);
  value.chain = {entry.id};
  return value;
}

using ById = std::map<logbook::EntryId, const logbook::Entry*>;

// The entry that a correction or strike names: by the frame's full ids, else by its short name.
std::optional<logbook::EntryId> target_of(const logbook::Entry& entry, const ById& by_id) {
  const logbook::Corrected* correction = correction_in(entry);
  const logbook::EntryName& name = correction ? correction->entry : strike_in(entry)->entry;
  std::vector<logbook::EntryId> fitting;
  for (const logbook::EntryId& id : entry.frame.refers) {
    if (id.number == name.number) fitting.push_back(id);
  }
  if (fitting.size() == 1) return fitting.front();
  if (fitting.empty()) {
    for (const auto& [id, other] : by_id) {
      if (id.number == name.number) fitting.push_back(id);
    }
  }
  std::erase_if(fitting, [&](const auto& id) { return !is_named(name, id); });
  if (fitting.size() != 1) return std::nullopt;
  return fitting.front();
}

// Gathers chains from their first entries on, each link after its target.
class Gathering {
 public:
  explicit Gathering(const std::vector<logbook::Entry>& entries) {
    for (const logbook::Entry& entry : entries) by_id_.emplace(entry.id, &entry);
    for (const auto& [id, entry] : by_id_) sort_in(*entry);
    for (const auto& [id, entry] : by_id_) {
      if (is_first(*entry)) chains_.all.push_back(chain_from(*entry));
    }
    find_those_without_target();
  }
  Chains take() { return std::move(chains_); }

 private:
  static bool is_first(const logbook::Entry& entry) {
    return entry.said && correction_in(entry) == nullptr && strike_in(entry) == nullptr;
  }
  void sort_in(const logbook::Entry& entry) {
    if (!entry.said) {
      chains_.unread.push_back(&entry);
    } else if (!is_first(entry)) {
      later_.push_back(&entry);
      if (const auto target = target_of(entry, by_id_)) about_[*target].push_back(&entry);
    }
  }
  Chain chain_from(const logbook::Entry& first) {
    Chain chain;
    chain.links.push_back({&first, 0});
    for (std::size_t at = 0; at < chain.links.size(); ++at) {
      const auto about = about_.find(chain.links[at].entry->id);
      if (about == about_.end()) continue;
      for (const logbook::Entry* entry : about->second) {
        chain.links.push_back({entry, at});
        placed_.insert({entry->id, entry});
      }
    }
    return chain;
  }
  void find_those_without_target() {
    for (const logbook::Entry* entry : later_) {
      if (!placed_.contains(entry->id)) chains_.without_target.push_back(entry);
    }
  }

  ById by_id_;
  ById placed_;
  std::map<logbook::EntryId, std::vector<const logbook::Entry*>> about_;
  std::vector<const logbook::Entry*> later_;
  Chains chains_;
};

}  // namespace

const logbook::Said* said_in(const logbook::Entry& entry) {
  if (const logbook::Corrected* correction = correction_in(entry)) return &*correction->instead;
  return strike_in(entry) != nullptr ? nullptr : &*entry.said;
}

ChainValue value_of(const Chain& chain, const Knowledge& knowledge, const Seen* seen) {
  if (chain.is_left_out) return {};
  if (chain.links.size() == 1) return value_of_one(*chain.links.front().entry, seen);
  const Standings standings(chain, knowledge, seen);
  ChainValue value;
  if (!standings.is_value(0)) return value;
  value.last = said_in(*chain.links[last_value(chain, standings)].entry);
  const std::vector<std::size_t> newest = newest_values(chain, standings);
  if (newest.empty()) return value;
  const auto id_of = [&](std::size_t at) { return chain.links[at].entry->id; };
  std::size_t taken =
      *std::max_element(newest.begin(), newest.end(),
                        [&](std::size_t a, std::size_t b) { return id_of(a) < id_of(b); });
  for (const std::size_t at : newest) {
    if (chain.taken == id_of(at)) taken = at;
  }
  value.said = said_in(*chain.links[taken].entry);
  value.chain = path_to(chain, taken);
  value.is_corrected_and_struck = standings.is_below_a_strike(taken);
  if (newest.size() > 1)
    std::transform(newest.begin(), newest.end(), back_inserter(value.apart), id_of);
  return value;
}

bool is_wholly_seen(const Chain& chain, const Seen& seen) {
  return std::all_of(chain.links.begin(), chain.links.end(),
                     [&](const Link& link) { return is_seen(seen, link.entry->id); });
}

Chains chains_of(const std::vector<logbook::Entry>& entries) { return Gathering(entries).take(); }

}  // namespace reckon
