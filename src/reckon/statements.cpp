#include "reckon/statements.h"

#include <algorithm>
#include <utility>

#include "reckon/work.h"

namespace reckon {

namespace {

// A stated total in hours may be rounded to tenths; a count is met or not.
bool meets(const Figure& stated, const Figure& reckoned) {
  if (stated.unit() != Unit::hours) return stated.raw() == reckoned.raw();
  return agrees(quantity::floor_to_seconds(stated.hours()), reckoned.hours());
}

// What else an entry states: of which thing, since when.
struct Claim {
  logbook::Thing thing;
  Clock clock;
  Figure stated;
  logbook::Basis since = logbook::Basis::new_;
};

Claim claim_of(const logbook::Thing& thing, const logbook::Had& had) {
  Claim claim;
  claim.thing = thing;
  claim.since = had.since.value_or(logbook::Basis::new_);
  if (const auto* hours = std::get_if<logbook::ClockHours>(&had.amount)) {
    claim.clock = HoursClock{hours->meter};
    claim.stated = Figure(quantity::service_hours(hours->hours));
  } else {
    const auto& count = std::get<logbook::Count>(had.amount);
    claim.clock = count.counter;
    claim.stated = Figure(count.amount);
  }
  return claim;
}

std::vector<Claim> amounts_claimed(const logbook::Fact& fact) {
  std::vector<Claim> claims;
  const auto add = [&](const logbook::Thing& thing, const std::vector<logbook::Had>& all) {
    for (const logbook::Had& had : all) {
      if (had.grade == logbook::Grade::exact) claims.push_back(claim_of(thing, had));
    }
  };
  if (const auto* fitted = std::get_if<logbook::Fitted>(&fact)) add(fitted->thing, fitted->with);
  if (const auto* removed = std::get_if<logbook::Removed>(&fact))
    add(removed->thing, removed->with);
  if (const auto* over = std::get_if<logbook::Overhauled>(&fact)) add(over->thing, over->had);
  if (const auto* forward = std::get_if<logbook::BringsForward>(&fact)) {
    add(forward->thing, forward->had);
  }
  if (const auto* done = std::get_if<logbook::Done>(&fact)) {
    for (const logbook::Count& count : done->counts) {
      claims.push_back({done->thing, count.counter, Figure(count.amount)});
    }
  }
  return claims;
}

std::vector<Claim> claims_of(const WorkEvent& event) {
  std::vector<Claim> claims = amounts_claimed(event.fact->said->fact);
  const auto engine = work_in(event.fact->said->fact)->engine;
  if (engine && event.engine) {
    claims.push_back({*event.engine, service_clock, Figure(quantity::service_hours(*engine))});
  }
  return claims;
}

class Listing {
 public:
  explicit Listing(const StatementSources& from) : from_(from) {}

  void add_airframe(const WorkEvent& event) {
    const auto stated = work_in(event.fact->said->fact)->airframe;
    if (!event.aircraft || !stated) return;
    const Claim claim{*event.aircraft, service_clock, Figure(quantity::service_hours(*stated))};
    Statement statement = statement_of(*event.fact, claim, event.mark);
    if (is_before_the_book(event)) statement.reckoned = statement.stated;
    statement.agreed_when_written = event.agreed;
    if (is_within_a_use(event, statement)) {
      statement.reckoned = statement.stated;
      statement.agreed_when_written = true;
    }
    note_what_moved(event, statement);
    list_.push_back(std::move(statement));
  }

  // A thing's other totals: they agreed if they do now, or if what has come late since then moved
  // the airframe by just as much.
  void add_others(const WorkEvent& event) {
    for (const Claim& claim : claims_of(event)) {
      Statement statement = statement_of(*event.fact, claim, event.mark);
      if (statement.reckoned.is_unknown()) {
        if (is_its_base(event.fact->root, claim, event.mark)) continue;
        statement.reckoned = statement.stated;
      }
      const bool agrees_now = meets(statement.stated, statement.reckoned);
      statement.agreed_when_written = agrees_now || is_moved_alike(event, statement);
      note_what_moved(event, statement);
      list_.push_back(std::move(statement));
    }
  }

  // Brought forward a second time: what else is on record is reckoned on to the start of its day.
  void add_later_forward(const StandingFact& fact, const logbook::BringsForward& forward) {
    const Mark mark{fact.said->day, 0};
    std::vector<Claim> claims = amounts_claimed(fact.said->fact);
    if (forward.airframe) {
      claims.push_back(
          {forward.thing, service_clock, Figure(quantity::service_hours(*forward.airframe))});
    }
    for (const Claim& claim : claims) {
      Statement statement = statement_of(fact, claim, mark);
      if (statement.reckoned.is_unknown()) continue;
      statement.agreed_when_written = meets(statement.stated, statement.reckoned);
      list_.push_back(std::move(statement));
    }
  }

