#include "reckon/check_meters.h"

#include <algorithm>
#include <cstdlib>
#include <utility>

namespace reckon {

namespace {

using logbook::MeterName;
using quantity::HourMeter;
using quantity::Hours;

constexpr int brought_forward_rank = 0;
constexpr int run_rank = 1;
constexpr int change_rank = 2;
constexpr int run_after_change_rank = 3;

bool comes_first(const MeterMark& a, const MeterMark& b) {
  const auto key = [](const MeterMark& mark) {
    return std::tuple(mark.fact.said->day.count(), mark.rank, mark.begin.count(), mark.end.count(),
                      mark.fact.written);
  };
  return key(a) < key(b);
}

// The marks that a fact sets, with the meter of each.
struct MarksOf {
  const Placed& placed;
  std::vector<std::pair<MeterName, MeterMark>> marks;

  void run(const MeterName& meter, HourMeter begin, HourMeter end) {
    marks.push_back({meter, {placed, run_rank, begin, end, false}});
  }
  void operator()(const logbook::Flew& fact) { runs(fact.meters); }
  void operator()(const logbook::Ran& fact) { runs(fact.meters); }
  void operator()(const logbook::Unaccounted& fact) { runs(fact.meters); }
  void operator()(const logbook::MeterLost& fact) { run(fact.meter, fact.at, fact.at); }
  void operator()(const logbook::MeterChanged& fact) {
    marks.push_back({fact.meter, {placed, change_rank, fact.out, fact.in, true}});
  }
  void operator()(const logbook::BringsForward& fact) {
    for (const logbook::MeterReading& reading : fact.meters) {
      marks.push_back(
          {reading.meter, {placed, brought_forward_rank, reading.reading, reading.reading, false}});
    }
  }
  template <class Other>
  void operator()(const Other&) {}

