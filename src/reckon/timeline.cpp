#include "reckon/timeline.h"

#include <algorithm>
#include <tuple>
#include <utility>

#include "reckon/merge.h"
#include "reckon/question.h"
#include "reckon/things.h"
#include "reckon/whereabouts.h"
#include "reckon/work.h"

namespace reckon {

namespace {

// One aircraft's day, or the day of all that lies off any aircraft.
struct Row {
  std::optional<logbook::Aircraft> aircraft;
  std::vector<Use> uses;
  std::vector<WorkEvent> works;
  std::optional<MeterStep> step;
};
using Days = std::map<Day, std::map<std::optional<logbook::Aircraft>, Row>>;

using Facts = std::vector<const StandingFact*>;

bool happens_at_a_time(const StandingFact& fact) {
  return aircraft_used(fact.said->fact) || work_in(fact.said->fact);
}

// A day on which every happening has its time is told by the clock.
void sort_by_clock(Facts::iterator from, Facts::iterator to) {
  const bool is_timed = std::all_of(from, to, [](const StandingFact* fact) {
    return !happens_at_a_time(*fact) || began_at(*fact->said);
  });
  if (!is_timed) return;
  std::stable_sort(from, to, [](const StandingFact* a, const StandingFact* b) {
    return began_at(*a->said) < began_at(*b->said);
  });
}

// By day; within a day by the clock where all of it is timed, else as written. What moves between
// aircraft, or off them, has nothing better to tell its order by.
Facts as_told(const Standing& standing) {
  Facts facts;
  for (const StandingFact& fact : standing.facts) facts.push_back(&fact);
  for (auto from = facts.begin(); from != facts.end();) {
    const Day day = (*from)->said->day;
    const auto to = std::find_if(from, facts.end(),
                                 [&](const StandingFact* fact) { return fact->said->day != day; });
    sort_by_clock(from, to);
    from = to;
  }
  return facts;
}

class Building {
 public:
  Building(const Standing& standing, const Past& past, Ambiguous policy,
           const OnAirframe& on_airframe)
      : standing_(standing), past_(past), policy_(policy), on_airframe_(on_airframe) {
    timeline_.ledgers = empty_ledgers(standing);
    for (const StandingFact* fact : as_told(standing)) {
      sequence_[fact->root] = static_cast<std::int64_t>(sequence_.size());
      sort_in(*fact);
    }
    for (auto& [day, rows] : days_) settle_day(day, rows);
  }
  Timeline take() { return std::move(timeline_); }

 private:
  void sort_in(const StandingFact& fact) {
    const logbook::Said& said = *fact.said;
    if (const auto aircraft = aircraft_used(said.fact)) return add_use(fact, *aircraft);
    if (!work_in(said.fact)) {
      timeline_.marks[fact.root] = {said.day, 0};
      return;
    }
    whereabouts_.take(said.fact);
    WorkEvent event;
    event.fact = &fact;
    const logbook::Thing subject = subject_of_work(said.fact);
    event.aircraft = whereabouts_.aircraft_of(subject);
    event.engine = engine_meant(said.fact, subject);
    row(said.day, event.aircraft).works.push_back(std::move(event));
    note_step(said);
  }

  // A fitted or removed engine's stated hours are its own.
  std::optional<logbook::Engine> engine_meant(const logbook::Fact& fact,
                                              const logbook::Thing& subject) const {
    const auto* fitted = std::get_if<logbook::Fitted>(&fact);
    const auto* removed = std::get_if<logbook::Removed>(&fact);
    const auto* thing = fitted ? &fitted->thing : removed ? &removed->thing : nullptr;
    const auto* engine = thing ? std::get_if<logbook::Engine>(thing) : nullptr;
    return engine ? std::optional(*engine) : whereabouts_.engine_of(subject);
  }

  Row& row(Day day, const std::optional<logbook::Aircraft>& aircraft) {
    Row& row = days_[day][aircraft];
    row.aircraft = aircraft;
    return row;
  }

