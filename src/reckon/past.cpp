#include "reckon/past.h"

#include <algorithm>
#include <utility>

#include "quantity/expect.h"

namespace reckon {

namespace {

std::optional<logbook::Aircraft> aircraft_in(const logbook::Fact& fact) {
  if (const auto* forward = std::get_if<logbook::BringsForward>(&fact)) {
    const auto* aircraft = std::get_if<logbook::Aircraft>(&forward->thing);
    return aircraft ? std::optional(*aircraft) : std::nullopt;
  }
  if (const auto* counts = std::get_if<logbook::CountsHours>(&fact)) return counts->aircraft;
  return aircraft_used(fact);
}

}  // namespace

// How the hours of a book are counted: from what, and by which clock.
struct Past::Reckoning {
  // What the airframe had when the book began, and whenever it was brought forward again.
  struct Begun {
    quantity::Day day;
    quantity::ServiceHours had;
  };
  Sources sources;
  std::vector<Begun> begun;  // by day

  void take(const logbook::Said& said) {
    if (const auto* counts = std::get_if<logbook::CountsHours>(&said.fact)) {
      sources.add(said.day, *counts);
    }
    const auto* forward = std::get_if<logbook::BringsForward>(&said.fact);
    if (forward == nullptr || !forward->airframe) return;
    const auto after =
        std::find_if(begun.begin(), begun.end(), [&](const Begun& b) { return said.day < b.day; });
    begun.insert(after, {said.day, quantity::service_hours(*forward->airframe)});
  }
  bool has_begun_by(quantity::Day day) const { return !begun.empty() && begun.front().day <= day; }
  Use use(const logbook::Said& said) const { return use_of(said, sources); }
  quantity::ServiceHours hours(const logbook::Said& said) const {
    const Use one = use(said);
    return service(one, one.raw);
  }
};

struct Past::Airframe {
  struct Dated {
    quantity::Day first;  // the earliest day that any of its versions has
    const Chain* chain = nullptr;
  };
  std::vector<Dated> chains;  // by first day
  std::vector<Dated> rules;   // brought forward, source of hours
  std::map<logbook::WriterId, std::vector<std::int64_t>> newest;  // over chains up to each
  std::map<quantity::Day, std::vector<const Chain*>> on_day;      // any version of it
  Reckoning now;
  std::vector<std::pair<quantity::Day, quantity::ServiceHours>> sums;  // hours to the end of day

  void add(const Chain& chain, const logbook::Aircraft& aircraft);
  void finish(const Knowledge& knowledge, const logbook::Aircraft& aircraft);
  bool is_all_seen_before(quantity::Day day, const Seen& seen) const;
  bool are_rules_seen(quantity::Day day, const Seen& seen) const;
  quantity::ServiceHours sum_before(quantity::Day day) const;

