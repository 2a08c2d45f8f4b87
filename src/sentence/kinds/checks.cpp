// What the readings of an engine model are held against.
#include "sentence/kinds/kinds.h"
#include "sentence/kinds/shared_words.h"
#include "sentence/sorts/amounts.h"
#include "sentence/sorts/gauges.h"
#include "sentence/sorts/things.h"

namespace sentence {

using logbook::AllowedAt;
using logbook::ChartRow;
using logbook::ExceedanceLimit;
using logbook::StartCheck;
using logbook::StartLimit;
using logbook::TemperatureLimit;
using logbook::TrendSettings;
using logbook::VoltRange;

namespace {

constexpr Option allowed_options[] = {
    option<&AllowedAt::allowed, &AllowedAt::torque>("{allowed} at {torque}")};
constexpr Option volt_range_options[] = {
    option<&VoltRange::low, as<&VoltRange::high, &volts_sort>>("{low} to {high}")};

}  // namespace

template <>
inline constexpr Sort sort_of<AllowedAt> = choice<AllowedAt>("allowed-at", allowed_options);
template <>
inline constexpr Sort sort_of<VoltRange> = choice<VoltRange>("volt-range", volt_range_options);

namespace {

constexpr Clause temperature_clauses[] = {
    clause<&TemperatureLimit::source>("source {source}", "where the limit stands")};
constexpr Clause chart_clauses[] = {
    clause<&ChartRow::source>("source {source}", "where the chart stands")};
constexpr Clause start_limit_clauses[] = {
    clause<&StartLimit::also>("start limit {also}", "a further limit"),
    clause<&StartLimit::source>("source {source}", "where the limits stand")};
constexpr Clause exceedance_clauses[] = {
    clause<&ExceedanceLimit::also>("exceedance limit {also}", "a further limit"),
    clause<&ExceedanceLimit::source>("source {source}", "where the limits stand")};
constexpr Clause start_check_clauses[] = {
    clause<as<&StartCheck::battery_at_least, &volts_sort>>("battery at least {battery_at_least}",
                                                           "the battery before the start"),
    clause<as<&StartCheck::lowest_at_least, &volts_sort>>("lowest at least {lowest_at_least}",
                                                          "the lowest volts while starting"),
    clause<&StartCheck::residual_at_most>("residual at most {residual_at_most}",
                                          "the temperature before the start"),
    clause<as<&StartCheck::light_off_within, &seconds_sort>>("light-off within {light_off_within}",
                                                             "from fuel to light-off"),
    clause<&StartCheck::peak_at_most>("peak at most {peak_at_most}", "the highest temperature"),
    clause<as<&StartCheck::idle_within, &seconds_sort>>("idle within {idle_within}",
                                                        "from start to idle"),
    clause<&StartCheck::generator>("generator {generator}", "the generator after the start"),
    clause<&StartCheck::source>("source {source}", "where the figures stand")};
constexpr Clause trend_clauses[] = {
    clause<&TrendSettings::floor>("floor {floor}", "the line a margin must not cross"),
    clause<as<&TrendSettings::steady_at_least, &minutes_sort>>(
        "steady at least {steady_at_least}", "how long power must not have moved before a reading"),
    clause<&TrendSettings::temperature_exponent>("temperature exponent {temperature_exponent}",
                                                 "of the air's temperature ratio"),
    clause<&TrendSettings::speed_exponent>("speed exponent {speed_exponent}",
                                           "of the air's temperature ratio, for gas-generator "
                                           "speed"),
    clause<&TrendSettings::fuel_exponent>("fuel exponent {fuel_exponent}",
                                          "of the air's temperature ratio, for fuel flow"),
    clause<&TrendSettings::serial_correlation>("serial correlation {serial_correlation}",
                                               "how far a reading follows the one before it")};

}  // namespace

constexpr Kind declarations::temperature_limit =
    kind<TemperatureLimit, &TemperatureLimit::model, &TemperatureLimit::check,
         &TemperatureLimit::limit>("temperature-limit", "{model} {check} limit {limit},",
                                   temperature_clauses,
                                   {"the temperature that a check must not pass",
                                    "2026-01-01 model TS-40 idle limit 560 C.\n"
                                    "2026-01-01 model TS-40 cruise limit 720 C."});
constexpr Kind declarations::chart_row =
    kind<ChartRow, &ChartRow::model, &ChartRow::chart, &ChartRow::check,
         as<&ChartRow::altitude_feet, &feet_sort>, &ChartRow::outside_air, &ChartRow::allows>(
        "chart-row",
        "{model} chart {chart} for {check} at {altitude_feet} and {outside_air} allows "
        "{allows and},",
        chart_clauses,
        {"one line of the maker's chart: the temperature allowed at each torque",
         "2026-01-01 model TS-40 chart \"C1\" for cruise at 2000 ft and 10 C allows "
         "650 C at 60 % and 690 C at 70 %, source \"flight manual 5-12\"."});
constexpr Kind declarations::start_limit = kind<StartLimit, &StartLimit::model, &StartLimit::limit>(
    "start-limit", "{model} start limit {limit},", start_limit_clauses,
    {"how long a start may stand above a temperature",
     "2026-01-01 model TS-40 start limit 810 C for 10 s, start limit 870 C for 0 s, "
     "source \"flight manual 2-4\"."});
constexpr Kind declarations::start_check = with_a_clause(kind<StartCheck, &StartCheck::model>(
    "start-check", "{model} start check,", start_check_clauses,
    {"what a normal start shows",
     "2026-01-01 model TS-40 start check, battery at least 24.5 V, peak at most 800 C, "
     "idle within 30 s, generator 27.5 to 28.5 V."}));
constexpr Kind declarations::exceedance_limit =
    kind<ExceedanceLimit, &ExceedanceLimit::model, &ExceedanceLimit::limit>(
        "exceedance-limit", "{model} exceedance limit {limit},", exceedance_clauses,
        {"how long a gauge may stand above a figure",
         "2026-01-01 model TS-40 exceedance limit temperature 843 C for 10 s, "
         "exceedance limit torque 110 % for 5 s, source \"flight manual 2-5\"."});
constexpr Kind declarations::trend_settings =
    with_a_clause(kind<TrendSettings, &TrendSettings::model>(
        "trend-settings", "{model} trend,", trend_clauses,
        {"how the trend of a model is worked out",
         "2026-01-01 model TS-40 trend, floor 10 C, steady at least 3 min, serial correlation "
         "0.2.\n"
         "2026-01-01 model TS-40 trend, temperature exponent 1, speed exponent 0.5, "
         "fuel exponent 0.65."}));

}  // namespace sentence
