#include "sentence/kinds/kinds.h"

#include <array>
#include <variant>

namespace sentence {
namespace {

constexpr std::array<const Kind*, std::variant_size_v<logbook::AnyFact>> in_order_of_facts = {
    &declarations::record_begins,
    &declarations::counts_work,
    &declarations::base_joins,
    &declarations::person_holds,
    &declarations::person_ends,
    &declarations::key_ends,
    &declarations::aircraft_is,
    &declarations::engine_is,
    &declarations::part_is,
    &declarations::has_place,
    &declarations::brings_forward,
    &declarations::counts_hours,
    &declarations::meter_changed,
    &declarations::meter_lost,
    &declarations::counting_rule,
    &declarations::limit,
    &declarations::mixed_limit,
    &declarations::on_condition,
    &declarations::shares_by_fractions,
    &declarations::shorter_limit_stays,
    &declarations::task,
    &declarations::task_ends,
    &declarations::next_due,
    &declarations::temperature_limit,
    &declarations::chart_row,
    &declarations::start_limit,
    &declarations::start_check,
    &declarations::exceedance_limit,
    &declarations::trend_settings,
    &declarations::plan,
    &declarations::reviewed,
    &declarations::flew,
    &declarations::ran,
    &declarations::tried,
    &declarations::unaccounted,
    &declarations::started,
    &declarations::reading,
    &declarations::exceeded,
    &declarations::looked_into,
    &declarations::engine_event,
    &declarations::done,
    &declarations::fitted,
    &declarations::removed,
    &declarations::overhauled,
    &declarations::signed_entries,
    &declarations::corrected,
    &declarations::struck};

}  // namespace

std::span<const Kind* const> all_kinds() { return in_order_of_facts; }

const Kind& kind_of(const logbook::Fact& fact) { return *in_order_of_facts[fact.index()]; }

}  // namespace sentence
