// Random histories against a fold written in another way: a list of happenings that is walked one
// after another, with everything's host in a map, and hours in minutes.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <map>
#include <random>

#include "told.h"

using logbook::CounterKind;
using support::Book;
using told::Told;

BOOST_AUTO_TEST_SUITE(random_histories)

namespace {

constexpr std::size_t aircraft_count = 2;
constexpr std::size_t things_count = 7;  // 2 aircraft, 2 engines, 3 parts

const std::vector<logbook::Thing> things{
    support::aircraft("ZZ-KIT"),     support::aircraft("ZZ-MOB"),  support::engine("TS-40", "E-1"),
    support::engine("TS-40", "E-2"), support::part("PN-M", "M-1"), support::part("PN-T", "T-1"),
    support::part("PN-T", "T-2"),
};
constexpr int nowhere = -1;

struct Happening {
  int day = 0;
  int minute = 0;  // of the day; without clocks the place in writing
  enum class Kind { flight, ground_run, fitting, removal } kind = Kind::flight;
  std::size_t thing = 0;  // the aircraft of a flight, or what is fitted
  std::size_t host = 0;
  int minutes_flown = 0;
  int starts = 0;
  int landings = 0;
};

std::string day_text(int day) { return say(support::day("2026-01-01") + quantity::Days::of(day)); }

std::string place_of(const Happening& one) {
  return one.thing < 4 ? "engine 1" : "place of " + std::to_string(one.thing);
}

logbook::Fact fact_of(const Happening& one, bool has_clock) {
  const auto aircraft = [](std::size_t at) { return std::get<logbook::Aircraft>(things[at]); };
  const support::Where where{things[one.host], place_of(one), ""};
  switch (one.kind) {
    case Happening::Kind::fitting:
      return support::fitted(things[one.thing], where);
    case Happening::Kind::removal:
      return support::removed(things[one.thing], where);
    case Happening::Kind::ground_run:
      return support::ran(aircraft(one.thing), "engine 1", {support::starts(one.starts)});
    case Happening::Kind::flight:
      break;
  }
  logbook::Flew flew = support::flew(
      aircraft(one.thing), "0:00", {support::starts(one.starts), support::landings(one.landings)});
  flew.hours = quantity::Hours::of(60 * one.minutes_flown);
  if (has_clock) flew.took_off = quantity::ClockTime{one.minute, {}};
  return flew;
}

logbook::Said said_of(const Happening& one, bool has_clock) {
  logbook::Said said;
  said.day = support::day(day_text(one.day));
  if (has_clock) said.time = quantity::ClockTime{one.minute, {}};
  said.fact = fact_of(one, has_clock);
  return said;
}

// What each thing has used, in minutes and counts, and since it was fitted where it is.
struct Fold {
  std::vector<int> host = std::vector<int>(things_count, nowhere);
  std::vector<int> minutes = std::vector<int>(things_count, 0);
  std::vector<int> starts = std::vector<int>(things_count, 0);
  std::vector<int> landings = std::vector<int>(things_count, 0);
  std::vector<int> minutes_when_fitted = std::vector<int>(things_count, nowhere);

  std::size_t root(std::size_t thing) const {
    while (host[thing] != nowhere) thing = static_cast<std::size_t>(host[thing]);
    return thing;
  }
  void take(const Happening& one) {
    if (one.kind == Happening::Kind::fitting) {
      host[one.thing] = static_cast<int>(one.host);
      minutes_when_fitted[one.thing] = minutes[one.thing];
      return;
    }
    if (one.kind == Happening::Kind::removal) {
      host[one.thing] = nowhere;
      return;
    }
    for (std::size_t thing = 0; thing < things_count; ++thing) {
      if (root(thing) != one.thing) continue;
      minutes[thing] += one.minutes_flown;
      starts[thing] += one.starts;
      landings[thing] += one.landings;
    }
  }
};

// A true history: what moves is always free to move.
class Truth {
 public:
  Truth(std::mt19937& random, int days) : random_(random) {
    for (int day = 1; day <= days; ++day) make_day(day);
  }
  const std::vector<Happening>& happenings() const { return happenings_; }

