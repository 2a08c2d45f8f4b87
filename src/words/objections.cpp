// Why a fact cannot be taken as it stands, or is doubtful, and what to do about it. Each doubt is a
// whole sentence with named gaps; its text is stable, since although carries it in the record.
#include <array>

#include "quantity/expect.h"
#include "words/figures.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/words.h"

namespace words {

namespace {

using reckon::CheckKind;
using reckon::Objection;

struct CheckWords {
  CheckKind kind;
  std::string_view doubt;   // begins small, without a final point
  std::string_view advice;  // what to do
};

constexpr std::array check_words = {
    CheckWords{CheckKind::meter_gap, "{difference} are missing before this flight",
               "Check the meter's first reading, or say the missing hours as unaccounted."},
    CheckWords{CheckKind::meter_overlap,
               "these meter readings overlap those of {entry} by {difference}",
               "Check both pairs of readings."},
    CheckWords{CheckKind::hours_against_meter,
               "{stated} were stated and the meter shows {reckoned}",
               "Check the hours and both meter readings."},
    CheckWords{CheckKind::hours_against_clock, "{stated} were stated and the times give {reckoned}",
               "Check the hours and the times of take-off and landing."},
    CheckWords{CheckKind::duplicate, "this says the same as {entry}",
               "If it is one event, leave it out."},
    CheckWords{CheckKind::too_long_a_day, "{reckoned} on {day} are more than a day holds",
               "Check the hours and the day, also of the other flights of that day."},
    CheckWords{CheckKind::in_the_future, "{day} has not come yet",
               "Write the day on which it happened."},
    CheckWords{CheckKind::wrong_year, "{day} is far from the other entries", "Check the year."},
    CheckWords{CheckKind::before_brought_forward,
               "{day} is before the day from which the book counts",
               "The brought-forward figures hold it already, so leave it out."},
    CheckWords{CheckKind::landings_below_flights, "{stated} are fewer than {reckoned}",
               "Check the landings; each flight has one at least."},
    CheckWords{CheckKind::no_such_thing, "nothing is on record by the name {name}",
               "{nearest}Put it on record first, or write its name as it stands there."},
    CheckWords{CheckKind::no_such_task, "no task {name} is on record for it",
               "{nearest}Write the name of a task that is on record, or put the task on record."},
    CheckWords{CheckKind::task_defined_twice, "{name} is on record already as {entry}",
               "To replace it, add: instead of entry {entry}."},
    CheckWords{CheckKind::lives_shared_otherwise, "{entry} says otherwise how its life is shared",
               "To replace it, add: instead of entry {entry}."},
    CheckWords{CheckKind::serial_elsewhere, "{name} is fitted to {other}",
               "Say its removal there first."},
    CheckWords{CheckKind::place_taken, "{name} is in that place of {other} already",
               "Say its removal first."},
    CheckWords{CheckKind::not_fitted_there, "{name} is in {third}, and not in {other}",
               "Name the place where it is, or check the serial."},
    CheckWords{CheckKind::moved_later,
               "{name} is fitted to {other} in {entry} on {day}, and not removed before",
               "Say what was done in between, or correct {entry}."},
    CheckWords{CheckKind::serial_look_alike, "{name} looks like {other}, which is on record",
               "Read the plate again and write the serial as it stands there."},
    CheckWords{CheckKind::fitted_before_made, "{name} was made or released only on {day}",
               "Check both days."},
    CheckWords{CheckKind::engine_older_than_airframe,
               "the engine has {stated} and its airframe {reckoned}",
               "Check the hours that it had when it was fitted."},
    CheckWords{CheckKind::stated_total_differs,
               "{stated} were stated and the flights sum to {reckoned}",
               "Check the stated total, and whether a flight is missing."},
    CheckWords{CheckKind::had_differs,
               "it is said to have {stated} and the record gives {reckoned}",
               "Check the paper that came with it."},
    CheckWords{CheckKind::moved_within_a_use,
               "{entry} was flown before and after this day, and nobody can tell how much before",
               "State the airframe's total, or say the flights of each day."},
    CheckWords{CheckKind::minutes_as_decimals,
               "{stated} were stated and {reckoned} fit the meter, as if minutes were meant",
               "If hours and minutes are meant, write them like 1:30."},
    CheckWords{CheckKind::fraction_of_a_whole_count, "{stated} is no whole number",
               "Only cycles may have a fraction. Write it whole."},
    CheckWords{CheckKind::correction_of_older_entry, "{entry} was corrected already by {later}",
               "Correct {later}, which is the newest."},
    CheckWords{CheckKind::correction_of_other_kind, "{entry} is a sentence of another kind",
               "Strike {entry} and say the right sentence anew."},
    CheckWords{CheckKind::nothing_to_look_into, "{entry} is neither a start nor an exceedance",
               "Name the entry that says what was past a limit."},
    CheckWords{CheckKind::chart_contradicted, "{entry} says otherwise of this chart",
               "Check the line and its unit, or write it instead of entry {entry}."},
    CheckWords{CheckKind::chart_unlike_itself, "the line says two things at one torque",
               "Check the line and its units."},
    CheckWords{CheckKind::out_of_bounds, "{name} cannot be: {other}", "Check the figure."},
    CheckWords{CheckKind::outside_the_usual, "{name} is outside the usual {other}",
               "Check the figure and its unit."},
    CheckWords{CheckKind::looked_before, "{entry} happened only on {day}", "Check both days."},
    CheckWords{CheckKind::entry_unknown, "there is no entry {name}",
               "timeworn history shows the names of entries."},
    CheckWords{CheckKind::not_on_a_twin, "{stated} would count for every engine",
               "Say which engine, for example: 0.85 cycles on engine 2."},
    CheckWords{CheckKind::nothing_changes, "{entry} says this already",
               "Say what is different, or leave it out."},
    CheckWords{CheckKind::bare_off_on, "the times may be those of the wheels or of the blocks",
               "Write took off and landed, or blocks."},
    CheckWords{CheckKind::lifts_without_flight, "{stated} without a flight",
               "Say the flight that they belong to."},
    CheckWords{CheckKind::meter_backwards, "the meter runs backwards from {reckoned} to {stated}",
               "Check both readings; a new meter is said with: changed."},
    CheckWords{CheckKind::swapped_fields,
               "{stated} were stated, and the cycles say what the meter says of the hours",
               "Check whether hours and cycles were swapped."},
    CheckWords{CheckKind::wrong_clock,
               "{stated} were stated, which is near the {reckoned} of another clock",
               "Check which clock the figure was read from."},
    CheckWords{CheckKind::already_struck, "{entry} is struck already",
               "Strike its strike if it is to count again."},
    CheckWords{CheckKind::referred_to, "other entries rest on it: {entries}",
               "Correct or strike those first."},
    CheckWords{CheckKind::signature_needs_key, "a signature is made with a key, not said",
               "Use timeworn sign, or say: signed on paper."},
    CheckWords{CheckKind::signing_corrected, "{entry} says who signs and is not corrected",
               "Strike {entry} and say it anew."},
    CheckWords{CheckKind::signed_older_entry, "{entry} was corrected by {later}",
               "Sign {later}, which is the newest."},
    CheckWords{CheckKind::nothing_to_sign, "{entry} is a strike or a signature itself",
               "Name the entries that say what was done."},
    CheckWords{CheckKind::struck_to_sign, "{entry} is struck",
               "Leave it out: name what stands, for example K7QXM-131..K7QXM-134 K7QXM-140."},
    CheckWords{CheckKind::no_range, "{name} ends no range",
               "A range ends at a later entry of the same base and holds 1000 at most."},
    CheckWords{CheckKind::signer_unknown, "{name} holds no such certificate on record",
               "Put it on record first, for example: person \"B. Quill\" holds certificate "
               "\"A-1234\", kind \"mechanic\"."},
    CheckWords{CheckKind::signer_ended, "{name} no longer takes part since {day}",
               "Whoever takes part again is put on record again first."},
    CheckWords{CheckKind::no_such_key, "no such key is on record for {name}",
               "timeworn people shows the keys on record."},
    CheckWords{CheckKind::key_of_another, "this key is on record for {name}",
               "A key belongs to one person; make a new one."},
    CheckWords{CheckKind::key_has_ended, "this key ended with {entry}",
               "An ended key never signs again; make a new one."},
};

// What one check says otherwise where it points at another clause.
struct SlotWords {
  std::string_view slot;
  CheckWords words;
};

constexpr std::array slot_words = {
    // A flight entered late moves what was signed after it: then the flight is asked about, not the
    // work.
    SlotWords{"hours",
              {CheckKind::stated_total_differs,
               "with this the {stated} stated in {entry} become {reckoned}",
               "Check the day of the flight and the stated total."}},
    SlotWords{
        "since",
        {CheckKind::moved_within_a_use, "{name} was fitted or removed within these days in {entry}",
         "Say the flights before and after it apart, or state the airframe's total in "
         "{entry}."}},
    SlotWords{"thing",
              {CheckKind::not_fitted_there, "{name} is off, and so not in {other}",
               "Say its fitting first, or check the serial and the day."}},
    SlotWords{"serial",
              {CheckKind::not_fitted_there, "{other} is in {third}, and not {name}",
               "Check the serial and the place, or say first what was fitted."}},
    SlotWords{"removed",
              {CheckKind::moved_later, "{name} is removed from {other} in {entry} on {day}",
               "Say what was done in between, or correct {entry}."}},
    SlotWords{"place",
              {CheckKind::moved_later,
               "{name} is fitted to {other} in {entry} on {day}, and it is not empty",
               "Say what was done in between, or correct {entry}."}},
};

const CheckWords& sentences_of(const Objection& objection) {
  for (const SlotWords& each : slot_words) {
    if (each.words.kind == objection.kind && each.slot == objection.slot) return each.words;
  }
  for (const CheckWords& each : check_words) {
    if (each.kind == objection.kind) return each;
  }
  EXPECT(!"every check has its sentences");
  return check_words.front();
}

// Which clock a count is on stands in the objection, the slot or the sentence; a bare count says
// only itself.
std::string count_text(const reckon::Figure& figure, const Objection& objection,
                       bool is_of_flights) {
  const bool is_one = figure.count() == quantity::whole_cycles(1);
  const std::string number = quantity::say(figure.count());
  if (objection.kind == CheckKind::landings_below_flights) {
    const std::string_view one = is_of_flights ? "flight" : "landing";
    return number + " " + std::string(one) + (is_one ? "" : "s");
  }
  if (objection.kind == CheckKind::lifts_without_flight)
    return number + (is_one ? " lift" : " lifts");
  if (objection.clock) return number + " " + unit_text(*objection.clock, is_one);
  return objection.slot.empty() ? number : number + " (" + objection.slot + ")";
}

std::string figure_text(const std::optional<reckon::Figure>& figure, const Objection& objection,
                        bool is_of_flights) {
  if (!figure) return "another figure";
  const std::string text =
      figure->unit() == reckon::Unit::count
          ? count_text(*figure, objection, is_of_flights)
          : figure_exact(*figure, objection.clock.value_or(reckon::service_clock));
  return objection.since ? text + " " + std::string(basis_text(*objection.since)) : text;
}

std::string name_at(const Objection& objection, std::size_t place) {
  return place < objection.names.size() ? objection.names[place] : std::string("another thing");
}

std::string entry_at(const Objection& objection, std::size_t place) {
  return place < objection.entries.size() ? entry_name(objection.entries[place])
                                          : std::string("another entry");
}

std::string entries_text(const Objection& objection) {
  std::vector<std::string> names;
  for (const auto& entry : objection.entries) names.push_back(entry_name(entry));
  return names.empty() ? std::string("another entry") : listed(names, "and");
}

std::string nearest_text(const Objection& objection) {
  if (objection.names.size() < 2) return {};
  return fill("Did you mean {}? ",
              {listed({objection.names.begin() + 1, objection.names.end()}, "or")});
}

std::string gap(const Objection& objection, std::string_view name) {
  if (name == "stated") return figure_text(objection.stated, objection, false);
  if (name == "reckoned") return figure_text(objection.reckoned, objection, true);
  if (name == "difference") return figure_text(objection.difference, objection, false);
  if (name == "entry") return entry_at(objection, 0);
  if (name == "entries") return entries_text(objection);
  if (name == "later") return entry_at(objection, objection.entries.size() > 1 ? 1 : 0);
  if (name == "name") return name_at(objection, 0);
  if (name == "other") return name_at(objection, 1);
  if (name == "third") return name_at(objection, 2);
  if (name == "nearest") return nearest_text(objection);
  if (name == "day") return objection.day ? quantity::say(*objection.day) : "this day";
  EXPECT(!"a gap has a known name");
  return {};
}

std::string filled(std::string_view sentence, const Objection& objection) {
  return fill_named(sentence, [&](std::string_view name) { return gap(objection, name); });
}

}  // namespace

std::string doubt_text(const Objection& objection) {
  return filled(sentences_of(objection).doubt, objection);
}

bool tells_of_missing_hours(std::string_view doubt) {
  const std::string_view sentence = check_words.front().doubt;  // of a gap on the meter
  static_assert(check_words.front().kind == CheckKind::meter_gap);
  return doubt.ends_with(sentence.substr(sentence.find('}') + 1));
}

std::string missing_hours_text(std::string_view doubt, const logbook::EntryId& entry) {
  return fill(
      "Not counted: \"{}\", accepted in {}. Say those hours as unaccounted, and they count.",
      {std::string(doubt), entry_name(entry)});
}

std::string objection_text(const Objection& objection) {
  const CheckWords& both = sentences_of(objection);
  return capital(filled(both.doubt, objection)) + ". " + filled(both.advice, objection);
}

}  // namespace words