  std::vector<Statement> take() { return std::move(list_); }

 private:
  Statement statement_of(const StandingFact& fact, const Claim& claim, const Mark& at) const {
    Statement statement;
    statement.entry = fact.root;
    statement.thing = claim.thing;
    statement.clock = claim.clock;
    statement.stated = claim.stated;
    const TotalAsked asked{claim.thing, claim.clock, at, claim.since};
    const bool is_base = is_its_base(fact.root, claim, at);
    const std::int64_t written = is_base ? fact.written : INT64_MAX;
    statement.reckoned = from_.totals.as_said_before(written, asked).figure;
    return statement;
  }

  bool is_its_base(const logbook::EntryId& root, const Claim& claim, const Mark& at) const {
    const auto base = from_.totals.base({claim.thing, claim.clock, at, claim.since});
    return base && base->entry == root;
  }

  // The total lies within the hours of an entry for several days, which tell no better.
  bool is_within_a_use(const WorkEvent& event, const Statement& statement) const {
    const Figure spread = from_.totals.spread_around(*event.aircraft, event.mark);
    if (spread.raw() == 0 || statement.reckoned.is_unknown()) return false;
    return statement.stated.compare(statement.reckoned) > 0 &&
           statement.stated.compare(statement.reckoned + spread) <= 0;
  }

  bool is_before_the_book(const WorkEvent& event) const {
    const auto& begins = from_.timeline.ledgers.at(*event.aircraft).begins;
    return !begins || event.mark < Mark{*begins, 0};
  }

  bool is_moved_alike(const WorkEvent& event, const Statement& statement) const {
    if (!event.aircraft || !event.total_then || statement.clock != service_clock) return false;
    const Figure airframe =
        from_.totals.since_new(*event.aircraft, service_clock, event.mark).figure;
    const quantity::ServiceHours moved = airframe.hours() - *event.total_then;
    const Figure unmoved = statement.reckoned - Figure(moved);
    return meets(statement.stated, unmoved);
  }

  // What was accepted since then is just what moved the airframe.
  bool is_settled(const WorkEvent& event) const {
    if (!event.total_then) return false;
    const Figure airframe =
        from_.totals.since_new(*event.aircraft, service_clock, event.mark).figure;
    const quantity::ServiceHours accepted =
        from_.past.accepted_since(*event.aircraft, event.fact->said->day, event.fact->chain.back());
    return airframe.hours() - *event.total_then == accepted;
  }

  void note_what_moved(const WorkEvent& event, Statement& statement) const {
    const bool has_moved = event.aircraft && statement.agreed_when_written &&
                           !meets(statement.stated, statement.reckoned);
    if (!has_moved) return;
    statement.moved_by =
        from_.past.newest_unseen(*event.aircraft, event.fact->said->day, event.fact->chain.back());
    statement.is_settled = is_settled(event);
  }

  const StatementSources& from_;
  std::vector<Statement> list_;
};

// Whether an aircraft flew on the work's day, so that its place within the day matters.
bool has_flights_that_day(const WorkEvent& event, const Timeline& timeline) {
  const Ledger& ledger = timeline.ledgers.at(*event.aircraft);
  const Day day = event.mark.day;
  return ledger.first_after({day, 0}) < ledger.first_after({day, end_of_day});
}

}  // namespace

std::vector<Statement> statements_of(const StatementSources& from) {
  Listing listing(from);
  for (const WorkEvent& event : from.timeline.works) {
    listing.add_airframe(event);
    listing.add_others(event);
  }
  for (const StandingFact& fact : from.standing.facts) {
    const auto* forward = std::get_if<logbook::BringsForward>(&fact.said->fact);
    if (forward != nullptr) listing.add_later_forward(fact, *forward);
  }
  return listing.take();
}

OnAirframe engine_totals_on_airframe(const Timeline& timeline, const Totals& totals) {
  OnAirframe on_airframe;
  for (const WorkEvent& event : timeline.works) {
    const auto stated = *work_in(event.fact->said->fact);
    const bool is_needed = stated.engine && !stated.airframe && event.engine && event.aircraft &&
                           has_flights_that_day(event, timeline);
    if (!is_needed) continue;
    const Mark start{event.mark.day, 0};
    const Figure airframe = totals.since_new(*event.aircraft, service_clock, start).figure;
    const Figure engine = totals.since_new(*event.engine, service_clock, start).figure;
    const bool is_known = (airframe + engine).sureness() == Sureness::exact;
    const std::int64_t apart = airframe.raw() - engine.raw();
    if (!is_known || apart % 1000 != 0) continue;
    on_airframe[event.fact->root] = *stated.engine + quantity::Hours::of(apart / 1000);
  }
  return on_airframe;
}

}  // namespace reckon
