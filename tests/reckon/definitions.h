// tests/reckon/definitions.h: limits, tasks and what goes with them, made by hand, and a book as it
// stands at the end of a day.
#pragma once

#include <string>
#include <vector>

#include "reckon/due.h"
#include "support/entries.h"

namespace definitions {

using logbook::Basis;
using logbook::Combine;
using logbook::PeriodUnit;
using logbook::Term;

Term hours(const std::string& amount, std::optional<Basis> since = std::nullopt);
Term count(const logbook::Count& amount, std::optional<Basis> since = std::nullopt);
Term period(std::int64_t number, PeriodUnit unit, std::optional<Basis> since = std::nullopt);
Term after(Term term, const std::string& day);

logbook::Limit limit(const logbook::Scope& scope, std::vector<Term> terms,
                     Combine combine = Combine::first);
logbook::Task task(const std::string& name, const logbook::Scope& scope, std::vector<Term> every);
logbook::NextDue next_due(const std::string& name, const logbook::Thing& thing,
                          std::vector<logbook::DuePoint> points);
logbook::TaskEnds ends(const std::string& name, const logbook::Scope& scope);
logbook::OnCondition on_condition(const logbook::Scope& scope);
logbook::HasPlace required(const logbook::Scope& scope, const std::string& place);
logbook::Reviewed reviewed(const logbook::Aircraft& aircraft);
logbook::AircraftIs is_model(const logbook::Aircraft& aircraft, const std::string& model);
logbook::PartIs made(const logbook::Part& part, const std::string& day);
// The definition takes the place of an earlier entry.
logbook::Said instead(const std::string& day, logbook::Fact fact, const logbook::EntryId& of);

// A book at the end of a day. It keeps references, so the book must outlive it unchanged.
struct AsOf {
  AsOf(const support::Book& book, const std::string& day);
  AsOf(const AsOf&) = delete;
  AsOf& operator=(const AsOf&) = delete;

  reckon::Standing standing;
  reckon::Histories histories;

  std::vector<reckon::Item> due(const logbook::Aircraft& aircraft) const;
  std::vector<reckon::Item> lives() const;
};

// The one item whose name begins so; none or several end the test.
const reckon::Item& item_of(const std::vector<reckon::Item>& items, const std::string& beginning);
reckon::Item due_item(const AsOf& asked, const logbook::Aircraft& aircraft,
                      const std::string& beginning);
reckon::Item life_item(const AsOf& asked, const std::string& beginning);

// The side that governs; an item without one ends the test.
const reckon::Side& governing(const reckon::Item& item);
// Texts of a side's figures: "140.0", "-3.4", "400", "66"; "not known".
std::string text(const std::optional<reckon::Figure>& figure);
std::string text(const std::optional<quantity::Day>& day);
std::string text(reckon::State state);
inline std::string left(const reckon::Item& item) { return text(governing(item).left); }

}  // namespace definitions