  void add_use(const StandingFact& fact, const logbook::Aircraft& aircraft) {
    const Ledger& ledger = timeline_.ledgers.at(aircraft);
    if (ledger.begins && fact.said->day < *ledger.begins) {
      timeline_.marks[fact.root] = {fact.said->day, 0};
      timeline_.questions.push_back(
          make_question("before it was brought forward", {fact.root}, {aircraft}));
      return;
    }
    Use use = use_of(*fact.said, ledger.sources);
    use.root = fact.root;
    use.written = fact.written;
    row(fact.said->day, aircraft).uses.push_back(std::move(use));
  }

  void note_step(const logbook::Said& said) {
    const auto* changed = std::get_if<logbook::MeterChanged>(&said.fact);
    if (changed == nullptr) return;
    const Source source = timeline_.ledgers.at(changed->aircraft).sources.on(said.day);
    if (source.meter != changed->meter) return;
    row(said.day, changed->aircraft).step = MeterStep{changed->out, changed->in};
  }

  void settle_day(Day day, std::map<std::optional<logbook::Aircraft>, Row>& rows) {
    for (auto& [aircraft, row] : rows) {
      row.uses = in_order(std::move(row.uses), standing_.knowledge, row.step);
    }
    std::vector<std::vector<DayItem>> items;
    std::vector<Row*> row_of;
    for (auto& [aircraft, row] : rows) {
      items.push_back(items_of(row));
      row_of.push_back(&row);
    }
    for (std::size_t at = 0; at < items.size(); ++at) {
      for (DayItem& item : items[at]) item.index = item.index * items.size() + at;
    }
    std::int64_t order = 0;
    for (const DayItem& item : merged(items)) {
      Row& row = *row_of[item.index % items.size()];
      put(row, item.index / items.size(), {day, ++order});
    }
  }

  // An item's index: first the row's uses, then its works.
  void put(Row& row, std::size_t index, const Mark& mark) {
    if (index < row.uses.size()) {
      Ledger& ledger = timeline_.ledgers.at(*row.aircraft);
      timeline_.marks[row.uses[index].root] = mark;
      ledger.add(std::move(row.uses[index]), mark);
      return;
    }
    WorkEvent& event = row.works[index - row.uses.size()];
    event.mark = mark;
    timeline_.marks[event.fact->root] = mark;
    timeline_.places_of_works[event.fact->root] = timeline_.works.size();
    timeline_.works.push_back(std::move(event));
  }

  std::vector<DayItem> items_of(Row& row) {
    std::vector<std::vector<std::size_t>> works_after(row.uses.size() + 1);
    for (std::size_t at = 0; at < row.works.size(); ++at) {
      works_after[settle_work(row.works[at], row)].push_back(at);
    }
    std::vector<DayItem> items;
    for (std::size_t after = 0; after <= row.uses.size(); ++after) {
      if (after > 0) items.push_back({after - 1, sequence_.at(row.uses[after - 1].root), {}});
      for (const std::size_t at : works_after[after]) {
        const StandingFact& fact = *row.works[at].fact;
        items.push_back({row.uses.size() + at, sequence_.at(fact.root), moved_by(fact)});
      }
    }
    return items;
  }

  static std::vector<logbook::Thing> moved_by(const StandingFact& fact) {
    std::vector<logbook::Thing> things = things_in(fact.said->fact);
    std::erase_if(things, [](const logbook::Thing& thing) {
      return std::holds_alternative<logbook::Aircraft>(thing);
    });
    return things;
  }

  // How many of the row's uses come before the work.
  std::size_t settle_work(WorkEvent& event, const Row& row) {
    const WorkStated stated = *work_in(event.fact->said->fact);
    const bool is_flagged = stated.is_before_first || stated.is_after_last;
    if (const auto after = settle_by_total(event, stated, row); after && !is_flagged) return *after;
    Work work;
    work.root = event.fact->root;
    work.is_before_first = stated.is_before_first;
    work.is_after_last = stated.is_after_last;
    work.utc_minute = began_at(*event.fact->said);
    work.reading = reading_of_source(stated, row);
    const WorkPlace place = place_of(work, row.uses, standing_.knowledge, policy_);
    if (!place.apart.empty() && stated.moves_lives) ask_about_order(event, place.apart);
    return place.after;
  }

