// The nth request for memory is refused, n = 1, 2, 3 … until the act succeeds untouched
// (sqlite.org/testing.html, 3.1 "Out-Of-Memory Testing"): the readers of sentences and record lines
// then give nothing or the same as ever, and keep nothing (the leak checker looks at the end); a
// command tells in a sentence and leaves the book as it was or as it should be.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <iostream>
#include <new>
#include <random>

#include "faults/deeds.h"
#include "sentence/frame.h"
#include "sentence/sentence.h"

namespace {

// Requests from here until the one that is refused; below zero: none is.
long until_refused = -1;
bool has_refused = false;

bool is_refused() {
  if (until_refused < 0 || --until_refused >= 0) return false;
  has_refused = true;
  return true;
}

void* taken(std::size_t size) {
  void* const memory = is_refused() ? nullptr : std::malloc(size == 0 ? 1 : size);
  if (memory == nullptr) throw std::bad_alloc();
  return memory;
}

}  // namespace

void* operator new(std::size_t size) { return taken(size); }
void* operator new[](std::size_t size) { return taken(size); }
void* operator new(std::size_t size, const std::nothrow_t&) noexcept {
  return is_refused() ? nullptr : std::malloc(size == 0 ? 1 : size);
}
void operator delete(void* memory) noexcept { std::free(memory); }
void operator delete[](void* memory) noexcept { std::free(memory); }
void operator delete(void* memory, std::size_t) noexcept { std::free(memory); }
void operator delete[](void* memory, std::size_t) noexcept { std::free(memory); }

namespace {

using namespace faults;

constexpr std::size_t commands_in_short = 60;

void refuse_the(long nth) {
  until_refused = nth - 1;
  has_refused = false;
}
void refuse_none() { until_refused = -1; }

// Gives how many requests were refused until the act went through.
template <class Act, class Value>
long until_it_succeeds(Act act, const Value& right) {
  for (long nth = 1;; ++nth) {
    refuse_the(nth);
    try {
      const Value value = act();
      refuse_none();
      BOOST_TEST_REQUIRE((value == right), "with the refusal of " << nth);
      if (!has_refused) return nth - 1;
    } catch (const std::bad_alloc&) {
      refuse_none();
    }
  }
}

constexpr const char* line =
    "2026-03-04 aircraft ZZ-KIT flew 1.7 h, 1 start, 3 landings, collective meter 1234.5 to "
    "1236.2.";

// Requests of a deed; refused: each of these, by its number.
long requests_of(const Clerk& clerk, const Prepared& one) {
  clerk.put_back(one.before);
  constexpr long many = 1'000'000'000;
  refuse_the(many);
  clerk.type(one.deed.words, one.deed.input);
  const long left = until_refused;
  refuse_none();
  return many - 1 - left;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(memory)

BOOST_AUTO_TEST_CASE(the_reader_of_sentences_reads_it_or_says_that_it_cannot) {
  const auto right = sentence::read(line, {}).said;
  BOOST_TEST_REQUIRE(right.has_value());
  const long refused = until_it_succeeds([] { return sentence::read(line, {}).said; }, right);
  std::cout << "memory: " << refused << " requests of a reader refused" << std::endl;
  BOOST_TEST(refused > 5);
  BOOST_TEST((sentence::read(line, {}).said == right));
}

BOOST_AUTO_TEST_CASE(a_sentence_with_faults_is_told_or_cannot_be) {
  const std::string wrong = "2026-03-04 aircraft ZZ-KIT flow 1.7 h, 1 strat";
  const std::size_t right = sentence::read(wrong, {}).wrong.size();
  BOOST_TEST_REQUIRE(right > 0U);
  BOOST_TEST(until_it_succeeds([&] { return sentence::read(wrong, {}).wrong.size(); }, right) > 5);
}

BOOST_AUTO_TEST_CASE(the_reader_of_record_lines_reads_it_or_says_that_it_cannot) {
  logbook::Frame frame;
  frame.number = 19;
  frame.about = sentence::about(*sentence::read(line, {}).said);
  const std::string whole = sentence::say_line(frame, line);
  const auto read = [&] {
    const auto result = sentence::read_line(whole);
    const auto* const good = std::get_if<sentence::ReadLine>(&result);
    return good == nullptr ? std::string() : good->sentence;
  };
  BOOST_TEST(until_it_succeeds(read, std::string(line)) > 5);
}

BOOST_AUTO_TEST_CASE(a_command_leaves_the_book_as_it_was_or_as_it_should_be) {
  std::mt19937_64 random(seed_of("memory"));
  const Clerk clerk;
  const auto all = prepared(clerk);
  std::vector<std::pair<const Prepared*, long>> list;
  for (const Prepared& one : all) {
    const long requests = requests_of(clerk, one);
    for (long nth = 1; nth <= requests; ++nth) list.emplace_back(&one, nth);
  }
  std::cout << "memory: " << list.size() << " requests of commands" << std::endl;
  std::shuffle(list.begin(), list.end(), random);
  if (list.size() > commands_in_short && !is_long()) list.resize(commands_in_short);
  for (const auto& [one, nth] : list) {
    const std::string what = one->deed.name + ", request " + std::to_string(nth);
    clerk.put_back(one->before);
    refuse_the(nth);
    const Told told = clerk.type(one->deed.words, one->deed.input);
    refuse_none();
    BOOST_TEST((told.code == 0 || told.code == 74), what << ": " << told.code << ' ' << told.err);
    const std::string now = answers(clerk, one->deed);
    const bool is_after = now == one->answers_after;
    BOOST_TEST((is_after || now == one->answers_before), what << ": " << now);
    BOOST_TEST((is_after || told.code != 0), what << ": called saved and lost");
  }
}

BOOST_AUTO_TEST_SUITE_END()
