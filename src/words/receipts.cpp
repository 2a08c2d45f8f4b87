#include "words/receipts.h"

#include <utility>

#include "words/figures.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/signings.h"
#include "words/words.h"

namespace words {

std::string saved_text(const logbook::Entry& entry, bool day_was_left_out) {
  return fill(day_was_left_out ? "Saved {} (today): {}" : "Saved {}: {}",
              {entry_name(entry.id), entry.sentence});
}

std::string saved_many_text(const std::vector<logbook::Entry>& entries) {
  if (entries.empty()) return "Nothing was saved.";
  return fill("Saved {}, {} to {}.",
              {counted(static_cast<std::int64_t>(entries.size()), "entry", "entries"),
               entry_name(entries.front().id), entry_name(entries.back().id)});
}

std::string now_has_text(const logbook::Thing& thing, const reckon::Figure& hours,
                         const std::optional<reckon::Figure>& count,
                         const logbook::Counter& counter) {
  const std::string name = capital(short_name(thing));
  const std::string hours_text = figure_used(hours, reckon::service_clock);
  const bool knows_count = count && !count->is_unknown();
  const std::string counts =
      knows_count ? figure_used(*count, counter) : counter_name(counter, false);
  if (hours.is_unknown() && !knows_count) {
    return fill("The totals of {} are not on record yet.", {short_name(thing)});
  }
  if (hours.is_unknown()) return fill("{} now has {}; its hours are not known.", {name, counts});
  if (!count) return fill("{} now has {}.", {name, hours_text});
  return fill(knows_count ? "{} now has {} and {}." : "{} now has {}; its {} are not known.",
              {name, hours_text, counts});
}

std::string went_over_text(const reckon::Item& item, const reckon::Side& side, bool is_one_flight) {
  return fill(
      is_one_flight ? "{} went over by {} in this flight." : "{} went over by {} with this.",
      {capital(item_name(item)), over_text(side)});
}

std::string unreached_text(const reckon::Unreached& rule) {
  using Named = reckon::Unreached::Named;
  const std::string_view of = rule.named == Named::part_number ? "part number" : "model";
  const std::string text =
      fill(rule.named == Named::on_model
               ? "Nothing of {} {} is on record, so where this holds is not known."
               : "Nothing of {} {} is on record, so this rules nothing yet.",
           {std::string(of), rule.name});
  return rule.near.empty() ? text : text + fill(" Did you mean {}?", {listed(rule.near, "or")});
}

std::string changed_arrivals_text(const std::vector<logbook::EntryId>& entries) {
  constexpr std::size_t most_named = 5;
  std::vector<std::string> named;
  for (const logbook::EntryId& entry : entries) {
    if (named.size() < most_named) named.push_back(entry_name(entry));
  }
  return some_text(
      "When these came is not what was noted then: {}. It was left as it is; an older copy may "
      "tell "
      "better.",
      std::move(named), entries.size());
}

}  // namespace words