 private:
  void runs(const std::vector<logbook::MeterRun>& meters) {
    for (const logbook::MeterRun& each : meters) run(each.meter, each.from, each.to);
  }
};

std::vector<std::pair<MeterName, MeterMark>> marks_of(const Placed& placed) {
  MarksOf marks{placed, {}};
  std::visit(marks, placed.said->fact);
  return std::move(marks.marks);
}

std::string slot_of(const Placed& placed) {
  if (std::holds_alternative<logbook::MeterChanged>(placed.said->fact)) return "out";
  if (std::holds_alternative<logbook::MeterLost>(placed.said->fact)) return "at";
  return "meters";
}

const std::vector<logbook::MeterRun>* runs_of(const logbook::Fact& fact) {
  if (const auto* flew = std::get_if<logbook::Flew>(&fact)) return &flew->meters;
  if (const auto* gap = std::get_if<logbook::Unaccounted>(&fact)) return &gap->meters;
  if (const auto* ran = std::get_if<logbook::Ran>(&fact)) return &ran->meters;
  return nullptr;
}
Hours hours_of(const logbook::Fact& fact) {
  if (const auto* flew = std::get_if<logbook::Flew>(&fact)) return flew->hours;
  if (const auto* gap = std::get_if<logbook::Unaccounted>(&fact)) return gap->hours;
  if (const auto* ran = std::get_if<logbook::Ran>(&fact)) return ran->hours.value_or(Hours{});
  return {};
}
bool states(const logbook::Fact& fact, const MeterName& meter) {
  const auto* runs = runs_of(fact);
  return runs != nullptr && std::any_of(runs->begin(), runs->end(),
                                        [&](const auto& run) { return run.meter == meter; });
}

// Flown between two marks without a word about this meter: it ran meanwhile.
struct Unmetered {
  Hours hours;
  std::int64_t uses = 0;
};
Unmetered unmetered_between(const MeterMark& before, const MeterMark& mark, const MeterName& meter,
                            const std::vector<Placed>& uses) {
  Unmetered unmetered;
  for (auto at = std::upper_bound(uses.begin(), uses.end(), before.fact); at != uses.end(); ++at) {
    if (!(*at < mark.fact)) break;
    if (is_same(*at, mark.fact) || states(at->said->fact, meter)) continue;
    unmetered.hours += hours_of(at->said->fact);
    ++unmetered.uses;
  }
  return unmetered;
}

struct Between {
  const MeterName& meter;
  const MeterMark& mark;
  const std::vector<Placed>& uses;
};

// Each use without a meter may lie a tenth apart from what the meter ran.
Hours missing_before(const Between& between, const MeterMark& before) {
  const Hours gap = between.mark.begin - before.end;
  if (gap <= Hours{}) return gap;
  const Unmetered unmetered = unmetered_between(before, between.mark, between.meter, between.uses);
  const Hours rest = gap - unmetered.hours;
  return rest > Hours::of(360) * unmetered.uses ? rest : Hours{};
}

Objection about(CheckKind kind, const MeterName& meter, const MeterMark& mark) {
  Objection objection = doubt(kind, slot_of(mark.fact));
  objection.names = {meter.text};
  return objection;
}

Objection overlap(const MeterName& meter, const MeterMark& mark, const MeterMark& other) {
  const bool is_before = comes_first(other, mark);
  Objection objection = with_figures(about(CheckKind::meter_overlap, meter, mark),
                                     reading_figure(is_before ? mark.begin : mark.end),
                                     reading_figure(is_before ? other.end : other.begin));
  objection.entries = {other.fact.id};
  return objection;
}

bool is_duplicate_of(const Objections& objections, const MeterMark& other) {
  return std::any_of(objections.begin(), objections.end(), [&](const Objection& objection) {
    return objection.kind == CheckKind::duplicate && objection.entries.front() == other.fact.id;
  });
}

void check_before(const Between& between, const MeterMark& before, Objections& objections) {
  if (is_duplicate_of(objections, before)) return;
  const auto& [meter, mark, uses] = between;
  const Hours missing = missing_before(between, before);
  if (missing.is_negative()) objections.push_back(overlap(meter, mark, before));
  if (missing <= Hours{}) return;
  objections.push_back(with_figures(about(CheckKind::meter_gap, meter, mark),
                                    reading_figure(mark.begin), reading_figure(before.end)));
  objections.back().difference = hours_figure(missing);
  objections.back().entries = {before.fact.id};
}

bool is_of_old_meter(const MeterMark& mark, const MeterMark& change) {
  const bool can_be_old = mark.end <= change.begin;
  const bool can_be_new = mark.begin >= change.end;
  if (can_be_old != can_be_new) return can_be_old;
  if (can_be_old) return mark.fact < change.fact;
  return std::abs((mark.end - change.begin).count()) <= std::abs((mark.begin - change.end).count());
}

// A gap after it was told when the later entry was made.
void check_after(const Between& between, const MeterMark& after, Objections& objections) {
  if (between.mark.end <= after.begin || is_duplicate_of(objections, after)) return;
  objections.push_back(overlap(between.meter, between.mark, after));
}

}  // namespace

// On the day of a change, a run belongs to the meter whose readings it can be of: the old one shows
// nothing past its last reading, the new one nothing before its first. Where it can be of both, the
// entry written first was first; of neither, the nearer one.
int MeterChecks::rank_in_day(const MeterName& meter, const MeterMark& mark) const {
  if (mark.rank == brought_forward_rank || mark.is_change) return mark.rank;
  const auto found = changes_.find(meter);
  if (found == changes_.end()) return run_rank;
  for (const MeterMark& change : found->second) {
    if (change.fact.said->day != mark.fact.said->day) continue;
    return is_of_old_meter(mark, change) ? run_rank : run_after_change_rank;
  }
  return run_rank;
}

void MeterChecks::add_change(const MeterName& meter, const MeterMark& change) {
  changes_[meter].push_back(change);
  std::vector<MeterMark>& marks = marks_[meter];
  for (MeterMark& mark : marks) mark.rank = rank_in_day(meter, mark);
  std::sort(marks.begin(), marks.end(), comes_first);
}

void MeterChecks::add(const Placed& placed) {
  for (auto& [meter, mark] : marks_of(placed)) {
    if (mark.is_change) add_change(meter, mark);
    mark.rank = rank_in_day(meter, mark);
    std::vector<MeterMark>& marks = marks_[meter];
    marks.insert(std::upper_bound(marks.begin(), marks.end(), mark, comes_first), mark);
  }
}

MeterChecks::Neighbours MeterChecks::neighbours(const MeterName& meter,
                                                const MeterMark& mark) const {
  const auto found = marks_.find(meter);
  if (found == marks_.end()) return {};
  const std::vector<MeterMark>& marks = found->second;
  auto at = std::lower_bound(marks.begin(), marks.end(), mark, comes_first);
  Neighbours result;
  if (at != marks.begin()) result.before = &*std::prev(at);
  if (at != marks.end() && is_same(at->fact, mark.fact)) ++at;
  if (at != marks.end()) result.after = &*at;
  return result;
}

void MeterChecks::check(const Placed& placed, Against against, const std::vector<Placed>& uses,
                        Objections& objections) const {
  for (auto& [meter, mark] : marks_of(placed)) {
    if (mark.end < mark.begin && !mark.is_change) {
      objections.push_back(with_figures(about(CheckKind::meter_backwards, meter, mark),
                                        reading_figure(mark.end), reading_figure(mark.begin)));
      continue;
    }
    mark.rank = rank_in_day(meter, mark);
    const Neighbours near = neighbours(meter, mark);
    const Between between{meter, mark, uses};
    if (near.before != nullptr) check_before(between, *near.before, objections);
    if (near.after != nullptr && against == Against::all) {
      check_after(between, *near.after, objections);
    }
  }
}

void MeterChecks::check_stated(const Placed& placed, const logbook::MeterReading& stated,
                               Objections& objections) const {
  const auto found = marks_.find(stated.meter);
  if (found == marks_.end()) return;
  const Day day = placed.said->day;
  const MeterMark* below = nullptr;
  const MeterMark* above = nullptr;
  const MeterMark* today = nullptr;
  bool changed_today = false;
  for (const MeterMark& mark : found->second) {
    if (mark.fact.said->day < day) below = &mark;
    if (mark.fact.said->day == day) today = &mark;
    changed_today = changed_today || (mark.is_change && mark.fact.said->day == day);
    if (mark.fact.said->day > day && above == nullptr) above = &mark;
  }
  // Past the newest run nothing may be stated: what ran since is not on record.
  const MeterMark* last = today != nullptr ? today : below;
  std::optional<HourMeter> bound;
  if (below != nullptr && stated.reading < below->end) bound = below->end;
  if (above != nullptr && stated.reading > above->begin) bound = above->begin;
  if (above == nullptr && last != nullptr && stated.reading > last->end) bound = last->end;
  if (!bound || changed_today) return;
  objections.push_back(with_figures(doubt(CheckKind::stated_total_differs, "meter"),
                                    reading_figure(stated.reading), reading_figure(*bound)));
  objections.back().names = {stated.meter.text};
}

std::vector<MeterName> MeterChecks::names() const {
  std::vector<MeterName> names;
  for (const auto& [meter, marks] : marks_) names.push_back(meter);
  return names;
}

}  // namespace reckon