 private:
  void note_newest();
  void sum_days(const std::map<quantity::Day, quantity::ServiceHours>& flown);
};

namespace {

bool is_about(const logbook::Said& said, const logbook::Aircraft& aircraft) {
  return aircraft_in(said.fact) == aircraft;
}

}  // namespace

void Past::Airframe::add(const Chain& chain, const logbook::Aircraft& aircraft) {
  std::optional<quantity::Day> first;
  bool is_rule = false;
  for (const Link& link : chain.links) {
    const logbook::Said* said = said_in(*link.entry);
    if (said == nullptr || !is_about(*said, aircraft)) continue;
    first = first ? std::min(*first, said->day) : said->day;
    if (!aircraft_used(said->fact)) {
      is_rule = true;
      continue;
    }
    std::vector<const Chain*>& here = on_day[said->day];
    if (here.empty() || here.back() != &chain) here.push_back(&chain);
  }
  chains.push_back({*first, &chain});
  if (is_rule) rules.push_back({*first, &chain});
}

void Past::Airframe::note_newest() {
  std::sort(chains.begin(), chains.end(),
            [](const Dated& a, const Dated& b) { return a.first < b.first; });
  for (const Dated& dated : chains) {
    for (const Link& link : dated.chain->links) newest.try_emplace(link.entry->id.writer);
  }
  std::map<logbook::WriterId, std::int64_t> most;
  for (const Dated& dated : chains) {
    for (const Link& link : dated.chain->links) {
      std::int64_t& number = most[link.entry->id.writer];
      number = std::max(number, link.entry->id.number);
    }
    for (auto& [writer, numbers] : newest) numbers.push_back(most[writer]);
  }
}

void Past::Airframe::sum_days(const std::map<quantity::Day, quantity::ServiceHours>& flown) {
  quantity::ServiceHours sum;
  for (const auto& [day, hours] : flown) sums.emplace_back(day, sum += hours);
}

void Past::Airframe::finish(const Knowledge& knowledge, const logbook::Aircraft& aircraft) {
  note_newest();
  for (const Dated& rule : rules) {
    const ChainValue value = value_of(*rule.chain, knowledge, nullptr);
    if (value.said != nullptr && is_about(*value.said, aircraft)) now.take(*value.said);
  }
  std::map<quantity::Day, quantity::ServiceHours> flown;
  for (const Dated& dated : chains) {
    const ChainValue value = value_of(*dated.chain, knowledge, nullptr);
    if (value.said == nullptr || aircraft_used(value.said->fact) != aircraft) continue;
    if (!now.begun.empty() && value.said->day < now.begun.front().day) continue;
    flown[value.said->day] += now.hours(*value.said);
  }
  sum_days(flown);
}

bool Past::Airframe::is_all_seen_before(quantity::Day day, const Seen& seen) const {
  const auto end = std::lower_bound(chains.begin(), chains.end(), day,
                                    [](const Dated& a, quantity::Day b) { return a.first < b; });
  if (end == chains.begin()) return true;
  const auto last = static_cast<std::size_t>(end - chains.begin()) - 1;
  return std::all_of(newest.begin(), newest.end(), [&](const auto& of_writer) {
    const auto found = seen.find(of_writer.first);
    return of_writer.second[last] <= (found == seen.end() ? 0 : found->second);
  });
}

bool Past::Airframe::are_rules_seen(quantity::Day day, const Seen& seen) const {
  return std::all_of(rules.begin(), rules.end(), [&](const Dated& rule) {
    return day < rule.first || is_wholly_seen(*rule.chain, seen);
  });
}

quantity::ServiceHours Past::Airframe::sum_before(quantity::Day day) const {
  const auto after = std::lower_bound(sums.begin(), sums.end(), day,
                                      [](const auto& a, quantity::Day b) { return a.first < b; });
  return after == sums.begin() ? quantity::ServiceHours{} : std::prev(after)->second;
}

// Walks one aircraft's chains as they stood for a reader who had seen so much.
class Past::Then {
 public:
  Then(const Airframe& airframe, const Knowledge& knowledge, Seen seen,
       const logbook::Aircraft& aircraft)
      : airframe_(airframe), knowledge_(knowledge), seen_(std::move(seen)), aircraft_(aircraft) {}

  Reckoning reckoning(quantity::Day day) const {
    if (airframe_.are_rules_seen(day, seen_)) return airframe_.now;
    Reckoning then;
    for (const Airframe::Dated& rule : airframe_.rules) {
      if (const logbook::Said* said = value(*rule.chain)) then.take(*said);
    }
    return then;
  }

  // The airframe's total at the start of the day: of several beginnings by that which gives more.
  quantity::ServiceHours total_before(quantity::Day day, const Reckoning& reckoning) const {
    const quantity::ServiceHours flown = flown_before(day, reckoning);
    quantity::ServiceHours total;
    for (const Reckoning::Begun& begun : reckoning.begun) {
      if (day < begun.day) break;
      const quantity::ServiceHours before = flown_before(begun.day, reckoning);
      total = std::max(total, begun.had + flown - before);
    }
    return total;
  }

  std::vector<Use> uses_on(quantity::Day day, const Reckoning& reckoning) const {
    std::vector<Use> uses;
    const auto here = airframe_.on_day.find(day);
    if (here == airframe_.on_day.end()) return uses;
    for (const Chain* chain : here->second) {
      const logbook::Said* said = value(*chain);
      if (said == nullptr || said->day != day || !aircraft_used(said->fact)) continue;
      uses.push_back(reckoning.use(*said));
      uses.back().root = chain->root();
      uses.back().written = static_cast<std::int64_t>(uses.size());
    }
    return uses;
  }

 private:
  // Hours flown since the book began, up to the start of the day.
  quantity::ServiceHours flown_before(quantity::Day day, const Reckoning& reckoning) const {
    const bool is_as_now =
        airframe_.are_rules_seen(day, seen_) && airframe_.is_all_seen_before(day, seen_);
    if (is_as_now) return airframe_.sum_before(day);
    quantity::ServiceHours sum;
    for (const Airframe::Dated& dated : airframe_.chains) {
      if (!(dated.first < day)) break;
      const logbook::Said* said = value(*dated.chain);
      if (said == nullptr || !aircraft_used(said->fact)) continue;
      const bool counts = said->day < day && !(said->day < reckoning.begun.front().day);
      if (counts) sum += reckoning.hours(*said);
    }
    return sum;
  }

