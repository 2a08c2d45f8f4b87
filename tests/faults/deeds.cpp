#include "faults/deeds.h"

#include <boost/test/unit_test.hpp>
#include <cstdlib>
#include <iostream>
#include <random>

namespace faults {

namespace {

constexpr const char* signer =
    "2026-03-01 person \"B. Quill\" holds certificate \"A-1234\", kind \"mechanic\".\n";

std::string copy_in(const Clerk& clerk) { return clerk.folder() + "/the.copy"; }

std::vector<Deed> deeds(const Clerk& clerk) {
  const std::string writer = writer_of(clerk);
  const std::vector<std::string> flight = {"say", "ZZ-KIT flew 0.3 h, 1 start, 1 landing"};
  return {
      {"new", new_book(), "", "Made ", Start::nothing},
      {"say", flight, "", "Saved ", Start::book},
      {"say in a copy", flight, "", "Saved ", Start::copy},
      {"read", {"read", "-"}, work_sheet(12), "Saved ", Start::book},
      {"correct",
       {"correct", writer + "-3",
        "2026-03-01 aircraft ZZ-KIT brings forward airframe 4321.6 h, 5609 landings, collective "
        "meter 1234.5",
        "--because", "one more landing"},
       "",
       "Saved ",
       Start::book},
      {"strike",
       {"strike", writer + "-8", "--because", "entered twice"},
       "",
       "Saved ",
       Start::book},
      {"sign",
       {"sign", writer + "-12", "--by", "B. Quill", "--on-paper", "--page", "12"},
       "",
       "Saved ",
       Start::book},
      {"rebuild", {"rebuild"}, "", "Rebuilt ", Start::book},
      {"backup", {"backup", copy_in(clerk)}, "", "Copied and proved: ", Start::book, true},
      {"restore", {"restore", copy_in(clerk)}, "", "Restored to ", Start::kept, true},
  };
}

void require(const Told& told, const std::string& what) {
  BOOST_TEST_REQUIRE(told.code == 0, what << ": " << told.err);
}

}  // namespace

bool says_done(const Deed& deed, const Told& told) {
  return told.out.find(deed.success) != std::string::npos;
}

std::string answers(const Clerk& clerk, const Deed& deed) {
  const std::string book = answers(clerk);
  if (!deed.makes_copy) return book;
  const Told copy = clerk.type({"check", "--json", "--book", copy_in(clerk)});
  return book + std::to_string(copy.code) + '\n' + copy.out + copy.err;
}

std::vector<Prepared> prepared(const Clerk& clerk) {
  clerk.put_back({});
  require(clerk.type(new_book()), "new");
  require(clerk.type({"read", "-"}, set_up_sheet() + signer), "read");
  const Clerk::Files book = clerk.files();
  std::vector<Prepared> all;
  for (Deed& deed : deeds(clerk)) {
    Prepared one{std::move(deed), {}, {}, {}};
    if (one.deed.start != Start::nothing) one.before = book;
    if (one.deed.start == Start::kept) {
      one.before["the.copy"] = one.before.at("the.book");
      one.before.erase("the.book");
    }
    if (one.deed.start == Start::copy) {
      std::erase_if(one.before, [](const auto& file) { return file.first.starts_with("state"); });
    }
    clerk.put_back(one.before);
    one.answers_before = answers(clerk, one.deed);
    const Told done = clerk.type(one.deed.words, one.deed.input);
    require(done, one.deed.name);
    BOOST_TEST_REQUIRE(says_done(one.deed, done), done.out);
    one.answers_after = answers(clerk, one.deed);
    all.push_back(std::move(one));
  }
  return all;
}

unsigned long told(const char* variable, unsigned long otherwise) {
  const char* const text = std::getenv(variable);
  return text == nullptr ? otherwise : std::strtoul(text, nullptr, 10);
}

bool is_long() { return told("TIMEWORN_LONG", 0) == 1; }

unsigned long seed_of(const char* test) {
  const unsigned long seed = told("TIMEWORN_SEED", std::random_device()());
  std::cout << test << ": seed " << seed << std::endl;
  return seed;
}

}  // namespace faults
