// Which limit, chart and settings of a model hold on a day, and what work on an engine begins.
// Source: trend.md, "Series and readings" and "The line and its words" (each from its day; events
// on record split or shift the series; a wash: same slope, own level).
#include "reckon/trend/model_rules.h"

#include <boost/test/unit_test.hpp>

#include "reckon/entry_named.h"
#include "support/entries.h"

using logbook::CheckKind;
using logbook::EventKind;
using reckon::trend::Beginning;
using reckon::trend::ModelRules;
using support::day;

BOOST_AUTO_TEST_SUITE(model_rules)

namespace {

const logbook::Engine engine = support::engine("TS-40", "E-1001");
const logbook::ModelName& model = engine.model;

quantity::Temperature celsius(std::int64_t degrees) {
  return quantity::Temperature::of(10 * degrees);
}
logbook::TemperatureLimit limit(std::int64_t degrees) {
  logbook::TemperatureLimit fact;
  fact.model.name = model;
  fact.limit = celsius(degrees);
  return fact;
}
logbook::ChartRow row(const std::string& chart, std::int64_t altitude) {
  logbook::ChartRow fact;
  fact.model.name = model;
  fact.chart = chart;
  fact.altitude_feet = altitude;
  fact.outside_air = celsius(10);
  fact.allows = {{celsius(650), {quantity::Decimal::of(60'000), logbook::TorqueUnit::percent}},
                 {celsius(690), {quantity::Decimal::of(70'000), logbook::TorqueUnit::percent}}};
  return fact;
}
logbook::Said instead(const std::string& on, const logbook::Fact& fact,
                      const logbook::EntryId& of) {
  logbook::Said said;
  said.day = day(on);
  said.fact = fact;
  said.instead_of = logbook::EntryName{reckon::writer_letters(of.writer, 5), of.number};
  return said;
}

struct Shelf : support::Book {
  ModelRules rules() {
    standing = reckon::standing(entries(), day("2026-12-31"));
    return ModelRules(standing);
  }
  std::string allowed(const std::string& on, CheckKind check = CheckKind::cruise) {
    const ModelRules all = rules();
    const auto found = all.allowed(model, check, day(on));
    if (!found) return "none";
    if (const auto* degrees = std::get_if<quantity::Temperature>(&found->allowed)) {
      return quantity::say(*degrees);
    }
    return found->key + (found->is_one_of_two_charts ? " of two" : "");
  }
  reckon::Standing standing;
};

}  // namespace

BOOST_FIXTURE_TEST_CASE(a_limit_holds_from_its_day_until_another_stands_instead, Shelf) {
  const auto first = say("2026-02-01", limit(720));
  say(instead("2026-03-01", limit(715), first));
  BOOST_TEST(allowed("2026-01-31") == "none");
  BOOST_TEST(allowed("2026-02-28") == "720");
  BOOST_TEST(allowed("2026-03-01") == "715");
  BOOST_TEST(allowed("2026-03-01", CheckKind::idle) == "none");
  // One of an earlier day that nothing replaces does not outlive the newer one.
  say("2026-01-15", limit(730));
  BOOST_TEST(allowed("2026-01-31") == "730");
  BOOST_TEST(allowed("2026-12-01") == "715");
}

BOOST_FIXTURE_TEST_CASE(a_chart_goes_before_a_limit_and_the_newest_chart_holds, Shelf) {
  say("2026-02-01", limit(720));
  say("2026-02-01", row("C1", 2000));
  say("2026-02-01", row("C1", 4000));
  BOOST_TEST(allowed("2026-02-01") == "chart C1");
  say("2026-04-01", row("C2", 2000));
  BOOST_TEST(allowed("2026-03-31") == "chart C1");
  BOOST_TEST(allowed("2026-04-01") == "chart C2");
  // Of two that begin on one day nobody can tell which one holds.
  const auto third = say("2026-04-01", row("C3", 2000));
  BOOST_TEST(allowed("2026-04-02") == "chart C3 of two");
  say(instead("2026-05-01", row("C4", 2000), third));
  BOOST_TEST(allowed("2026-04-02") == "chart C2");
}

BOOST_FIXTURE_TEST_CASE(each_setting_is_the_newest_that_was_said_of_it, Shelf) {
  logbook::TrendSettings floor;
  floor.model.name = model;
  floor.floor = quantity::Margin::of(100);
  floor.speed_exponent = quantity::Decimal::of(450);
  const auto first = say("2026-02-01", floor);
  logbook::TrendSettings steady;
  steady.model.name = model;
  steady.steady_at_least = 3;
  steady.serial_correlation = quantity::Decimal::of(300);
  say("2026-03-01", steady);
  const auto settings = [&](const std::string& on) { return rules().settings(model, day(on)); };
  BOOST_CHECK(!settings("2026-01-31").floor);
  BOOST_TEST(settings("2026-02-01").exponents.speed == 0.45);
  BOOST_CHECK(!settings("2026-02-01").is_correlation_stated);
  BOOST_CHECK(settings("2026-03-01").floor == quantity::Margin::of(100));
  BOOST_CHECK(settings("2026-03-01").steady_minutes == 3);
  BOOST_CHECK(settings("2026-03-01").serial_correlation == quantity::Decimal::of(300));
  BOOST_CHECK(settings("2026-03-01").is_correlation_stated);
  // What is replaced holds no more from that day on, and leaves what it said to the default.
  floor.speed_exponent.reset();
  floor.floor = quantity::Margin::of(150);
  say(instead("2026-04-01", floor, first));
  BOOST_TEST(settings("2026-04-01").exponents.speed == 0.5);
  BOOST_CHECK(settings("2026-04-01").floor == quantity::Margin::of(150));
  BOOST_TEST(settings("2026-03-31").exponents.speed == 0.45);
}

BOOST_FIXTURE_TEST_CASE(a_correlation_of_one_or_more_is_none, Shelf) {
  logbook::TrendSettings slip;
  slip.model.name = model;
  slip.serial_correlation = quantity::Decimal::of(1000);
  say("2026-02-01", slip);
  BOOST_CHECK(!rules().settings(model, day("2026-03-01")).is_correlation_stated);
  BOOST_CHECK(!rules().settings({"TS-41"}, day("2026-03-01")).is_correlation_stated);
}

BOOST_AUTO_TEST_CASE(work_begins_a_new_segment_and_a_wash_does_not) {
  const auto done = [](EventKind kind) {
    logbook::EngineEvent event;
    event.engine_thing = engine;
    event.event = kind;
    logbook::Said said;
    said.fact = event;
    return reckon::trend::done_to(said, engine);
  };
  const auto begins = [&](EventKind kind, Beginning beginning) {
    const auto found = done(kind);
    return found && std::holds_alternative<Beginning>(*found) &&
           std::get<Beginning>(*found) == beginning;
  };
  BOOST_CHECK(std::holds_alternative<reckon::trend::Washed>(done(EventKind::washed).value()));
  BOOST_CHECK(begins(EventKind::hot_section_done, Beginning::hot_section));
  BOOST_CHECK(begins(EventKind::temperature_probe_changed, Beginning::probe));
  BOOST_CHECK(begins(EventKind::fuel_control_adjusted, Beginning::fuel_control));
  BOOST_CHECK(begins(EventKind::torque_gauge_changed, Beginning::torque_gauge));
  BOOST_CHECK(begins(EventKind::temperature_gauge_changed, Beginning::temperature_gauge));
  logbook::Said overhaul;
  overhaul.fact = support::overhauled(engine);
  BOOST_CHECK(std::get<Beginning>(reckon::trend::done_to(overhaul, engine).value()) ==
              Beginning::overhauled);
  BOOST_CHECK(!reckon::trend::done_to(overhaul, support::engine("TS-40", "E-2")));
}

BOOST_AUTO_TEST_SUITE_END()
