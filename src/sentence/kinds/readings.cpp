// What the gauges showed, and what was done that moves them.
#include "sentence/kinds/kinds.h"
#include "sentence/kinds/shared_words.h"
#include "sentence/sorts/amounts.h"
#include "sentence/sorts/gauges.h"
#include "sentence/sorts/things.h"

namespace sentence {

using logbook::EngineEvent;
using logbook::EventKind;
using logbook::Exceeded;
using logbook::LookedInto;
using logbook::PowerSource;
using logbook::Started;
using logbook::Switch;
using GaugeReading = logbook::Reading;

namespace {

constexpr Word power_words[] = {word(PowerSource::battery, "battery"),
                                word(PowerSource::ground_power, "ground power"),
                                word(PowerSource::other_engine, "other engine")};
constexpr Word switch_words[] = {word(Switch::off, "off"), word(Switch::on, "on")};
constexpr Word event_words[] = {
    word(EventKind::washed, "washed"),
    word(EventKind::hot_section_done, "hot section done"),
    word(EventKind::temperature_probe_changed, "temperature probe changed"),
    word(EventKind::fuel_control_adjusted, "fuel control adjusted"),
    word(EventKind::torque_gauge_changed, "torque gauge changed"),
    word(EventKind::temperature_gauge_changed, "temperature gauge changed")};

}  // namespace

template <>
inline constexpr Sort sort_of<PowerSource> = words<PowerSource>("power-source", power_words);
template <>
inline constexpr Sort sort_of<Switch> = words<Switch>("switch", switch_words);
template <>
inline constexpr Sort sort_of<EventKind> = words<EventKind>("event", event_words);

namespace {

constexpr Clause started_clauses[] = {
    clause<as<&Started::battery_volts, &volts_sort>>("battery {battery_volts}",
                                                     "the battery before the start"),
    clause<as<&Started::lowest_volts, &volts_sort>>("lowest {lowest_volts}",
                                                    "the lowest volts while starting"),
    clause<&Started::outside_air>("outside air {outside_air}", "the air outside"),
    clause<&Started::residual>("residual {residual}", "the temperature before the start"),
    clause<as<&Started::light_off_seconds, &seconds_sort>>("light-off in {light_off_seconds}",
                                                           "from fuel to light-off"),
    clause<&Started::peak>("peak {peak}", "the highest temperature"),
    clause<&Started::bands>("above {bands}", "how long it stood above a temperature"),
    clause<as<&Started::idle_seconds, &seconds_sort>>("idle in {idle_seconds}",
                                                      "from start to idle"),
    clause<as<&Started::generator_volts, &volts_sort>>("generator {generator_volts}",
                                                       "the generator after the start"),
    clause<as<&Started::starter_out_percent, &percent_sort>>(
        "starter out at {starter_out_percent}", "the speed at which the starter let go"),
    clause<&Started::power>("power from {power}", "what turned the starter")};
constexpr Clause reading_clauses[] = {
    clause<as<&GaugeReading::pressure_altitude_feet, &feet_sort>>("{pressure_altitude_feet}",
                                                                  "pressure altitude"),
    clause<&GaugeReading::outside_air>("outside air {outside_air}", "the air outside"),
    clause<&GaugeReading::torque>("torque {torque}", "torque"),
    clause<as<&GaugeReading::gas_generator_percent, &percent_sort>>(
        "gas generator {gas_generator_percent}", "gas-generator speed"),
    clause<as<&GaugeReading::power_turbine_percent, &percent_sort>>(
        "power turbine {power_turbine_percent}", "power-turbine speed"),
    clause<as<&GaugeReading::rotor_percent, &percent_sort>>("rotor {rotor_percent}",
                                                            "rotor or propeller speed"),
    clause<&GaugeReading::temperature>("temperature {temperature}", "the turbine's temperature"),
    clause<&GaugeReading::fuel>("fuel {fuel}", "fuel flow"),
    clause<&GaugeReading::bleed>("bleed {bleed}", "bleed air"),
    clause<&GaugeReading::anti_ice>("anti-ice {anti_ice}", "anti-ice"),
    clause<as<&GaugeReading::generator_load_amperes, &amperes_sort>>(
        "generator load {generator_load_amperes}", "what the generator gave"),
    clause<as<&GaugeReading::steady_minutes, &minutes_sort>>("steady {steady_minutes}",
                                                             "how long power was not moved"),
    clause<&GaugeReading::engine>("engine {engine}", "the engine's total hours then")};
constexpr Clause looked_into_clauses[] = {
    needed_clause<&LookedInto::found>("{found}", "what was found and done")};
constexpr Clause event_clauses[] = {
    clause<&EngineEvent::engine>("engine {engine}", "the engine's total hours then")};

}  // namespace

constexpr Kind declarations::started =
    with_a_clause(kind<Started, &Started::aircraft, &Started::place, &Started::serial>(
        "started", "{aircraft} {place} [{serial}] started,", started_clauses,
        {"what the gauges showed at a start; it counts nothing",
         "2026-03-04 aircraft ZZ-KIT engine 1 E-1001 started, battery 25.9 V, lowest 19.8 V, "
         "outside air 12 C, residual 60 C, light-off in 4 s, peak 742 C, above 810 C for 0 s, "
         "idle in 24 s, generator 28.1 V, starter out at 51 %, power from battery."}));
constexpr Kind declarations::reading =
    with_a_clause(kind<GaugeReading, &GaugeReading::aircraft, &GaugeReading::place,
                       &GaugeReading::serial, &GaugeReading::check>(
        "reading", "{aircraft} {place} [{serial}] {check}", reading_clauses,
        {"a set of steady readings",
         "2026-03-04 aircraft ZZ-KIT engine 1 E-1001 cruise 3500 ft, outside air 12 C, "
         "torque 78 %, gas generator 96.1 %, temperature 702 C, fuel 210 lb/h, bleed off, "
         "steady 5 min.\n"
         "2026-03-04 aircraft ZZ-KIT engine 1 idle temperature 540 C, anti-ice on, "
         "generator load 45 A, engine 1822.1 h.\n"
         "2026-03-04 aircraft ZZ-KIT engine 1 power check 2000 ft, outside air 8 C, torque 85 %, "
         "power turbine 100 %, rotor 100 %, temperature 715 C."}));
constexpr Kind declarations::exceeded =
    kind<Exceeded, &Exceeded::aircraft, &Exceeded::place, &Exceeded::serial, &Exceeded::what>(
        "exceeded", "{aircraft} {place} [{serial}] exceeded {what},", {},
        {"how far and how long a gauge stood too high",
         "2026-03-04 aircraft ZZ-KIT engine 1 E-1001 exceeded temperature 915 C for 3 s."});
constexpr Kind declarations::looked_into = kind<LookedInto, &LookedInto::entry>(
    "looked-into", "entry {entry} looked into,", looked_into_clauses,
    {"what stood because of an entry has been dealt with",
     "2026-03-06 entry K7QXM-140 looked into, \"gauge checked\", by \"B. Quill\"."});
constexpr Kind declarations::engine_event =
    kind<EngineEvent, &EngineEvent::engine_thing, &EngineEvent::event>(
        "engine-event", "{engine_thing} {event},", event_clauses,
        {"work that moves what the gauges show",
         "2026-03-11 engine TS-40 E-1001 washed.\n"
         "2026-03-11 engine TS-40 E-1001 hot section done, engine 1265.0 h.\n"
         "2026-03-11 engine TS-40 E-1001 temperature probe changed.\n"
         "2026-03-11 engine TS-40 E-1001 fuel control adjusted."});

}  // namespace sentence
