// What there is, and what it had when the book began.
#include "sentence/kinds/kinds.h"
#include "sentence/sorts/amounts.h"
#include "sentence/sorts/things.h"

namespace sentence {

using logbook::AircraftIs;
using logbook::BringsForward;
using logbook::EngineIs;
using logbook::HasPlace;
using logbook::Need;
using logbook::PartIs;

namespace {

constexpr Word need_words[] = {word(Need::required, "required"), word(Need::optional, "optional")};

}  // namespace

template <>
inline constexpr Sort sort_of<Need> = words<Need>("need", need_words);

namespace {

constexpr Clause aircraft_clauses[] = {
    clause<&AircraftIs::model>("model {model}", "its model"),
    clause<as<&AircraftIs::serial, &plain_serial_sort>>("serial {serial}", "its maker's number"),
    clause<&AircraftIs::made>("made {made}", "the day on which it was made"),
    clause<&AircraftIs::first_certificate>("first certificate {first_certificate}",
                                           "the day of its first certificate of airworthiness")};
constexpr Clause engine_clauses[] = {
    clause<&EngineIs::made>("made {made}", "the day on which it was made"),
    clause<&EngineIs::released>("released {released}", "the day on which its maker released it")};
constexpr Clause part_clauses[] = {
    clause<&PartIs::made>("made {made}", "the day on which it was made"),
    clause<&PartIs::released>("released {released}", "the day on which its maker released it"),
    clause<&PartIs::cured>("cured {cured}", "the quarter in which its rubber was cured")};
constexpr Clause forward_clauses[] = {
    clause<&BringsForward::airframe>("airframe {airframe}", "the airframe's total hours"),
    clause<&BringsForward::had>("{had}", "hours and counts that it had, since new or overhaul"),
    clause<&BringsForward::meters>("{meters}", "what a meter showed"),
    clause<&BringsForward::unknown>("{unknown}", "what nobody knows"),
    clause<&BringsForward::basis>("basis {basis}", "where the figures stand"),
    clause<&BringsForward::put_together_from>("put together from {put_together_from}",
                                              "the papers from which they were worked out")};

}  // namespace

constexpr Kind declarations::aircraft_is = kind<AircraftIs, &AircraftIs::aircraft>(
    "aircraft-is", "{aircraft} is", aircraft_clauses,
    {"an aircraft of the fleet",
     "2026-01-01 aircraft ZZ-KIT is model \"Larkwing 5\", serial 5012, made 2019-03-14, "
     "first certificate 2019-04-02."});
constexpr Kind declarations::engine_is = with_a_clause(kind<EngineIs, &EngineIs::engine>(
    "engine-is", "{engine} is", engine_clauses,
    {"an engine and its dates",
     "2026-01-01 engine TS-40 E-1001 is made 2018-11-02.\n"
     "2026-01-01 engine TS-40 E-1001 is made 2018-11-02, released 2018-11-20."}));
constexpr Kind declarations::part_is = kind<PartIs, &PartIs::part, &PartIs::description>(
    "part-is", "{part} is {description},", part_clauses,
    {"a part and its dates",
     "2026-01-01 part PN-4411 B-88 is \"main rotor blade\", made 2018-05-01, "
     "released 2018-06-10.\n"
     "2026-01-01 part PN-77 S-5 is \"fuel hose\", cured 2Q2018."});
constexpr Kind declarations::has_place =
    kind<HasPlace, &HasPlace::scope, &HasPlace::need, &HasPlace::place>(
        "has-place", "{scope} has {need} place {place},", {},
        {"a place that something is fitted in",
         "2026-01-01 aircraft ZZ-KIT has required place engine 1.\n"
         "2026-01-01 aircraft ZZ-KIT has optional place \"cargo hook\"."});
constexpr Kind declarations::brings_forward =
    with_a_clause(kind<BringsForward, &BringsForward::thing>(
        "brings-forward", "{thing} brings forward", forward_clauses,
        {"what a thing had at the start of a day, when its history in this record begins",
         "2026-01-01 aircraft ZZ-KIT brings forward airframe 4321.6 h, 5608 landings, "
         "collective meter 1234.5, basis \"signed log 3 page 41\".\n"
         "2026-01-01 engine TS-40 E-1001 brings forward 1820.4 h, 2101 starts, "
         "2210.35 gas-generator cycles, 320.4 h since overhaul.\n"
         "2026-01-01 part PN-4411 B-90 brings forward hours unknown.\n"
         "2026-01-01 engine TS-40 E-1002 brings forward 1820.4 h, at least 2310 starts, "
         "hours since overhaul unknown, put together from \"two log books\".\n"
         "2026-01-01 part PN-77 S-5 brings forward by default 13720 torque events."}));

}  // namespace sentence