 private:
  int pick(int below) { return static_cast<int>(random_() % static_cast<unsigned>(below)); }

  void make_day(int day) {
    const int number = pick(6);
    for (int at = 0; at < number; ++at) {
      Happening one;
      one.day = day;
      one.minute = 100 * at + pick(60);
      if (pick(3) == 0 ? make_move(one) : make_flight(one)) {
        fold_.take(one);
        happenings_.push_back(one);
      }
    }
  }
  bool make_flight(Happening& one) {
    one.thing = static_cast<std::size_t>(pick(aircraft_count));
    one.kind = pick(5) == 0 ? Happening::Kind::ground_run : Happening::Kind::flight;
    one.starts = pick(3);
    if (one.kind == Happening::Kind::ground_run) return true;
    one.minutes_flown = 6 * (1 + pick(40));
    one.landings = 1 + pick(4);
    return true;
  }
  // Engines go into aircraft, the module into engines, discs into the module or onto aircraft.
  bool make_move(Happening& one) {
    one.thing = aircraft_count + static_cast<std::size_t>(pick(things_count - aircraft_count));
    if (fold_.host[one.thing] != nowhere) {
      one.kind = Happening::Kind::removal;
      one.host = static_cast<std::size_t>(fold_.host[one.thing]);
      return true;
    }
    one.kind = Happening::Kind::fitting;
    one.host = static_cast<std::size_t>(pick(2));
    if (one.thing == 4) one.host += 2;
    if (one.thing > 4 && pick(2) == 0) one.host = 4;
    if (one.thing >= 4) return true;
    const std::size_t other = one.thing == 2 ? 3 : 2;
    return fold_.host[other] != static_cast<int>(one.host);  // one engine an aircraft
  }

  std::mt19937& random_;
  Fold fold_;
  std::vector<Happening> happenings_;
};

// A book of the truth, with slips that are corrected or struck later.
class Written {
 public:
  Written(std::mt19937& random, bool has_clock) : random_(random), has_clock_(has_clock) {
    for (std::size_t at = 0; at < things_count; ++at) {
      const auto hours = support::had_hours("1000.0");
      const auto others = {support::had(support::starts(500)),
                           support::had(support::landings(700))};
      std::vector<logbook::Had> had(others);
      if (at < aircraft_count) {
        book.say("2026-01-01",
                 support::forward(std::get<logbook::Aircraft>(things[at]), "1000.0", had));
      } else {
        had.push_back(hours);
        book.say("2026-01-01", support::forward(things[at], had));
      }
    }
  }
  void write(const Happening& one) {
    const bool is_use =
        one.kind == Happening::Kind::flight || one.kind == Happening::Kind::ground_run;
    const int slip = is_use ? static_cast<int>(random_() % 6) : 9;
    if (slip == 0) return write_and_correct(one);
    if (slip == 1) return write_and_restore(one);
    if (slip == 2) book.strike(book.say(said_of(one, has_clock_)));
    book.say(said_of(one, has_clock_));
  }

  Book book;

 private:
  Happening slipped(Happening one) {
    one.starts += 3;
    if (one.kind == Happening::Kind::flight) one.minutes_flown += 66;
    if (has_clock_) one.day += static_cast<int>(random_() % 3);
    return one;
  }
  void write_and_correct(const Happening& one) {
    const auto entry = book.say(said_of(slipped(one), has_clock_));
    logbook::Said right = said_of(one, has_clock_);
    correct(entry, right);
  }
  void write_and_restore(const Happening& one) {
    const auto entry = book.say(said_of(one, has_clock_));
    const auto wrong = correct(entry, said_of(slipped(one), has_clock_));
    const auto strike = book.strike(wrong);
    if (random_() % 2 == 0) book.strike(book.strike(strike));
  }
  logbook::EntryId correct(const logbook::EntryId& entry, const logbook::Said& instead) {
    logbook::Said said;
    said.day = instead.day;
    const std::string writer(1, static_cast<char>(entry.writer.bytes[0]));
    said.fact = logbook::Corrected{{writer, entry.number}, "slip", logbook::InnerSaid(instead)};
    return book.refer(entry).say(std::move(said));
  }

