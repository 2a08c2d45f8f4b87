#include "definitions.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace definitions {

Term hours(const std::string& amount, std::optional<Basis> since) {
  return {logbook::ClockHours{support::hours(amount), std::nullopt}, since, std::nullopt};
}
Term count(const logbook::Count& amount, std::optional<Basis> since) {
  return {amount, since, std::nullopt};
}
Term period(std::int64_t number, PeriodUnit unit, std::optional<Basis> since) {
  return {logbook::Period{number, unit}, since, std::nullopt};
}
Term after(Term term, const std::string& day) {
  term.since.reset();
  term.after = support::day(day);
  return term;
}

logbook::Limit limit(const logbook::Scope& scope, std::vector<Term> terms, Combine combine) {
  logbook::Limit fact;
  fact.scope = scope;
  fact.terms = {combine, std::move(terms)};
  return fact;
}
logbook::Task task(const std::string& name, const logbook::Scope& scope, std::vector<Term> every) {
  logbook::Task fact;
  fact.name = {name};
  fact.scope = scope;
  fact.every = std::move(every);
  return fact;
}
logbook::NextDue next_due(const std::string& name, const logbook::Thing& thing,
                          std::vector<logbook::DuePoint> points) {
  logbook::NextDue fact;
  fact.name = {name};
  fact.thing = thing;
  fact.points = std::move(points);
  return fact;
}
logbook::TaskEnds ends(const std::string& name, const logbook::Scope& scope) {
  logbook::TaskEnds fact;
  fact.name = {name};
  fact.scope = scope;
  return fact;
}
logbook::OnCondition on_condition(const logbook::Scope& scope) { return {scope, "manual 5-10"}; }
logbook::HasPlace required(const logbook::Scope& scope, const std::string& place) {
  return {scope, logbook::Need::required, {place}};
}
logbook::Reviewed reviewed(const logbook::Aircraft& aircraft) {
  return {aircraft, "directives and limitations", "2026-02"};
}
logbook::AircraftIs is_model(const logbook::Aircraft& aircraft, const std::string& model) {
  logbook::AircraftIs fact;
  fact.aircraft = aircraft;
  fact.model = {model};
  return fact;
}
logbook::PartIs made(const logbook::Part& part, const std::string& day) {
  logbook::PartIs fact;
  fact.part = part;
  fact.description = "part";
  fact.made = support::day(day);
  return fact;
}
logbook::Said instead(const std::string& day, logbook::Fact fact, const logbook::EntryId& of) {
  // The first five letters of the writer whose bytes are all 'K' (0x4B) in base 32.
  constexpr const char* letters_of_k = "9D5MP";
  logbook::Said said;
  said.day = support::day(day);
  said.fact = std::move(fact);
  said.instead_of = logbook::EntryName{letters_of_k, of.number};
  return said;
}

AsOf::AsOf(const support::Book& book, const std::string& day)
    : standing(reckon::standing(book.entries(), support::day(day))),
      histories(standing, support::day(day), reckon::Ambiguous::late) {}

std::vector<reckon::Item> AsOf::due(const logbook::Aircraft& aircraft) const {
  return reckon::due(histories, standing, aircraft, {});
}
std::vector<reckon::Item> AsOf::lives() const { return reckon::lives(histories, standing); }

const reckon::Item& item_of(const std::vector<reckon::Item>& items, const std::string& beginning) {
  const auto is_meant = [&](const reckon::Item& item) { return item.id.starts_with(beginning); };
  if (std::count_if(items.begin(), items.end(), is_meant) != 1) {
    throw std::invalid_argument("not one item: " + beginning);
  }
  return *std::find_if(items.begin(), items.end(), is_meant);
}
reckon::Item due_item(const AsOf& asked, const logbook::Aircraft& aircraft,
                      const std::string& beginning) {
  const std::vector<reckon::Item> items = asked.due(aircraft);
  return item_of(items, beginning);
}
reckon::Item life_item(const AsOf& asked, const std::string& beginning) {
  const std::vector<reckon::Item> items = asked.lives();
  return item_of(items, beginning);
}

const reckon::Side& governing(const reckon::Item& item) {
  return item.sides.at(static_cast<std::size_t>(item.governs));
}

std::string text(const std::optional<reckon::Figure>& figure) {
  if (!figure || figure->is_unknown()) return "not known";
  switch (figure->unit()) {
    case reckon::Unit::hours:
      return quantity::say(quantity::floor_to_seconds(figure->hours()));
    case reckon::Unit::count:
      return quantity::say(figure->count());
    case reckon::Unit::days:
      break;
  }
  return std::to_string(figure->raw());
}
std::string text(const std::optional<quantity::Day>& day) {
  return day ? quantity::say(*day) : "no day";
}
std::string text(reckon::State state) {
  switch (state) {
    case reckon::State::ok:
      return "ok";
    case reckon::State::soon:
      return "soon";
    case reckon::State::due:
      return "due";
    case reckon::State::over:
      return "over";
    case reckon::State::not_known:
      break;
  }
  return "not known";
}

}  // namespace definitions
