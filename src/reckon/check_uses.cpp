#include "reckon/check_uses.h"

#include <algorithm>

namespace reckon {

namespace {

using logbook::Flew;
using quantity::Days;
using quantity::Hours;

bool is_use(const logbook::Fact& fact) {
  return std::holds_alternative<Flew>(fact) || std::holds_alternative<logbook::Ran>(fact) ||
         std::holds_alternative<logbook::Tried>(fact) ||
         std::holds_alternative<logbook::Unaccounted>(fact);
}

void insert(std::vector<Placed>& facts, const Placed& placed) {
  facts.insert(std::upper_bound(facts.begin(), facts.end(), placed), placed);
}

bool lands_after_midnight(const Flew& flew) {
  return flew.took_off && flew.landed && flew.landed->minute < flew.took_off->minute;
}

Day first_day(const logbook::Said& said) {
  const auto* flew = std::get_if<Flew>(&said.fact);
  return flew != nullptr && flew->since ? *flew->since : said.day;
}

bool have_equal_times(const Flew& a, const Flew& b) {
  return a.took_off && a.took_off == b.took_off && a.landed == b.landed;
}
bool are_of_one_row(const logbook::Said& a, const logbook::Said& b) {
  return a.from && a.from == b.from && a.fact == b.fact;
}
bool is_the_same_flight(const logbook::Said& a, const logbook::Said& b) {
  const auto* one = std::get_if<Flew>(&a.fact);
  const auto* other = std::get_if<Flew>(&b.fact);
  if (one == nullptr || other == nullptr || one->hours != other->hours) return false;
  const bool have_equal_meters = !one->meters.empty() && one->meters == other->meters;
  return have_equal_meters || have_equal_times(*one, *other) || are_of_one_row(a, b);
}

}  // namespace

std::optional<UseChecks::Span> UseChecks::span_of(const Placed& placed) {
  const auto* flew = std::get_if<Flew>(&placed.said->fact);
  if (flew == nullptr) return std::nullopt;
  Span span{first_day(*placed.said), placed.said->day, flew->hours, placed};
  if (!flew->since && lands_after_midnight(*flew)) span.to = quantity::day_after(span.to);
  return span;
}

void UseChecks::add(const Placed& placed) {
  const logbook::Fact& fact = placed.said->fact;
  meters_.add(placed);
  if (const auto* counts = std::get_if<logbook::CountsHours>(&fact)) {
    insert(sources_, placed);
    clocks_.add(placed.said->day, *counts);
  }
  if (std::holds_alternative<logbook::BringsForward>(fact)) insert(begins_, placed);
  if (!is_use(fact)) return;
  insert(uses_, placed);
  const std::optional<Span> span = span_of(placed);
  if (span && span->from == span->to) flown_[span->from] += span->hours;
  if (span && span->from != span->to) spans_.push_back(*span);
}

std::vector<Placed> UseChecks::on(Day day) const {
  const auto first = std::lower_bound(uses_.begin(), uses_.end(), day,
                                      [](const Placed& use, Day on) { return use.said->day < on; });
  const auto end =
      std::find_if(first, uses_.end(), [&](const Placed& use) { return use.said->day != day; });
  return {first, end};
}

Day UseChecks::began(const Placed& use) const {
  if (!std::holds_alternative<logbook::Unaccounted>(use.said->fact)) return first_day(*use.said);
  const auto at = std::lower_bound(uses_.begin(), uses_.end(), use);
  if (at != uses_.begin()) return std::prev(at)->said->day;
  return begins_.empty() ? use.said->day : begins_.front().said->day;
}

std::vector<Placed> UseChecks::spread_over(Day day) const {
  std::vector<Placed> spread;
  std::copy_if(uses_.begin(), uses_.end(), std::back_inserter(spread),
               [&](const Placed& use) { return day < use.said->day && began(use) <= day; });
  return spread;
}

quantity::ServiceHours UseChecks::counted(const Placed& placed) const {
  const Use use = use_of(*placed.said, clocks_);
  return service(use, use.raw);
}

HoursSource UseChecks::source_on(Day day) const {
  HoursSource source;
  for (const Placed& placed : sources_) {
    if (placed.said->day > day) break;
    source.is_stated = true;
    const auto& stated = std::get<logbook::CountsHours>(placed.said->fact).source;
    const auto* meter = std::get_if<logbook::MeterName>(&stated);
    source.meter = meter != nullptr ? std::optional(*meter) : std::nullopt;
  }
  return source;
}

void UseChecks::check(const Placed& placed, Against against, bool is_twin,
                      Objections& objections) const {
  const logbook::Fact& fact = placed.said->fact;
  check_begin(placed, objections);
  if (is_use(fact)) {
    check_flight(placed, {source_on(placed.said->day), is_twin}, objections);
    check_day(placed, objections);
    check_runs(placed, objections);
    if (against == Against::all) check_year(placed, objections);
    check_twice(placed, against, objections);
  }
  meters_.check(placed, against, uses_, objections);
}

Hours UseChecks::flown_on(Day day) const {
  const auto found = flown_.find(day);
  return found == flown_.end() ? Hours{} : found->second;
}

std::vector<logbook::EntryId> UseChecks::entries_on(Day day, const Placed& but) const {
  std::vector<logbook::EntryId> entries;
  for (const Placed& use : on(day)) {
    if (!is_same(use, but)) entries.push_back(use.id);
  }
  return entries;
}

bool UseChecks::is_followed_that_day(const Placed& placed) const {
  const auto next = std::upper_bound(uses_.begin(), uses_.end(), placed);
  return next != uses_.end() && next->said->day == placed.said->day;
}

// What the days of a span can still hold beside the flights of one day, among them `also`.
Hours UseChecks::room_in(const Span& span, const Span* also) const {
  Hours room;
  for (Day day = span.from; day <= span.to; day = quantity::day_after(day)) {
    Hours flown = flown_on(day);
    if (also != nullptr && also->from == day) flown += also->hours;
    if (flown < a_day) room += a_day - flown;
  }
  return room;
}

void UseChecks::check_day(const Placed& placed, Objections& objections) const {
  const std::optional<Span> span = span_of(placed);
  if (!span) return;
  if (span->from == span->to) {
    check_one_day(*span, objections);
  } else {
    check_span(*span, objections);
  }
}

void UseChecks::check_span(const Span& span, Objections& objections) const {
  const Hours room = room_in(span, nullptr);
  if (span.hours <= room) return;
  objections.push_back(with_figures(refusal(CheckKind::too_long_a_day, "hours"),
                                    hours_figure(span.hours), hours_figure(room)));
  objections.back().day = span.to;
}

void UseChecks::check_one_day(const Span& span, Objections& objections) const {
  const bool is_on_record = !is_new(span.fact);
  const Hours sum = is_on_record ? flown_on(span.from) : flown_on(span.from) + span.hours;
  if (sum > a_day) {
    if (is_on_record && is_followed_that_day(span.fact)) return;
    objections.push_back(with_figures(refusal(CheckKind::too_long_a_day, "hours"),
                                      hours_figure(sum), hours_figure(a_day)));
    objections.back().day = span.from;
    objections.back().entries = entries_on(span.from, span.fact);
    return;
  }
  for (const Span& other : spans_) {
    if (span.from < other.from || span.from > other.to) continue;
    if (other.hours <= room_in(other, is_on_record ? nullptr : &span)) continue;
    objections.push_back(with_figures(refusal(CheckKind::too_long_a_day, "hours"),
                                      hours_figure(span.hours), hours_figure(a_day)));
    objections.back().day = span.from;
    objections.back().entries = {other.fact.id};
  }
}

// A meter cannot run for more hours than its days have.
void UseChecks::check_runs(const Placed& placed, Objections& objections) const {
  const auto* flew = std::get_if<Flew>(&placed.said->fact);
  const auto* ran = std::get_if<logbook::Ran>(&placed.said->fact);
  if (flew == nullptr && ran == nullptr) return;
  const bool is_told = std::any_of(objections.begin(), objections.end(), [](const auto& each) {
    return each.kind == CheckKind::too_long_a_day;
  });
  const Days days = (flew != nullptr ? span_of(placed)->to : placed.said->day) -
                    first_day(*placed.said) + Days::of(1);
  const Hours most = a_day * days.count();
  for (const logbook::MeterRun& run : flew != nullptr ? flew->meters : ran->meters) {
    if (is_told || run.to - run.from <= most) continue;
    objections.push_back(with_figures(refusal(CheckKind::too_long_a_day, "meters"),
                                      hours_figure(run.to - run.from), hours_figure(most)));
    objections.back().names = {run.meter.text};
    objections.back().day = placed.said->day;
  }
}

// What is brought forward holds at the start of its day; before it there are no flights.
void UseChecks::check_begin(const Placed& placed, Objections& objections) const {
  const logbook::Fact& fact = placed.said->fact;
  if (is_use(fact) && !begins_.empty() && first_day(*placed.said) < begins_.front().said->day) {
    objections.push_back(refusal(CheckKind::before_brought_forward, "day"));
    objections.back().day = begins_.front().said->day;
    objections.back().entries = {begins_.front().id};
  }
  if (!std::holds_alternative<logbook::BringsForward>(fact) || uses_.empty()) return;
  const bool is_first = begins_.empty() || is_same(begins_.front(), placed);
  if (!is_first || first_day(*uses_.front().said) >= placed.said->day) return;
  objections.push_back(refusal(CheckKind::before_brought_forward, "day"));
  objections.back().day = uses_.front().said->day;
  objections.back().entries = {uses_.front().id};
}

// The year is what people mistype in January, and what stays wrong on a whole sheet.
void UseChecks::check_year(const Placed& placed, Objections& objections) const {
  constexpr std::int64_t far_days = 400;
  constexpr std::int64_t year_days = 365;
  constexpr std::int64_t near_days = 14;
  if (uses_.empty()) return;
  const Day last = uses_.back().said->day;
  const std::int64_t earlier = (last - placed.said->day).count();
  const bool is_a_year_off = earlier >= year_days - near_days && earlier <= year_days + near_days;
  if (earlier <= far_days && !is_a_year_off) return;
  objections.push_back(doubt(CheckKind::wrong_year, "day"));
  objections.back().day = last;
  objections.back().difference = Figure(Days::of(earlier));
  objections.back().entries = {uses_.back().id};
}

void UseChecks::check_twice(const Placed& placed, Against against, Objections& objections) const {
  for (const Placed& use : on(placed.said->day)) {
    if (is_same(use, placed) || !is_the_same_flight(*use.said, *placed.said)) continue;
    if (against == Against::earlier && placed < use) continue;
    objections.push_back(doubt(CheckKind::duplicate, "hours"));
    objections.back().entries = {use.id};
    objections.back().stated = hours_figure(std::get<Flew>(placed.said->fact).hours);
    return;
  }
}

}  // namespace reckon
