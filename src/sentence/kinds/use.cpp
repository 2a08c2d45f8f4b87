// What was flown and run.
#include "sentence/kinds/kinds.h"
#include "sentence/sorts/amounts.h"
#include "sentence/sorts/things.h"

namespace sentence {

using logbook::Blocks;
using logbook::Flew;
using logbook::Ran;
using logbook::Tried;
using logbook::Unaccounted;

namespace {

constexpr Option blocks_options[] = {option<&Blocks::off, &Blocks::on>("{off} to {on}")};

}  // namespace

template <>
inline constexpr Sort sort_of<Blocks> = choice<Blocks>("block-times", blocks_options);

namespace {

constexpr Clause flew_clauses[] = {
    clause<&Flew::hours>("{hours}", "time in service"),
    clause<&Flew::hours_at>("{hours_at}", "hours of one engine, where they differ"),
    clause<&Flew::counts>("{counts}", "starts, landings, lifts and whatever else is counted"),
    clause<&Flew::meters>("{meters}", "a meter before and after"),
    clause<&Flew::took_off>("took off {took_off}", "when it left the surface"),
    clause<&Flew::landed>("landed {landed}", "when it touched it again"),
    clause<&Flew::blocks>("blocks {blocks}", "block times, which are kept and never counted"),
    clause<&Flew::since>("since {since}", "several days in one entry: the first of them"),
    flag<&Flew::before_the_first_flight>("before_the_first_flight", "before the first flight",
                                         "where it stands in its day"),
    flag<&Flew::after_the_last_flight>("after_the_last_flight", "after the last flight",
                                       "where it stands in its day"),
    flag<&Flew::for_hire>("for_hire", "for hire", "people were carried for hire"),
    flag<&Flew::by_clock>("by_clock", "by clock", "the hours are by the clock, not the meter"),
    clause<&Flew::pilot>("pilot {pilot}", "who flew")};
constexpr Clause ran_clauses[] = {
    clause<&Ran::hours>("{hours}", "hours on the ground, which are no time in service"),
    clause<&Ran::counts>("{counts}", "starts and whatever else is counted"),
    clause<&Ran::meters>("{meters}", "a meter before and after")};
constexpr Clause tried_clauses[] = {
    needed_clause<&Tried::counts>("{counts}", "how many starts were tried")};
constexpr Clause unaccounted_clauses[] = {
    clause<&Unaccounted::hours>("{hours}", "the hours that are missing"),
    clause<&Unaccounted::meters>("{meters}", "the meter that shows it")};

}  // namespace

constexpr Kind declarations::flew = kind<Flew, &Flew::aircraft>(
    "flew", "{aircraft} flew", flew_clauses,
    {"a flight, or several of a day",
     "2026-03-04 aircraft ZZ-KIT flew 1.7 h, 1 start, 3 landings, "
     "collective meter 1234.5 to 1236.2, took off 09:11-07:00, landed 10:53-07:00, "
     "pilot \"A. Fenwick\".\n"
     "2026-03-04 aircraft ZZ-TWN flew 1.2 h, 0.9 h on engine 2, 1 start on engine 1, "
     "2 starts on engine 2, 1 landing.\n"
     "2026-03-04 aircraft ZZ-KIT flew 0:47 h, 1 flight, 1 landing, "
     "blocks 09:00-07:00 to 10:06-07:00, before the first flight, for hire, by clock.\n"
     "2026-03-08 aircraft ZZ-KIT flew 6.5 h, 9 flights, 11 landings, since 2026-03-05."});
constexpr Kind declarations::ran =
    with_a_clause(kind<Ran, &Ran::aircraft, &Ran::place, &Ran::serial>(
        "ran", "{aircraft} {place} [{serial}] ran", ran_clauses,
        {"an engine that ran on the ground",
         "2026-03-04 aircraft ZZ-KIT engine 1 E-1001 ran 0.2 h, 1 start."}));
constexpr Kind declarations::tried = kind<Tried, &Tried::aircraft, &Tried::place, &Tried::serial>(
    "tried", "{aircraft} {place} [{serial}] tried", tried_clauses,
    {"starts after which the engine did not run",
     "2026-03-04 aircraft ZZ-KIT engine 1 E-1001 tried 2 starts."});
constexpr Kind declarations::unaccounted = kind<Unaccounted, &Unaccounted::aircraft>(
    "unaccounted", "{aircraft} unaccounted", unaccounted_clauses,
    {"hours that are missing between two entries",
     "2026-03-20 aircraft ZZ-KIT unaccounted 2.3 h, collective meter 1236.2 to 1238.5."});

}  // namespace sentence
