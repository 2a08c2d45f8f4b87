#include "reckon/papers.h"

#include "quantity/expect.h"
#include "reckon/things.h"

namespace reckon {

namespace {

template <class T>
void renew(std::optional<T>& value, const std::optional<T>& newer) {
  if (newer) value = newer;
}

void take(const logbook::AircraftIs& is, AllPapers& all) {
  Papers& papers = all[is.aircraft];
  papers.model = is.model;
  renew(papers.made, is.made);
  renew(papers.first_certificate, is.first_certificate);
}

void take(const logbook::EngineIs& is, AllPapers& all) {
  Papers& papers = all[is.engine];
  renew(papers.made, is.made);
  renew(papers.released, is.released);
}

// What is cured and has no day on which it was made counts from the end of its quarter.
void take(const logbook::PartIs& is, AllPapers& all) {
  Papers& papers = all[is.part];
  if (is.cured && !papers.made) papers.made = last_day_of(*is.cured);
  renew(papers.made, is.made);
  renew(papers.released, is.released);
}

}  // namespace

AllPapers papers_of(const Standing& standing) {
  AllPapers all;
  for (const StandingFact& fact : standing.facts) {
    for (const logbook::Thing& thing : things_in(fact.said->fact)) {
      Papers& papers = all[thing];
      const auto* engine = std::get_if<logbook::Engine>(&thing);
      if (engine != nullptr) papers.model = engine->model;
    }
    const logbook::Fact& said = fact.said->fact;
    if (const auto* aircraft = std::get_if<logbook::AircraftIs>(&said)) take(*aircraft, all);
    if (const auto* engine = std::get_if<logbook::EngineIs>(&said)) take(*engine, all);
    if (const auto* part = std::get_if<logbook::PartIs>(&said)) take(*part, all);
  }
  return all;
}

quantity::Day last_day_of(const quantity::Quarter& quarter) {
  const auto month = static_cast<unsigned>(quarter.quarter * 3);
  const auto day = quantity::make_day({quarter.year, month, 1});
  EXPECT(day.has_value());
  return quantity::end_of_month(*day);
}

}  // namespace reckon