  std::mt19937& random_;
  bool has_clock_;
};

Fold fold_until(const std::vector<Happening>& happenings, int day) {
  Fold fold;
  for (const Happening& one : happenings) {
    if (one.day <= day) fold.take(one);
  }
  return fold;
}

std::string minutes_text(int minutes) { return say(quantity::Hours::of(60 * minutes)); }

void compare(const Told& told, const Fold& fold) {
  for (std::size_t at = 0; at < things_count; ++at) {
    const logbook::Thing& thing = things[at];
    BOOST_TEST(told.hours(thing) == minutes_text(60000 + fold.minutes[at]));
    BOOST_TEST(told.count(thing, CounterKind::starts) == std::to_string(500 + fold.starts[at]));
    BOOST_TEST(told.count(thing, CounterKind::landings) == std::to_string(700 + fold.landings[at]));
    if (fold.host[at] == nowhere) continue;
    const int since = fold.minutes[at] - fold.minutes_when_fitted[at];
    BOOST_TEST(told.fitting(thing) == minutes_text(since));
    BOOST_CHECK(told.histories.stay_now(thing)->host ==
                things[static_cast<std::size_t>(fold.host[at])]);
  }
}

// Running totals are the sums of the rows, and the airframe's totals without what it had.
void compare_derived(const Told& told) {
  for (std::size_t at = 0; at < aircraft_count; ++at) {
    const auto& aircraft = std::get<logbook::Aircraft>(things[at]);
    const auto derived = told.histories.derived(aircraft, support::day("2026-01-01"));
    std::map<std::pair<std::string, std::string>, std::int64_t> sums;
    std::map<std::pair<std::string, std::string>, std::int64_t> totals;
    for (const auto& row : derived.uses) sums[{row.place, row.key}] += row.amount;
    for (const auto& total : derived.totals) totals[{total.place, total.key}] = total.total;
    BOOST_CHECK(sums == totals);
    const auto hours = told.histories.total(aircraft, reckon::service_clock, told.histories.now());
    const std::int64_t flown = hours.figure.raw() - support::service("1000.0").count();
    const std::int64_t derived_hours = sums[{"", "hours"}];
    BOOST_TEST(flown == derived_hours);
  }
}

// Terms with a minus are taken off.
void compare_working(const Told& told) {
  for (const logbook::Thing& thing : things) {
    const auto total = told.histories.total(thing, reckon::service_clock, told.histories.now());
    reckon::Figure sum = reckon::zero(reckon::service_clock);
    for (const reckon::Term& term : total.because) {
      sum = term.subtract ? sum - term.figure : sum + term.figure;
    }
    BOOST_CHECK(sum == total.figure);
  }
}

void try_one(unsigned seed, bool has_clock) {
  BOOST_TEST_CONTEXT("seed " << seed << (has_clock ? ", with clocks" : ", as written")) {
    std::mt19937 random(seed);
    const int days = 12;
    const Truth truth(random, days);
    Written written(random, has_clock);
    std::vector<Happening> order = truth.happenings();
    if (has_clock) std::shuffle(order.begin(), order.end(), random);
    for (const Happening& one : order) written.write(one);
    for (const int day : {days, days / 2, 1}) {
      const Told told(written.book, day_text(day));
      compare(told, fold_until(truth.happenings(), day));
      compare_derived(told);
      compare_working(told);
      BOOST_TEST(told.histories.questions().empty());
    }
  }
}

}  // namespace

BOOST_AUTO_TEST_CASE(histories_written_as_they_happened_agree_with_the_naive_fold) {
  for (unsigned seed = 1; seed <= 150; ++seed) try_one(seed, false);
}

BOOST_AUTO_TEST_CASE(histories_written_late_and_shuffled_agree_by_their_clocks) {
  for (unsigned seed = 1001; seed <= 1150; ++seed) try_one(seed, true);
}

BOOST_AUTO_TEST_SUITE_END()
