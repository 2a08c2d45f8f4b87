// sentence/sorts/gauges.h: what a gauge shows, and for how long.
#pragma once

#include "sentence/sorts/figures.h"

namespace sentence {

inline constexpr Word rotating_words[] = {word(logbook::Rotating::gas_generator, "gas generator"),
                                          word(logbook::Rotating::power_turbine, "power turbine"),
                                          word(logbook::Rotating::rotor, "rotor"),
                                          word(logbook::Rotating::propeller, "propeller")};
template <>
inline constexpr Sort sort_of<logbook::Rotating> = words<logbook::Rotating>("rotating",
                                                                            rotating_words);

inline constexpr Option gauge_temperature_options[] = {
    option<&logbook::GaugeTemperature::value>("temperature {value}")};
template <>
inline constexpr Sort sort_of<logbook::GaugeTemperature> =
    choice<logbook::GaugeTemperature>("gauge-temperature", gauge_temperature_options);
inline constexpr Option gauge_torque_options[] = {
    option<&logbook::GaugeTorque::value>("torque {value}")};
template <>
inline constexpr Sort sort_of<logbook::GaugeTorque> =
    choice<logbook::GaugeTorque>("gauge-torque", gauge_torque_options);
inline constexpr Option gauge_speed_options[] = {
    option<&logbook::GaugeSpeed::of, as<&logbook::GaugeSpeed::percent, &percent_sort>>(
        "{of} {percent}")};
template <>
inline constexpr Sort sort_of<logbook::GaugeSpeed> =
    choice<logbook::GaugeSpeed>("gauge-speed", gauge_speed_options);

inline constexpr Option gauge_options[] = {
    alternative<logbook::Gauge, logbook::GaugeTemperature>("{gauge-temperature}"),
    alternative<logbook::Gauge, logbook::GaugeTorque>("{gauge-torque}"),
    alternative<logbook::Gauge, logbook::GaugeSpeed>("{gauge-speed}")};
template <>
inline constexpr Sort sort_of<logbook::Gauge> = choice<logbook::Gauge>("gauge", gauge_options);

inline constexpr Option gauge_for_options[] = {
    option<&logbook::GaugeFor::gauge, as<&logbook::GaugeFor::seconds, &seconds_sort>>(
        "{gauge} for {seconds}")};
template <>
inline constexpr Sort sort_of<logbook::GaugeFor> = choice<logbook::GaugeFor>("gauge-for",
                                                                             gauge_for_options);

inline constexpr Option band_options[] = {
    option<&logbook::Band::above, as<&logbook::Band::seconds, &seconds_sort>>(
        "{above} for {seconds}")};
template <>
inline constexpr Sort sort_of<logbook::Band> = choice<logbook::Band>("band", band_options);

}  // namespace sentence
