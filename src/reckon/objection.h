// reckon/objection.h: what speaks against a fact, as data; words says it.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "reckon/histories.h"

namespace reckon {

enum class Severity {
  impossible,  // refused
  doubtful,    // asked; taken when the sentence carries "although … because …"
};

enum class CheckKind {
  meter_gap,
  meter_overlap,
  hours_against_meter,
  hours_against_clock,
  duplicate,
  too_long_a_day,
  in_the_future,
  wrong_year,
  before_brought_forward,
  landings_below_flights,
  no_such_thing,
  no_such_task,
  task_defined_twice,
  lives_shared_otherwise,  // than another entry says
  serial_elsewhere,
  place_taken,
  // names: the thing; the place that is meant; where it is, if it is anywhere (slot "thing": off).
  // slot "serial": the serial, what is there, and the place.
  not_fitted_there,
  // A move on record that no longer fits what it follows. names: what it moves, and where. slot
  // "removed": it is a removal; "place": it fills the place that is taken now.
  moved_later,
  serial_look_alike,
  fitted_before_made,
  engine_older_than_airframe,
  stated_total_differs,
  had_differs,
  moved_within_a_use,  // names: the thing; its entry, or slot "since": it is moved in that entry
  minutes_as_decimals,
  fraction_of_a_whole_count,
  correction_of_older_entry,
  correction_of_other_kind,
  nothing_to_look_into,
  looked_before,
  out_of_bounds,
  outside_the_usual,  // names: the figure, the usual range
  chart_contradicted,
  chart_unlike_itself,
  entry_unknown,
  not_on_a_twin,
  nothing_changes,
  bare_off_on,
  lifts_without_flight,
  meter_backwards,      // a run that ends below its beginning
  swapped_fields,       // a count of cycles holds what the meter says of the hours
  wrong_clock,          // a stated total that is near what another clock shows
  already_struck,       // a correction or strike of what is struck
  referred_to,          // a strike of what other entries rest on: they are in entries
  signature_needs_key,  // said, not made with a key
  signing_corrected,
  signed_older_entry,
  nothing_to_sign,  // a strike or another signature
  struck_to_sign,
  no_range,
  signer_unknown,
  signer_ended,
  no_such_key,
  key_of_another,
  key_has_ended,
};

struct Objection {
  CheckKind kind = CheckKind::meter_gap;
  Severity severity = Severity::doubtful;
  std::string slot;  // the clause that it points at ("meters", "landed"), if any
  // Meter readings are given as hours. The difference says how far apart, and is never negative.
  std::optional<Figure> stated;
  std::optional<Figure> reckoned;
  std::optional<Figure> difference;
  std::optional<Clock> clock;           // that they are on, where it is not plain from the kind
  std::optional<logbook::Basis> since;  // overhaul; else since new
  std::vector<logbook::EntryId> entries;
  std::vector<std::string> names;  // things, places, candidates (nearest tasks …)
  std::optional<Day> day;
};

}  // namespace reckon
