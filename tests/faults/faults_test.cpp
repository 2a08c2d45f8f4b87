// Whatever operation of the disk fails, in whatever writing command, the book holds: what was
// called saved is there, nothing is there by halves, and the answers are those of a book without
// faults. The way is that of SQLite's own tests (sqlite.org/testing.html, 3.2 "I/O Error Testing"
// and 3.3 "Crash Testing"): the nth operation fails, for n = 1, 2, 3 … until the command succeeds
// untouched.
#include <sqlite3.h>

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <iostream>
#include <random>

#include "faults/deeds.h"
#include "faults/disk.h"

namespace {

using namespace faults;

constexpr Fault all_faults[] = {
    {"a file cannot be opened", Operation::open, SQLITE_CANTOPEN},
    {"a file cannot be opened for want of memory", Operation::open, SQLITE_NOMEM},
    {"a read fails", Operation::read, SQLITE_IOERR_READ},
    {"a read has no memory", Operation::read, SQLITE_IOERR_NOMEM},
    {"a write fails half way", Operation::write, SQLITE_IOERR_WRITE, Extent::half},
    {"the disk is full", Operation::write, SQLITE_FULL, Extent::half},
    {"a file cannot be cut", Operation::truncate, SQLITE_IOERR_TRUNCATE},
    {"a sync fails", Operation::sync, SQLITE_IOERR_FSYNC},
    {"a file cannot be removed", Operation::remove, SQLITE_IOERR_DELETE},
    {"a folder cannot be synced", Operation::remove, SQLITE_IOERR_DIR_FSYNC, Extent::whole},
    {"a lock fails", Operation::lock, SQLITE_IOERR_LOCK},
    {"others hold the lock", Operation::lock, SQLITE_BUSY},
};

constexpr std::size_t faults_in_short = 140;
constexpr std::size_t losses_in_short = 100;

struct Failing {
  const Prepared* one;
  const Fault* fault;
  std::int64_t nth;
  bool for_ever;
};

struct Losing {
  const Prepared* one;
  Loss loss;
  std::int64_t nth;
  bool again;  // the power fails once more in the recovery
};

struct Bench {
  Disk disk;
  Clerk clerk;
  std::vector<Prepared> all = prepared(clerk);

  // Every operation of every deed that can fail, in every way.
  std::vector<Failing> failings();
  std::vector<Losing> losings();
  Told attempt(const Prepared& one) { return clerk.type(one.deed.words, one.deed.input); }
  // What is there now must be the book before the deed or after it; gives whether it is after.
  bool is_done(const Prepared& one, const std::string& what);
  // And as the deed's answer said.
  void judge(const Prepared& one, const Told& told, const std::string& what);
  void go_on(const Prepared& one, const std::string& what);
  // The mark of a writer that had one is not synced, so it may be the old one (store/mark.h).
  void lose_mark(const Prepared& one);
};

std::vector<Failing> Bench::failings() {
  std::vector<Failing> list;
  for (const Prepared& one : all) {
    clerk.put_back(one.before);
    disk.mend();
    attempt(one);
    for (const Fault& fault : all_faults) {
      for (std::int64_t nth = 1; nth <= disk.count(fault.operation); ++nth) {
        list.push_back({&one, &fault, nth, false});
        list.push_back({&one, &fault, nth, true});
      }
    }
  }
  return list;
}

// Every way in which the power can fail at one change.
void add_losings(const Prepared& one, std::int64_t nth, std::vector<Losing>& list) {
  for (const Loss loss : {Loss::all, Loss::none, Loss::some, Loss::torn}) {
    list.push_back({&one, loss, nth, false});
    list.push_back({&one, loss, nth, true});
  }
}

std::vector<Losing> Bench::losings() {
  std::vector<Losing> list;
  for (const Prepared& one : all) {
    clerk.put_back(one.before);
    disk.mend();
    attempt(one);
    for (std::int64_t nth = 1; nth <= disk.changes(); ++nth) add_losings(one, nth, list);
  }
  return list;
}

bool Bench::is_done(const Prepared& one, const std::string& what) {
  const std::string now = answers(clerk, one.deed);
  const bool is_after = now == one.answers_after;
  BOOST_TEST_REQUIRE((is_after || now == one.answers_before),
                     what << ": neither before nor after: " << now);
  if (!is_after) go_on(one, what);
  return is_after;
}

void Bench::judge(const Prepared& one, const Told& told, const std::string& what) {
  const bool is_after = is_done(one, what);
  if (told.code == 0) {
    BOOST_TEST(is_after, what << ": called saved and lost");
    BOOST_TEST(says_done(one.deed, told), what);
  } else {
    BOOST_TEST(!says_done(one.deed, told), what);
    BOOST_TEST(told.err.ends_with("\n"), what);
    const bool says_nothing = told.err.find("nothing was saved") != std::string::npos;
    const bool is_same = one.answers_before == one.answers_after;
    BOOST_TEST((is_same || !is_after || !says_nothing), what << ": saved, but said: " << told.err);
  }
}

// Nobody repairs anything: the same command again does it, under the same writer.
void Bench::go_on(const Prepared& one, const std::string& what) {
  const Told again = attempt(one);
  BOOST_TEST_REQUIRE(again.code == 0, what << ", then again: " << again.err);
  BOOST_TEST((answers(clerk, one.deed) == one.answers_after), what << ", then again");
}

void Bench::lose_mark(const Prepared& one) {
  if (one.deed.start != Start::book) return;
  Clerk::Files files = clerk.files();
  for (const auto& [name, content] : one.before) {
    if (name.starts_with("state")) files[name] = content;
  }
  clerk.put_back(files);
}

// All of them, or some drawn by chance.
template <class Case>
std::vector<Case> drawn(std::vector<Case> list, std::size_t in_short, std::mt19937_64& random) {
  const std::size_t all = list.size();
  std::shuffle(list.begin(), list.end(), random);
  if (!is_long() && all > in_short) list.resize(in_short);
  std::cout << "faults: " << list.size() << " of " << all << std::endl;
  return list;
}

int right_code(const Fault& fault) { return fault.result == SQLITE_BUSY ? 75 : 74; }

}  // namespace

