// sentence/sorts/amounts.h: how counts, limits, what a thing already had and meter runs are read
// and written.
#pragma once

#include "sentence/sorts/figures.h"
#include "sentence/sorts/names.h"
#include "sentence/sorts/times.h"

namespace sentence {

bool read_counter(Cursor& cursor, logbook::Counter& counter);
void say_counter(std::string& out, const logbook::Counter& counter);
bool read_count(Cursor& cursor, logbook::Count& count);
void say_count(std::string& out, const logbook::Count& count);
bool read_part_of_life(Cursor& cursor, logbook::PartOfLife& part);
void say_part_of_life(std::string& out, const logbook::PartOfLife& part);
bool read_period(Cursor& cursor, logbook::Period& period);
void say_period(std::string& out, const logbook::Period& period);

template <>
inline constexpr Sort sort_of<logbook::Counter> =
    Leaf<read_counter, say_counter>::sort("counter", "landings", "counter-plural | quoted");
template <>
inline constexpr Sort sort_of<logbook::Count> = Leaf<read_count, say_count>::sort(
    "count", "3 landings", "decimal ( counter-singular | counter-plural | quoted )");
template <>
inline constexpr Sort sort_of<logbook::Period> = Leaf<read_period, say_period>::sort(
    "period", "12 calendar months",
    "whole ( \"day\" | \"month\" | \"calendar month\" | \"year\" ) [ \"s\" ]");
template <>
inline constexpr Sort sort_of<logbook::PartOfLife> =
    Leaf<read_part_of_life, say_part_of_life>::sort("part-of-life", "full cycles / 5000",
                                                    "counter \"/\" decimal");

inline constexpr Option clock_hours_options[] = {
    option<&logbook::ClockHours::hours, &logbook::ClockHours::meter>("{hours} [by {meter} meter]")};
template <>
inline constexpr Sort sort_of<logbook::ClockHours> =
    choice<logbook::ClockHours>("clock-hours", clock_hours_options);

inline constexpr Option amount_options[] = {
    alternative<logbook::Amount, logbook::ClockHours>("{clock-hours}"),
    alternative<logbook::Amount, logbook::Count>("{count}"),
    alternative<logbook::Amount, logbook::Period>("{period}")};
template <>
inline constexpr Sort sort_of<logbook::Amount> = choice<logbook::Amount>("amount", amount_options);

inline constexpr Word basis_words[] = {word(logbook::Basis::new_, "new"),
                                       word(logbook::Basis::overhaul, "overhaul"),
                                       word(logbook::Basis::fitting, "fitting"),
                                       word(logbook::Basis::release, "release"),
                                       word(logbook::Basis::manufacture, "manufacture"),
                                       word(logbook::Basis::first_certificate, "first certificate"),
                                       word(logbook::Basis::done, "done")};
template <>
inline constexpr Sort sort_of<logbook::Basis> = words<logbook::Basis>("basis", basis_words);
// What a thing already had counts from new or from its overhaul only.
inline constexpr Word total_basis_words[] = {word(logbook::Basis::new_, "new"),
                                             word(logbook::Basis::overhaul, "overhaul")};
inline constexpr Sort total_basis_sort = words<logbook::Basis>("total-basis", total_basis_words);

// A limit says what it counts from; an interval may leave it out.
inline constexpr Option term_options[] = {
    option_if_said<&logbook::Term::since, &logbook::Term::amount, &logbook::Term::since>(
        "{amount} since {since}"),
    option_if_said<&logbook::Term::after, &logbook::Term::amount, &logbook::Term::after>(
        "{amount} after {after}")};
template <>
inline constexpr Sort sort_of<logbook::Term> = choice<logbook::Term>("term", term_options);
inline constexpr Option interval_options[] = {term_options[0], term_options[1],
                                              option<&logbook::Term::amount>("{amount}")};
inline constexpr Sort interval_sort = choice<logbook::Term>("interval", interval_options);

inline constexpr Option terms_options[] = {
    option_when<&logbook::Terms::combine, logbook::Combine::latest, &logbook::Terms::terms>(
        "the latest of {terms and}"),
    option_when<&logbook::Terms::combine, logbook::Combine::first, &logbook::Terms::terms>(
        "{terms or}")};
template <>
inline constexpr Sort sort_of<logbook::Terms> = choice<logbook::Terms>("terms", terms_options);

inline constexpr Option had_amount_options[] = {
    alternative<decltype(logbook::Had::amount), logbook::ClockHours>("{clock-hours}"),
    alternative<decltype(logbook::Had::amount), logbook::Count>("{count}")};
template <>
inline constexpr Sort sort_of<decltype(logbook::Had::amount)> =
    choice<decltype(logbook::Had::amount)>("had-amount", had_amount_options);
inline constexpr auto had_since = as<&logbook::Had::since, &total_basis_sort>;
inline constexpr Option had_options[] = {
    option_when<&logbook::Had::grade, logbook::Grade::at_least, &logbook::Had::amount, had_since>(
        "at least {amount} [since {since}]"),
    option_when<&logbook::Had::grade, logbook::Grade::by_default, &logbook::Had::amount, had_since>(
        "by default {amount} [since {since}]"),
    option_when<&logbook::Had::grade, logbook::Grade::exact, &logbook::Had::amount, had_since>(
        "{amount} [since {since}]")};
template <>
inline constexpr Sort sort_of<logbook::Had> = choice<logbook::Had>("had", had_options);

inline constexpr Option unknown_what_options[] = {
    Alternative<decltype(logbook::Unknown::what), std::monostate>::empty("hours"),
    alternative<decltype(logbook::Unknown::what), logbook::Counter>("{counter}")};
template <>
inline constexpr Sort sort_of<decltype(logbook::Unknown::what)> =
    choice<decltype(logbook::Unknown::what)>("unknown-what", unknown_what_options);
inline constexpr Option unknown_options[] = {
    option<&logbook::Unknown::what, as<&logbook::Unknown::since, &total_basis_sort>>(
        "{what} [since {since}] unknown")};
template <>
inline constexpr Sort sort_of<logbook::Unknown> = choice<logbook::Unknown>("unknown",
                                                                           unknown_options);

inline constexpr Option meter_reading_options[] = {
    option<&logbook::MeterReading::meter, &logbook::MeterReading::reading>(
        "{meter} meter {reading}")};
template <>
inline constexpr Sort sort_of<logbook::MeterReading> =
    choice<logbook::MeterReading>("meter-at", meter_reading_options);
inline constexpr Option meter_run_options[] = {
    option<&logbook::MeterRun::meter, &logbook::MeterRun::from, &logbook::MeterRun::to>(
        "{meter} meter {from} to {to}")};
template <>
inline constexpr Sort sort_of<logbook::MeterRun> = choice<logbook::MeterRun>("meter-run",
                                                                             meter_run_options);

inline constexpr Option count_at_options[] = {
    option<&logbook::CountAt::count, &logbook::CountAt::place>("{count} [on {place}]")};
template <>
inline constexpr Sort sort_of<logbook::CountAt> = choice<logbook::CountAt>("count-at",
                                                                           count_at_options);
inline constexpr Option hours_at_options[] = {
    option<&logbook::HoursAt::hours, &logbook::HoursAt::place>("{hours} on {place}")};
template <>
inline constexpr Sort sort_of<logbook::HoursAt> = choice<logbook::HoursAt>("hours-at",
                                                                           hours_at_options);

}  // namespace sentence