  std::optional<quantity::HourMeter> reading_of_source(const WorkStated& stated,
                                                       const Row& row) const {
    if (!stated.meter || !row.aircraft) return std::nullopt;
    const Source source =
        timeline_.ledgers.at(*row.aircraft).sources.on(row.works.front().fact->said->day);
    if (source.meter != stated.meter->meter) return std::nullopt;
    return stated.meter->reading;
  }

  void ask_about_order(const WorkEvent& event, std::vector<logbook::EntryId> entries) {
    timeline_.is_ambiguous = true;
    entries.push_back(event.fact->root);
    std::vector<logbook::Thing> about = moved_by(*event.fact);
    about.push_back(*event.aircraft);
    timeline_.questions.push_back(
        make_question("order within a day", std::move(entries), std::move(about)));
  }

  // By the stated airframe total, in the book as it stood when that was written.
  std::optional<std::size_t> settle_by_total(WorkEvent& event, const WorkStated& stated,
                                             const Row& row) {
    const auto in_other_words = on_airframe_.find(event.fact->root);
    const bool is_other = !stated.airframe && in_other_words != on_airframe_.end();
    if (!row.aircraft || (!stated.airframe && !is_other)) return std::nullopt;
    const quantity::Hours total = is_other ? in_other_words->second : *stated.airframe;
    const auto then =
        past_.day_then(*row.aircraft, event.fact->said->day, event.fact->chain.back(), row.step);
    if (!then) return std::nullopt;
    const auto place = place_in(*then, total);
    if (stated.airframe) event.agreed = place.has_value();
    if (!place) return std::nullopt;
    event.total_then = then->totals[*place];
    return place_now(*then, *place, row);
  }

  // The last place of that day at which the total was met.
  static std::optional<std::size_t> place_in(const DayThen& then, quantity::Hours stated) {
    std::optional<std::size_t> near;
    for (std::size_t at = then.totals.size(); at-- > 0;) {
      if (quantity::service_hours(stated) == then.totals[at]) return at;
      if (!near && agrees(stated, then.totals[at])) near = at;
    }
    return near;
  }

  // After the flight that it stood after; if that has gone, after the one before.
  static std::size_t place_now(const DayThen& then, std::size_t place, const Row& row) {
    while (place > 0) {
      const logbook::EntryId& flight = then.flights[--place];
      const auto found = std::find_if(row.uses.begin(), row.uses.end(),
                                      [&](const Use& use) { return use.root == flight; });
      if (found != row.uses.end()) return static_cast<std::size_t>(found - row.uses.begin()) + 1;
    }
    return 0;
  }

  const Standing& standing_;
  const Past& past_;
  Ambiguous policy_;
  const OnAirframe& on_airframe_;
  std::map<logbook::EntryId, std::int64_t> sequence_;  // as told
  Whereabouts whereabouts_;
  Days days_;
  Timeline timeline_;
};

}  // namespace

const WorkEvent* Timeline::work(const logbook::EntryId& root) const {
  const auto found = places_of_works.find(root);
  return found == places_of_works.end() ? nullptr : &works[found->second];
}

const WorkEvent* Timeline::work_at(const Mark& mark) const {
  const auto found = std::lower_bound(
      works.begin(), works.end(), mark,
      [](const WorkEvent& event, const Mark& wanted) { return event.mark < wanted; });
  return found == works.end() || found->mark != mark ? nullptr : &*found;
}

Timeline make_timeline(const Standing& standing, const Past& past, Ambiguous policy,
                       const OnAirframe& on_airframe) {
  return Building(standing, past, policy, on_airframe).take();
}

}  // namespace reckon
