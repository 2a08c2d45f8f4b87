// Which clock counts, and what happens to meters.
#include "sentence/kinds/kinds.h"
#include "sentence/sorts/amounts.h"
#include "sentence/sorts/things.h"

namespace sentence {

using logbook::CountsHours;
using logbook::MeterChanged;
using logbook::MeterLost;
using Source = decltype(CountsHours::source);

namespace {

constexpr Option source_options[] = {Alternative<Source, logbook::ByClock>::empty("clock"),
                                     alternative<Source, logbook::MeterName>("{meter} meter")};

}  // namespace

template <>
inline constexpr Sort sort_of<Source> = choice<Source>("source-of-hours", source_options);

namespace {

constexpr Clause source_clauses[] = {
    clause<&CountsHours::factor>("factor {factor}", "what the hours are multiplied by")};
constexpr Clause changed_clauses[] = {
    clause<&MeterChanged::out>("out {out}", "what the old meter showed"),
    clause<&MeterChanged::in>("in {in}", "what the new meter shows"),
    clause<&MeterChanged::airframe>("airframe {airframe}", "the airframe's total then")};

}  // namespace

constexpr Kind declarations::counts_hours =
    kind<CountsHours, &CountsHours::aircraft, &CountsHours::source>(
        "counts-hours", "{aircraft} counts airframe hours from {source},", source_clauses,
        {"the meter or clock that counts the airframe's hours from this day",
         "2026-01-01 aircraft ZZ-MOB counts airframe hours from collective meter, factor 1.12.\n"
         "2026-01-01 aircraft ZZ-KIT counts airframe hours from clock."});
constexpr Kind declarations::meter_changed =
    kind<MeterChanged, &MeterChanged::aircraft, &MeterChanged::meter>(
        "meter-changed", "{aircraft} changed {meter} meter,", changed_clauses,
        {"a meter that was exchanged",
         "2026-02-01 aircraft ZZ-MOB changed collective meter, out 6120.8, in 12.0."});
constexpr Kind declarations::meter_lost =
    kind<MeterLost, &MeterLost::aircraft, &MeterLost::meter, &MeterLost::at>(
        "meter-lost", "{aircraft} lost {meter} meter at {at},", {},
        {"a meter that no longer counts",
         "2026-02-01 aircraft ZZ-MOB lost collective meter at 1500.2."});

}  // namespace sentence