BOOST_FIXTURE_TEST_SUITE(faults_of_the_disk, Bench)

BOOST_AUTO_TEST_CASE(an_operation_that_fails_leaves_the_book_as_it_was_or_as_it_should_be) {
  std::mt19937_64 random(seed_of("faults"));
  int refused = 0;
  for (const Failing& each : drawn(failings(), faults_in_short, random)) {
    const std::string what = each.one->deed.name + ", " + each.fault->name + " at " +
                             std::to_string(each.nth) + (each.for_ever ? " and for ever" : "");
    clerk.put_back(each.one->before);
    disk.fail(*each.fault, each.nth, each.for_ever);
    const Told told = attempt(*each.one);
    BOOST_TEST(disk.has_struck(), what);
    disk.mend();
    BOOST_TEST((told.code == 0 || told.code == right_code(*each.fault)),
               what << ": " << told.code << ' ' << told.err);
    refused += told.code == 0 ? 0 : 1;
    judge(*each.one, told, what);
  }
  std::cout << "faults: " << refused << " commands refused" << std::endl;
  BOOST_TEST(refused > 0);
}

BOOST_AUTO_TEST_CASE(a_loss_of_power_leaves_the_book_as_it_was_or_as_it_should_be) {
  std::mt19937_64 random(seed_of("power"));
  for (const Losing& each : drawn(losings(), losses_in_short, random)) {
    const std::string what = each.one->deed.name + ", power lost at " + std::to_string(each.nth) +
                             ", way " + std::to_string(static_cast<int>(each.loss)) +
                             (each.again ? ", and again" : "");
    clerk.put_back(each.one->before);
    disk.lose_power(each.nth);
    const bool is_saved = attempt(*each.one).code == 0;
    BOOST_TEST(disk.has_struck(), what);
    disk.restart(each.loss, random);
    if (random() % 2 == 0) lose_mark(*each.one);
    if (each.again) {
      disk.lose_power(1 + static_cast<std::int64_t>(random() % 6));
      answers(clerk);
      disk.restart(each.loss, random);
    }
    // Whoever sat there saw no answer, unless it said saved before the power failed.
    const bool is_after = is_done(*each.one, what);
    BOOST_TEST((is_after || !is_saved), what << ": called saved and lost");
  }
}

BOOST_AUTO_TEST_SUITE_END()
