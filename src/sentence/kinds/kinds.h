// sentence/kinds/kinds.h: all kinds of the language, and the clauses that every kind may take. A
// new kind is a struct in logbook, a table here and one line in kinds.cpp.
#pragma once

#include <span>

#include "sentence/table.h"

namespace sentence {

namespace declarations {

// record.cpp
extern const Kind record_begins;
extern const Kind counts_work;
extern const Kind base_joins;
extern const Kind person_holds;
extern const Kind person_ends;
extern const Kind key_ends;
// fleet.cpp
extern const Kind aircraft_is;
extern const Kind engine_is;
extern const Kind part_is;
extern const Kind has_place;
extern const Kind brings_forward;
// meters.cpp
extern const Kind counts_hours;
extern const Kind meter_changed;
extern const Kind meter_lost;
// limits.cpp
extern const Kind counting_rule;
extern const Kind limit;
extern const Kind mixed_limit;
extern const Kind on_condition;
// shared_lives.cpp
extern const Kind shares_by_fractions;
extern const Kind shorter_limit_stays;
// checks.cpp
extern const Kind temperature_limit;
extern const Kind chart_row;
extern const Kind start_limit;
extern const Kind start_check;
extern const Kind exceedance_limit;
extern const Kind trend_settings;
// tasks.cpp
extern const Kind task;
extern const Kind task_ends;
extern const Kind next_due;
extern const Kind plan;
extern const Kind reviewed;
// use.cpp
extern const Kind flew;
extern const Kind ran;
extern const Kind tried;
extern const Kind unaccounted;
// readings.cpp
extern const Kind started;
extern const Kind reading;
extern const Kind exceeded;
extern const Kind looked_into;
extern const Kind engine_event;
// work.cpp
extern const Kind done;
extern const Kind fitted;
extern const Kind removed;
extern const Kind overhauled;
// signing.cpp
extern const Kind signed_entries;
// corrections.cpp
extern const Kind corrected;
extern const Kind struck;

}  // namespace declarations

// In the order of logbook::Fact.
std::span<const Kind* const> all_kinds();
const Kind& kind_of(const logbook::Fact& fact);

// The clauses that belong to what was said and not to the fact: common.cpp.
std::span<const Clause> common_clauses();
// False for those that the kind does not take.
bool takes_common(const Kind& kind, const Clause& clause);

}  // namespace sentence
