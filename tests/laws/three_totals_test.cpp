// Three ways to each total: the fold over entries, the running totals kept in the book, and SUM()
// in SQL. `check` compares them; here it does so over random histories with late and same-day
// entries, corrections and strikes, entered through the spine one by one. The seed is printed.
#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <random>

#include "laws/demo_book.h"

namespace {

unsigned seed() {
  const char* given = std::getenv("TIMEWORN_SEED");
  return given != nullptr ? static_cast<unsigned>(std::strtoul(given, nullptr, 10))
                          : std::random_device{}();
}

struct Chance {
  std::mt19937 engine;
  int between(int low, int high) { return std::uniform_int_distribution<int>(low, high)(engine); }
};

std::string two(int number) { return (number < 10 ? "0" : "") + std::to_string(number); }

std::string random_day(Chance& chance) {
  return "2026-" + two(chance.between(1, 2)) + "-" + two(chance.between(1, 28));
}

std::string random_flight(Chance& chance) {
  const std::string aircraft = chance.between(0, 1) == 0 ? "ZZ-TWN" : "ZZ-KIT";
  const std::string starts = aircraft == "ZZ-TWN" && chance.between(0, 2) == 0
                                 ? "1 start on engine 1, 2 starts on engine 2"
                                 : "1 start";
  return random_day(chance) + " " + aircraft + " flew 0." + std::to_string(chance.between(1, 9)) +
         " h, " + starts + ", " + std::to_string(chance.between(2, 4)) + " landings";
}

std::string random_entry_name(const laws::DemoBook& book, Chance& chance) {
  std::vector<std::string> flights;
  for (const auto& entry : book.entries()) {
    if (entry.said && std::holds_alternative<logbook::Flew>(entry.said->fact)) {
      flights.push_back("0GHWF-" + std::to_string(entry.id.number));
    }
  }
  return flights[static_cast<std::size_t>(chance.between(0, static_cast<int>(flights.size()) - 1))];
}

laws::Answer random_step(const laws::DemoBook& book, Chance& chance) {
  switch (chance.between(0, 4)) {
    case 0:
      return book.run({"strike", random_entry_name(book, chance), "--because", "entered twice"});
    case 1:
      return book.run({"correct", random_entry_name(book, chance),
                       "0." + std::to_string(chance.between(1, 9)) + " h", "--because",
                       "read wrongly", "--although-because", "the paper says so"});
    default:
      return book.run({"say", random_flight(chance), "--because", "the paper says so"});
  }
}

}  // namespace

BOOST_AUTO_TEST_CASE(the_demo_has_each_total_in_three_ways) {
  const laws::DemoBook book;
  const laws::Answer answer = book.run({"check"});
  BOOST_TEST(answer.code == 0, answer.out);
  BOOST_TEST(answer.out.find("proved 713 figures") != std::string::npos, answer.out);
}

BOOST_AUTO_TEST_CASE(random_histories_keep_each_total_in_three_ways) {
  const unsigned first = seed();
  BOOST_TEST_MESSAGE("seed " << first);
  Chance chance{std::mt19937(first)};
  const laws::DemoBook book;
  int saved = 0;
  for (int step = 0; step < 25; ++step) {
    if (random_step(book, chance).code == 0) ++saved;
    const laws::Answer answer = book.run({"check"});
    BOOST_TEST(answer.out.find("Fault in") == std::string::npos,
               "seed " << first << ", step " << step << ": " << answer.out);
  }
  BOOST_TEST(saved > 5, "seed " << first << ": only " << saved << " steps were saved");
}

BOOST_AUTO_TEST_CASE(a_rebuild_changes_no_figure) {
  const laws::DemoBook book;
  const std::string before = book.run({"due", "ZZ-KIT", "--json"}).out;
  BOOST_TEST(book.run({"rebuild"}).code == 0);
  BOOST_TEST(book.run({"check"}).code == 0);
  BOOST_TEST(book.run({"due", "ZZ-KIT", "--json"}).out == before);
}
