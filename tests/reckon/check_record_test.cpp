// The whole record looked at again, many facts checked one after another, and histories without
// fault, which raise nothing.

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <list>
#include <random>

#include "reckon/checking.h"

using namespace checking;
using support::fitted;
using support::flew;
using support::had_hours;

namespace {

struct Finding {
  logbook::EntryId entry;
  CheckKind kind;
  bool operator==(const Finding&) const = default;
};

std::vector<Finding> findings_of(const Record& record) {
  std::vector<Finding> findings;
  for (const auto& finding : reckon::check_record(record.entries(), record.today)) {
    findings.push_back({finding.entry, finding.objection.kind});
  }
  return findings;
}
bool found_only(const Record& record, const std::vector<Finding>& wanted) {
  return findings_of(record) == wanted;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(check_record)

BOOST_AUTO_TEST_CASE(each_finding_is_told_once_at_the_later_entry) {
  Record record;
  record.begin("4400.0", "100.0");
  record.say("2025-03-03", flew(record.kit, "1.0", {}, collective("100.0", "101.0")));
  const auto gap =
      record.say("2025-03-04", flew(record.kit, "1.0", {}, collective("103.0", "104.0")));
  const auto overlap =
      record.say("2025-03-05", flew(record.kit, "1.0", {}, collective("103.5", "104.5")));
  BOOST_CHECK(
      found_only(record, {{gap, CheckKind::meter_gap}, {overlap, CheckKind::meter_overlap}}));
}

BOOST_AUTO_TEST_CASE(findings_name_the_newest_of_a_corrected_chain) {
  Record record;
  record.begin("4400.0", "100.0");
  const auto flight =
      record.say("2025-03-03", flew(record.kit, "1.0", {}, collective("100.0", "101.0")));
  const auto newest = record.correct(flight, "2025-03-03",
                                     flew(record.kit, "1.0", {}, collective("100.5", "101.5")));
  BOOST_CHECK(found_only(record, {{newest, CheckKind::meter_gap}}));
  record.strike(newest);
  BOOST_CHECK(found_only(record, {}));
}

BOOST_AUTO_TEST_CASE(a_day_with_too_many_hours_is_told_once) {
  Record record;
  record.begin("4400.0", "");
  record.say("2025-03-03", flew(record.kit, "10.0"));
  record.say("2025-03-03", flew(record.kit, "10.0"));
  const auto last = record.say("2025-03-03", flew(record.kit, "10.5"));
  BOOST_CHECK(found_only(record, {{last, CheckKind::too_long_a_day}}));
}

BOOST_AUTO_TEST_CASE(a_serial_in_two_places_by_two_writers_is_found) {
  Record record;
  record.begin("4400.0", "");
  record.say("2025-03-01", support::forward(record.mob, "100.0"));
  const auto blade = support::part("PN-4411", "B-88");
  record.say("2025-03-02", fitted(blade, {record.kit, "blade 1", ""}));
  record.write_as('M');
  const auto second = record.say("2025-03-03", fitted(blade, {record.mob, "blade 1", ""}));
  BOOST_CHECK(found_only(record, {{second, CheckKind::serial_elsewhere}}));
}

BOOST_AUTO_TEST_CASE(a_stated_total_that_a_late_flight_moved_is_found) {
  Record record;
  record.begin("4400.0", "");
  logbook::Task task;
  task.name = {"inspection"};
  task.scope = record.kit;
  record.say("2025-03-01", task);
  record.say("2025-03-02", flew(record.kit, "10.0"));
  const auto signed_entry =
      record.say("2025-03-05", support::done("inspection", record.kit, "4410.0"));
  BOOST_CHECK(found_only(record, {}));
  record.say("2025-03-04", flew(record.kit, "1.3"));
  BOOST_CHECK(found_only(record, {{signed_entry, CheckKind::stated_total_differs}}));
}

// Design 4: it agreed, and moves; what was answered once is not asked for ever.
BOOST_AUTO_TEST_CASE(a_stated_total_that_an_accepted_late_flight_moved_is_right) {
  Record record;
  record.begin("4400.0", "");
  const auto blade = support::part("PN-4411", "B-88");
  record.say("2025-03-01", fitted(blade, {record.kit, "blade 1", "4400.0"}, {had_hours("0.0")}));
  record.say("2025-03-02", flew(record.kit, "10.0"));
  auto off = support::removed(blade, {record.kit, "blade 1", "4410.0"});
  off.with = {had_hours("10.0")};
  const auto removal = record.say("2025-03-05", off);
  auto late = said("2025-03-04", flew(record.kit, "1.3"));
  late.although = {{"with this the 4410.0 h become 4411.3 h", "late paper"}};
  record.say(late);
  BOOST_CHECK(found_only(record, {}));
  // Another one that nobody was asked about, as from another base.
  Record more = record;
  more.say("2025-03-03", flew(record.kit, "0.2"));
  BOOST_CHECK(found_only(
      more, {{removal, CheckKind::stated_total_differs}, {removal, CheckKind::had_differs}}));
}

BOOST_AUTO_TEST_CASE(an_entry_dated_ahead_and_a_look_alike_are_found) {
  Record record;
  record.begin("4400.0", "");
  record.say("2025-03-02", logbook::PartIs{support::part("PN-1", "SO-1"), "", {}, {}, {}});
  const auto alike =
      record.say("2025-03-01", logbook::PartIs{support::part("PN-1", "50-1"), "", {}, {}, {}});
  const auto ahead = record.say("2025-03-11", flew(record.kit, "1.0"));
  BOOST_CHECK(found_only(
      record, {{alike, CheckKind::serial_look_alike}, {ahead, CheckKind::in_the_future}}));
}

BOOST_AUTO_TEST_CASE(facts_checked_one_after_another_see_those_before_them) {
  Record record;
  record.begin("4400.0", "100.0");
  reckon::Checker checker(record.entries(), record.today);
  std::list<logbook::Entry> appended;
  Record lines;  // a second book only makes the entries
  const auto add = [&](const logbook::EntryId&) {
    appended.push_back(lines.entries().back());
    appended.back().id.number += 1000;
    checker.add(appended.back());
  };
  const auto first = flew(record.kit, "1.0", {}, collective("100.0", "101.0"));
  CHECK_KINDS(kinds_of(checker.objections(said("2025-03-03", first))));
  add(lines.say("2025-03-03", first));
  CHECK_KINDS(kinds_of(checker.objections(said("2025-03-03", first))), CheckKind::duplicate);
  logbook::Task task;
  task.name = {"inspection"};
  task.scope = record.kit;
  add(lines.say("2025-03-01", task));
  const auto inspected = [&](const std::string& total) {
    return said("2025-03-04", support::done("inspection", record.kit, total));
  };
  CHECK_KINDS(kinds_of(checker.objections(inspected("4400.0"))), CheckKind::stated_total_differs);
  CHECK_KINDS(kinds_of(checker.objections(inspected("4401.0"))));
  add(lines.say(inspected("4401.0")));
  const auto late = said("2025-03-03", flew(record.kit, "0.5", {}, collective("101.0", "101.5")));
  CHECK_KINDS(kinds_of(checker.objections(late)), CheckKind::stated_total_differs);
  logbook::EntryId flight = appended.front().id;
  const auto change = flew(record.kit, "0.9", {}, collective("100.0", "100.9"));
  CHECK_KINDS(kinds_of(checker.objections(corrected(flight, said("2025-03-03", change)))));
}

namespace {

// A history without fault: flights in the order of their meters, some by clock, some missing hours
// on record, a meter changed, an engine moved with right hours, inspections at right totals.
class CleanHistory {
 public:
  explicit CleanHistory(std::uint64_t seed) : random_(seed) {
    record_.begin("1000.0", "500.0", "2024-03-01");
    record_.say("2024-03-01", fitted(engine_, {record_.kit, "engine 1", ""}, {had_hours("300.0")}));
    logbook::Task task;
    task.name = {"inspection"};
    task.scope = record_.kit;
    record_.say("2024-03-01", task);
  }
  void live_a_day(quantity::Day day) {
    const auto flights = below(4);
    for (int flight = 0; flight < flights; ++flight) fly(day);
    switch (below(12)) {
      case 0:
        return inspect(day);
      case 1:
        return change_meter(day);
      case 2:
        return move_engine(day);
      case 3:
        return miss_hours(day);
      default:
        return;
    }
  }
  const Record& record() const { return record_; }
  const std::vector<logbook::Said>& said() const { return said_; }

 private:
  int below(int limit) { return std::uniform_int_distribution<int>(0, limit - 1)(random_); }
  quantity::Hours tenths(std::int64_t count) { return quantity::Hours::of(count * 360); }
  void say(quantity::Day day, logbook::Fact fact) {
    said_.push_back(checking::said(quantity::say(day), std::move(fact)));
    record_.say(said_.back());
  }
  std::vector<logbook::MeterRun> run(quantity::Hours hours) {
    const quantity::HourMeter from = meter_;
    meter_ = meter_ + hours;
    return {{{"collective"}, from, meter_}};
  }
  void use(quantity::Hours hours) {
    airframe_ += hours;
    if (is_fitted_) own_ += hours;
  }
  void fly(quantity::Day day) {
    logbook::Flew flight = flew(record_.kit, "0.1", {support::starts(1), support::landings(2)});
    flight.hours = tenths(1 + below(30));
    flight.meters = run(flight.hours);
    use(flight.hours);
    say(day, flight);
  }
  void miss_hours(quantity::Day day) {
    logbook::Unaccounted gap{record_.kit, tenths(1 + below(20)), {}};
    gap.meters = run(gap.hours);
    use(gap.hours);
    say(day, gap);
  }
  void inspect(quantity::Day day) {
    logbook::Done done = support::done("inspection", record_.kit);
    done.airframe = airframe_;
    done.meter = logbook::MeterReading{{"collective"}, meter_};
    done.after_the_last_flight = true;
    say(day, done);
  }
  void change_meter(quantity::Day day) {
    const quantity::HourMeter out = meter_;
    meter_ = quantity::HourMeter::of(below(100) * 360);
    say(day, logbook::MeterChanged{record_.kit, {"collective"}, out, meter_, {}});
  }
  void move_engine(quantity::Day day) {
    const logbook::Had had{logbook::Grade::exact, logbook::ClockHours{own_, {}}, {}};
    if (is_fitted_) {
      logbook::Removed removed = support::removed(engine_, {record_.kit, "engine 1", ""});
      removed.with = {had};
      removed.after_the_last_flight = true;
      say(day, removed);
    } else {
      logbook::Fitted again = fitted(engine_, {record_.kit, "engine 1", ""}, {had});
      again.after_the_last_flight = true;
      say(day, again);
    }
    is_fitted_ = !is_fitted_;
  }

  std::mt19937_64 random_;
  Record record_;
  std::vector<logbook::Said> said_;
  const logbook::Engine engine_ = support::engine("TS-40", "E-1001");
  quantity::HourMeter meter_ = support::meter("500.0");
  quantity::Hours airframe_ = support::hours("1000.0");
  quantity::Hours own_ = support::hours("300.0");
  bool is_fitted_ = true;
};

void expect_nothing(const CleanHistory& history) {
  for (const auto& finding :
       reckon::check_record(history.record().entries(), history.record().today)) {
    BOOST_ERROR("entry " << finding.entry.number << " raises " << finding.objection.kind << " on "
                         << finding.objection.slot);
  }
}

}  // namespace

BOOST_AUTO_TEST_CASE(random_histories_without_fault_raise_nothing) {
  const std::uint64_t seed = std::random_device{}();
  BOOST_TEST_MESSAGE("seed " << seed);
  for (std::uint64_t round = 0; round < 20; ++round) {
    BOOST_TEST_CONTEXT("seed " << seed << ", round " << round) {
      CleanHistory history(seed + round);
      quantity::Day day = support::day("2024-03-01");
      for (int count = 0; count < 60; ++count) {
        history.live_a_day(day);
        day = quantity::day_after(day);
      }
      expect_nothing(history);
    }
  }
}

// Said one after another, each fact fits what was said before it.
BOOST_AUTO_TEST_CASE(facts_of_a_history_without_fault_raise_nothing_when_they_are_said) {
  const std::uint64_t seed = std::random_device{}();
  BOOST_TEST_MESSAGE("seed " << seed);
  CleanHistory history(seed);
  quantity::Day day = support::day("2024-03-01");
  for (int count = 0; count < 60; ++count) {
    history.live_a_day(day);
    day = quantity::day_after(day);
  }
  const auto& entries = history.record().entries();
  const std::size_t first = entries.size() - history.said().size();
  const std::vector<logbook::Entry> before(entries.begin(),
                                           entries.begin() + static_cast<std::ptrdiff_t>(first));
  reckon::Checker checker(before, history.record().today);
  for (std::size_t i = 0; i < history.said().size(); ++i) {
    for (const auto& objection : checker.objections(history.said()[i])) {
      BOOST_ERROR("seed " << seed << ", fact " << i << " raises " << objection.kind << " on "
                          << objection.slot);
    }
    checker.add(entries[first + i]);
  }
}

// Each of these slips, put into a history without fault, is found.
BOOST_AUTO_TEST_CASE(a_slip_in_a_history_without_fault_is_found) {
  const std::uint64_t seed = std::random_device{}();
  BOOST_TEST_MESSAGE("seed " << seed);
  CleanHistory history(seed);
  quantity::Day day = support::day("2024-03-01");
  for (int count = 0; count < 60; ++count) {
    history.live_a_day(day);
    day = quantity::day_after(day);
  }
  std::size_t slips = 0;
  for (const logbook::Entry& entry : history.record().entries()) {
    const auto* flown = std::get_if<logbook::Flew>(&entry.said->fact);
    if (flown == nullptr || ++slips > 25) continue;
    std::vector<logbook::Entry> entries = history.record().entries();
    const auto at = std::find_if(entries.begin(), entries.end(),
                                 [&](const logbook::Entry& each) { return each.id == entry.id; });
    std::get<logbook::Flew>(at->said->fact).hours += quantity::Hours::of(360);
    BOOST_TEST_CONTEXT("seed " << seed << ", entry " << entry.id.number) {
      BOOST_CHECK(!reckon::check_record(entries, history.record().today).empty());
    }
  }
  BOOST_CHECK_GT(slips, 0U);
}

BOOST_AUTO_TEST_SUITE_END()