  const logbook::Said* value(const Chain& chain) const {
    const ChainValue value = value_of(chain, knowledge_, &seen_);
    return value.said != nullptr && is_about(*value.said, aircraft_) ? value.said : nullptr;
  }

  const Airframe& airframe_;
  const Knowledge& knowledge_;
  Seen seen_;
  const logbook::Aircraft& aircraft_;
};

Past::Past(const Standing& standing) : standing_(standing) {
  for (const Chain& chain : standing.chains) {
    std::vector<logbook::Aircraft> named;
    for (const Link& link : chain.links) {
      const logbook::Said* said = said_in(*link.entry);
      const auto aircraft = said ? aircraft_in(said->fact) : std::nullopt;
      const bool is_new =
          aircraft && std::find(named.begin(), named.end(), *aircraft) == named.end();
      if (is_new) named.push_back(*aircraft);
    }
    for (const logbook::Aircraft& aircraft : named) {
      std::unique_ptr<Airframe>& airframe = airframes_[aircraft];
      if (airframe == nullptr) airframe = std::make_unique<Airframe>();
      airframe->add(chain, aircraft);
    }
  }
  for (auto& [aircraft, airframe] : airframes_) airframe->finish(standing.knowledge, aircraft);
}

Past::~Past() = default;

std::optional<DayThen> Past::day_then(const logbook::Aircraft& aircraft, quantity::Day day,
                                      const logbook::EntryId& written,
                                      const std::optional<MeterStep>& step) const {
  const auto found = airframes_.find(aircraft);
  if (found == airframes_.end()) return std::nullopt;
  const Then then(*found->second, standing_.knowledge, standing_.knowledge.seen_by(written),
                  aircraft);
  const Reckoning reckoning = then.reckoning(day);
  if (!reckoning.has_begun_by(day)) return std::nullopt;

  DayThen result;
  quantity::ServiceHours total = then.total_before(day, reckoning);
  result.totals.push_back(total);
  for (const Use& use : in_order(then.uses_on(day, reckoning), standing_.knowledge, step)) {
    result.flights.push_back(use.root);
    result.totals.push_back(total += service(use, use.raw));
  }
  return result;
}

quantity::ServiceHours Past::accepted_since(const logbook::Aircraft& aircraft, quantity::Day day,
                                            const logbook::EntryId& written) const {
  quantity::ServiceHours accepted;
  const auto found = airframes_.find(aircraft);
  if (found == airframes_.end()) return accepted;
  const Seen seen = standing_.knowledge.seen_by(written);
  const Reckoning& now = found->second->now;
  const auto hours_in = [&](const logbook::Said* said) {
    const bool counts = said != nullptr && said->day < day && is_about(*said, aircraft) &&
                        aircraft_used(said->fact);
    return counts ? now.hours(*said) : quantity::ServiceHours{};
  };
  for (const Airframe::Dated& dated : found->second->chains) {
    if (!(dated.first < day)) break;
    if (is_wholly_seen(*dated.chain, seen)) continue;
    const logbook::Said* said = value_of(*dated.chain, standing_.knowledge, nullptr).said;
    const logbook::Said* then = value_of(*dated.chain, standing_.knowledge, &seen).said;
    const quantity::ServiceHours added = hours_in(said) - hours_in(then);
    const bool is_accepted =
        added < quantity::ServiceHours{} || (said != nullptr && !said->although.empty());
    if (is_accepted) accepted += added;
  }
  return accepted;
}

std::optional<logbook::EntryId> Past::newest_unseen(const logbook::Aircraft& aircraft,
                                                    quantity::Day day,
                                                    const logbook::EntryId& written) const {
  const auto found = airframes_.find(aircraft);
  if (found == airframes_.end()) return std::nullopt;
  const Seen seen = standing_.knowledge.seen_by(written);
  std::optional<logbook::EntryId> newest;
  for (const Airframe::Dated& dated : found->second->chains) {
    if (day < dated.first) break;
    for (const Link& link : dated.chain->links) {
      const logbook::EntryId& id = link.entry->id;
      const bool is_newer = !newest || newest->number < id.number;
      if (!is_seen(seen, id) && id != written && is_newer) newest = id;
    }
  }
  return newest;
}

bool agrees(quantity::Hours stated, quantity::ServiceHours total) {
  constexpr std::int64_t a_tenth = 360'000;
  const std::int64_t apart = (quantity::service_hours(stated) - total).count();
  if (apart == 0) return true;
  const bool is_in_tenths = quantity::service_hours(stated).count() % a_tenth == 0;
  const bool is_total_between = total.count() % a_tenth != 0;
  return is_in_tenths && is_total_between && std::abs(apart) <= a_tenth / 2;
}

}  // namespace reckon
