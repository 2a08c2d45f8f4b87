// What falls due, what is planned and what was looked through.
#include "sentence/kinds/kinds.h"
#include "sentence/sorts/amounts.h"
#include "sentence/sorts/things.h"

namespace sentence {

using logbook::AtAirframe;
using logbook::AtEngine;
using logbook::DuePoint;
using logbook::HoursIn;
using logbook::NextDue;
using logbook::NextFrom;
using logbook::Per;
using logbook::Plan;
using logbook::Rate;
using logbook::Reviewed;
using logbook::Task;
using logbook::TaskEnds;
using PlannedUse = decltype(Plan::use);

namespace {

constexpr Word next_from_words[] = {word(NextFrom::done, "done"), word(NextFrom::due, "due")};
constexpr Word per_words[] = {word(Per::day, "day"), word(Per::week, "week"),
                              word(Per::month, "month"), word(Per::year, "year")};
constexpr Option at_airframe_options[] = {option<&AtAirframe::hours>("airframe {hours}")};
constexpr Option at_engine_options[] = {option<&AtEngine::hours>("engine {hours}")};

}  // namespace

template <>
inline constexpr Sort sort_of<NextFrom> = words<NextFrom>("next-from", next_from_words);
template <>
inline constexpr Sort sort_of<Per> = words<Per>("per", per_words);
template <>
inline constexpr Sort sort_of<AtAirframe> = choice<AtAirframe>("at-airframe", at_airframe_options);
template <>
inline constexpr Sort sort_of<AtEngine> = choice<AtEngine>("at-engine", at_engine_options);

namespace {

constexpr Option due_point_options[] = {alternative<DuePoint, AtAirframe>("{at-airframe}"),
                                        alternative<DuePoint, AtEngine>("{at-engine}"),
                                        alternative<DuePoint, logbook::Count>("{count}"),
                                        alternative<DuePoint, quantity::Day>("{date}")};
constexpr Option rate_options[] = {option<&Rate::hours, &Rate::per>("{hours} a {per}")};
constexpr Option hours_in_options[] = {
    option<&HoursIn::hours, as<&HoursIn::days, &days_sort>>("{hours} in {days}")};

}  // namespace

template <>
inline constexpr Sort sort_of<DuePoint> = choice<DuePoint>("due-point", due_point_options);
template <>
inline constexpr Sort sort_of<Rate> = choice<Rate>("rate", rate_options);
template <>
inline constexpr Sort sort_of<HoursIn> = choice<HoursIn>("hours-in-days", hours_in_options);

namespace {

constexpr Option use_options[] = {alternative<PlannedUse, Rate>("{rate}"),
                                  alternative<PlannedUse, HoursIn>("{hours-in-days}")};

}  // namespace

template <>
inline constexpr Sort sort_of<PlannedUse> = choice<PlannedUse>("planned-use", use_options);

namespace {

constexpr Clause task_clauses[] = {
    clause<&Task::first>("first at {first}", "when it is due for the first time"),
    clause<as<&Task::every, &interval_sort>>("every {every or}",
                                             "how often, whichever comes first"),
    flag<&Task::excess_counts>("excess_counts", "excess counts",
                               "what was flown past the due point is taken from the next time"),
    clause<&Task::over_to_shop>("over {over_to_shop} to reach the shop",
                                "how far it may be passed on the way to the shop"),
    clause<&Task::next_from>("next from {next_from}",
                             "what the next time counts from; done if not said"),
    clause<&Task::source>("source {source}", "where the task stands"),
    clause<&Task::revision>("revision {revision}", "the revision of that source")};
constexpr Clause task_ends_clauses[] = {clause<&TaskEnds::because>("because {because}", "why")};
constexpr Clause next_due_clauses[] = {
    clause<&NextDue::basis>("basis {basis}", "where the figure stands")};
constexpr Clause plan_clauses[] = {clause<&Plan::use>("{use}", "how much will be flown"),
                                   clause<&Plan::from>("from {from}", "the first day of the plan"),
                                   clause<&Plan::to>("to {to}", "the last day of the plan")};
constexpr Clause reviewed_clauses[] = {
    clause<&Reviewed::revision>("revision {revision}", "which issue was looked through")};

}  // namespace

constexpr Kind declarations::task = with_a_clause(kind<Task, &Task::class_, &Task::name,
                                                       &Task::scope>(
    "task", "{class_} {name} on {scope}", task_clauses,
    {"something to be done again and again, or once",
     "2026-01-01 task \"100-hour inspection\" on aircraft ZZ-KIT every 100.0 h since done, "
     "excess counts, over 10.0 h to reach the shop, source \"manual 5-20\".\n"
     "2026-01-01 inspection \"annual inspection\" on aircraft ZZ-KIT every 12 calendar months.\n"
     "2026-01-01 directive D-26-04 on model TS-40 first at the latest of 150.0 h after 2014-10-08 "
     "and 500.0 h since new, every 500.0 h since done, revision \"2\".\n"
     "2026-01-01 service \"300-hour service\" on engine TS-40 E-1001 every 300.0 h or 12 months, "
     "next from due.\n"
     "2026-01-01 storage step \"turn the rotors\" on aircraft ZZ-KIT every 30 days."}));
constexpr Kind declarations::task_ends =
    kind<TaskEnds, &TaskEnds::class_, &TaskEnds::name, &TaskEnds::scope>(
        "task-ends", "{class_} {name} on {scope} ends,", task_ends_clauses,
        {"a task that is no longer to be done",
         "2026-06-01 task \"progressive inspection\" on aircraft ZZ-KIT ends, "
         "because \"annual instead\"."});
constexpr Kind declarations::next_due =
    kind<NextDue, &NextDue::class_, &NextDue::name, &NextDue::thing, &NextDue::points>(
        "next-due", "{class_} {name} on {thing} is next due at {points or},", next_due_clauses,
        {"a due point taken from a status sheet when the record begins",
         "2026-02-25 task \"300-hour\" on aircraft ZZ-KIT is next due at airframe 4339.6 h or "
         "2025-09-01, basis \"status sheet\"."});
constexpr Kind declarations::plan = kind<Plan, &Plan::aircraft>(
    "plan", "{aircraft} plans", plan_clauses,
    {"how much an aircraft is going to fly",
     "2026-03-01 aircraft ZZ-KIT plans 25.0 h a month, from 2026-05-01, to 2026-09-30.\n"
     "2026-03-01 aircraft ZZ-KIT plans 110.0 h in 299 days."});
constexpr Kind declarations::reviewed = kind<Reviewed, &Reviewed::aircraft, &Reviewed::what>(
    "reviewed", "{aircraft} reviewed {what},", reviewed_clauses,
    {"that directives and limitations were looked through",
     "2026-03-01 aircraft ZZ-KIT reviewed \"directives and limitations\", revision \"2026-02\", "
     "by \"M. Tansley\"."});

}  // namespace sentence
