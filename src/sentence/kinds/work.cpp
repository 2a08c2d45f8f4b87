// Work on record.
#include "sentence/kinds/kinds.h"
#include "sentence/sorts/amounts.h"
#include "sentence/sorts/things.h"

namespace sentence {

using logbook::Done;
using logbook::Fitted;
using logbook::Overhauled;
using logbook::Removed;

namespace {

// The clauses by which work states its place in the history.
template <class Work>
constexpr Clause airframe = clause<&Work::airframe>("airframe {airframe}",
                                                    "the airframe's total hours then");
template <class Work>
constexpr Clause engine = clause<&Work::engine>("engine {engine}", "the engine's total hours then");
template <class Work>
constexpr Clause meter = clause<&Work::meter>("{meter}", "what a meter showed then");
template <class Work>
constexpr Clause before = flag<&Work::before_the_first_flight>("before_the_first_flight",
                                                               "before the first flight",
                                                               "where it stands in its day");
template <class Work>
constexpr Clause after = flag<&Work::after_the_last_flight>("after_the_last_flight",
                                                            "after the last flight",
                                                            "where it stands in its day");

constexpr Clause done_clauses[] = {
    airframe<Done>,
    engine<Done>,
    meter<Done>,
    clause<&Done::counts>("{counts}", "the counts then"),
    clause<&Done::begun>("begun {begun}", "the day on which the work was begun"),
    clause<&Done::by>("by {by}", "who did it"),
    clause<&Done::method>("method {method}", "how it was done"),
    flag<&Done::returned_to_service>("returned_to_service", "returned to service",
                                     "it was approved for return to service"),
    clause<&Done::second_inspection_by>("second inspection by {second_inspection_by}",
                                        "who looked at it again"),
    before<Done>,
    after<Done>};
constexpr Clause fitted_clauses[] = {
    airframe<Fitted>, engine<Fitted>,
    meter<Fitted>,    clause<&Fitted::with>("with {with}", "what it already had"),
    before<Fitted>,   after<Fitted>};
constexpr Clause removed_clauses[] = {airframe<Removed>,
                                      engine<Removed>,
                                      meter<Removed>,
                                      clause<&Removed::with>("with {with}", "what it had by then"),
                                      clause<&Removed::because>("because {because}", "why"),
                                      before<Removed>,
                                      after<Removed>};
constexpr Clause overhauled_clauses[] = {clause<&Overhauled::had>("{had}", "what it had by then")};

}  // namespace

constexpr Kind declarations::done =
    with_common(kind<Done, &Done::class_, &Done::name, &Done::thing>(
                    "done", "{class_} {name} done on {thing},", done_clauses,
                    {"that a task was done",
                     "2026-03-10 task \"100-hour inspection\" done on aircraft ZZ-KIT, "
                     "airframe 4323.3 h, by \"B. Quill\", method \"paragraph f\", "
                     "returned to service, second inspection by \"M. Tansley\".\n"
                     "2026-03-10 directive D-26-04 done on engine TS-40 E-1001, engine 1830.1 h, "
                     "collective meter 1236.2, 5608 landings, begun 2026-03-08, "
                     "after the last flight."}),
                Common::without_by);
constexpr Kind declarations::fitted = kind<Fitted, &Fitted::thing, &Fitted::host, &Fitted::place>(
    "fitted", "{thing} fitted to {host} {place},", fitted_clauses,
    {"that an engine or part was fitted",
     "2026-03-10 part PN-4411 B-91 fitted to aircraft ZZ-KIT \"main rotor blade 1\", "
     "airframe 4323.3 h, with 2159.0 h since new, paper \"form 1\".\n"
     "2026-03-10 engine TS-40 E-1001 fitted to aircraft ZZ-KIT engine 1, airframe 5003.1 h, "
     "with 1820.4 h since new, with 2210 gas-generator cycles since new."});
constexpr Kind declarations::removed =
    kind<Removed, &Removed::thing, &Removed::host, &Removed::place>(
        "removed", "{thing} removed from {host} {place},", removed_clauses,
        {"that an engine or part was removed",
         "2026-03-10 part PN-4411 B-88 removed from aircraft ZZ-KIT \"main rotor blade 1\", "
         "airframe 4323.3 h, because \"loan\"."});
constexpr Kind declarations::overhauled = kind<Overhauled, &Overhauled::thing>(
    "overhauled", "{thing} overhauled,", overhauled_clauses,
    {"that a thing was overhauled",
     "2026-03-10 engine TS-40 E-1001 overhauled, 1822.1 h since new, paper \"release 12\"."});

}  // namespace sentence
