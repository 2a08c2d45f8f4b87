// Whatever call of the program to the system fails, in whatever writing command, the book holds, as
// under a failing disk (faults_test.cpp): the nth call fails, for n = 1, 2, 3 … (sqlite.org/
// testing.html, 3.2). The errors are those that the Linux manual pages of the calls name. Where the
// mark of the writer cannot be read or kept, the book goes on under a new writer (store/mark.h),
// and answers the same.
#include "faults/calls.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cerrno>
#include <iostream>
#include <random>
#include <regex>

#include "command/command_line.h"
#include "faults/deeds.h"

namespace {

using namespace faults;

constexpr CallFault all_faults[] = {
    {"a file may not be opened", Call::open, EACCES},
    {"too many files are open", Call::open, EMFILE},
    {"a new file has no room", Call::mkostemp, ENOSPC},
    {"a folder may not be made", Call::mkdir, EACCES},
    {"a folder has no room", Call::mkdir, ENOSPC},
    {"a folder keeps its rights", Call::chmod, EPERM},
    {"a file keeps its rights", Call::fchmod, EPERM},
    {"a read fails", Call::read, EIO},
    {"the disk is full", Call::write, ENOSPC},
    {"a write is cut short by a signal", Call::write, EINTR},
    {"a write does half", Call::write, 0},
    {"the disk is full at a place", Call::pwrite, ENOSPC},
    {"a write at a place is cut short by a signal", Call::pwrite, EINTR},
    {"a write at a place does half", Call::pwrite, 0},
    {"a sync fails", Call::fsync, EIO},
    {"a sync of the data fails", Call::fdatasync, EIO},
    {"a file closes badly", Call::close, EIO},
    {"another holds the lock", Call::flock, EWOULDBLOCK},
    {"there are no locks", Call::flock, ENOLCK},
    {"a file may not be looked at", Call::stat, EACCES},
    {"a name may not be looked at", Call::lstat, EACCES},
    {"the file system does not tell what it is", Call::statfs, ENOSYS},
    {"a file may not be read", Call::access, EACCES},
    {"a path cannot be followed", Call::realpath, EACCES},
    {"a link cannot be read", Call::readlink, EIO},
    {"there are no second names", Call::link, EPERM},
    {"a file cannot be renamed", Call::rename, EIO},
    {"a rename cannot spare what stands there", Call::renameat2, EINVAL},
    {"a file cannot be put in its place", Call::renameat2, EACCES},
    {"a file cannot be removed", Call::unlink, EACCES},
};

constexpr std::size_t calls_in_short = 120;

// What the book answers about due points and lives, whoever wrote the entries.
std::string answers_of_any_writer(const Clerk& clerk) {
  static const std::regex entries("[0-9A-Z]{5,26}-[0-9]+( [0-9A-Z]{5,26}-[0-9]+)*");
  std::string all;
  for (const char* const question : {"due", "lives"}) {
    const Told told = clerk.type({question, "--json"});
    all += std::to_string(told.code) + '\n' + told.out + told.err;
  }
  return std::regex_replace(all, entries, "entries");
}

struct Act {
  const Prepared* one;
  std::string after_by_any_writer;
};

struct Failing {
  const Act* act;
  const CallFault* fault;
  long nth;
  bool for_ever;
};

std::string name_of(const Failing& each) {
  return each.act->one->deed.name + ", " + each.fault->name + " at " + std::to_string(each.nth) +
         (each.for_ever ? " and for ever" : "");
}

// Every call of every deed, failing in every way.
std::vector<Failing> failings(const Clerk& clerk, std::vector<Act>& acts) {
  std::vector<Failing> list;
  for (Act& act : acts) {
    clerk.put_back(act.one->before);
    mend_calls();
    clerk.type(act.one->deed.words, act.one->deed.input);
    const CallCounts counts = counted_calls();
    act.after_by_any_writer = answers_of_any_writer(clerk);
    for (const CallFault& fault : all_faults) {
      const long count = counts.at(static_cast<std::size_t>(fault.call));
      for (long nth = 1; nth <= count; ++nth) {
        list.push_back({&act, &fault, nth, false});
        if (fault.error != EINTR) list.push_back({&act, &fault, nth, true});  // signals pass
      }
    }
  }
  return list;
}

bool has_half_a_file(const Clerk& clerk) {
  const Clerk::Files files = clerk.files();
  return std::any_of(files.begin(), files.end(), [](const auto& file) {
    return file.first.find(".new-") != std::string::npos;
  });
}

enum class Book { before, after, after_by_another, neither };

Book book_now(const Clerk& clerk, const Act& act) {
  const std::string now = answers(clerk, act.one->deed);
  if (now == act.one->answers_after) return Book::after;
  if (now == act.one->answers_before) return Book::before;
  const bool holds = clerk.type({"check"}).code == 0;
  const bool is_same = answers_of_any_writer(clerk) == act.after_by_any_writer;
  return holds && is_same ? Book::after_by_another : Book::neither;
}

void judge(const Clerk& clerk, const Failing& each, const Told& told) {
  const std::string what = name_of(each) + ": " + std::to_string(told.code) + ' ' + told.err;
  const Deed& deed = each.act->one->deed;
  BOOST_TEST(told.code != command::our_fault, what);
  BOOST_TEST((told.code != 0 || says_done(deed, told)), what);
  BOOST_TEST((told.code == 0 || told.err.ends_with("\n")), what);
  BOOST_TEST((each.fault->call == Call::unlink || !has_half_a_file(clerk)), what);
  const Book book = book_now(clerk, *each.act);
  BOOST_TEST((book != Book::neither), what << ": neither before nor after");
  BOOST_TEST((book != Book::before || !says_done(deed, told)), what << ": called saved and lost");
  if (book != Book::before) return;
  // Nobody repairs anything: the same command again does it.
  const Told again = clerk.type(deed.words, deed.input);
  BOOST_TEST(again.code == 0, what << ", then again: " << again.err);
  BOOST_TEST((book_now(clerk, *each.act) != Book::before), what << ", then again");
}

}  // namespace

BOOST_AUTO_TEST_SUITE(calls_to_the_system)

BOOST_AUTO_TEST_CASE(a_call_that_fails_leaves_the_book_as_it_was_or_as_it_should_be) {
  std::mt19937_64 random(seed_of("calls"));
  const Clerk clerk;
  const std::vector<Prepared> all = prepared(clerk);
  std::vector<Act> acts;
  for (const Prepared& one : all) acts.push_back({&one, {}});
  std::vector<Failing> list = failings(clerk, acts);
  const std::size_t every = list.size();
  std::shuffle(list.begin(), list.end(), random);
  if (!is_long() && every > calls_in_short) list.resize(calls_in_short);
  std::cout << "calls: " << list.size() << " of " << every << std::endl;
  int refused = 0;
  for (const Failing& each : list) {
    const Prepared& one = *each.act->one;
    clerk.put_back(one.before);
    fail_call(*each.fault, each.nth, each.for_ever);
    const Told told = clerk.type(one.deed.words, one.deed.input);
    BOOST_TEST(has_call_failed(), name_of(each));
    mend_calls();
    refused += told.code == 0 ? 0 : 1;
    judge(clerk, each, told);
  }
  std::cout << "calls: " << refused << " commands refused" << std::endl;
  BOOST_TEST(refused > 0);
}

BOOST_AUTO_TEST_SUITE_END()
