// What people type, and the canonical sentence that it means.
#include <boost/test/unit_test.hpp>
#include <string>
#include <vector>

#include "sentence/sentence.h"

using namespace sentence;

namespace {

struct Pair {
  std::string typed;
  std::string canonical;
};

const Known& known() {
  static const Known book = [] {
    Known known;
    known.things = {logbook::Aircraft{{"ZZ-KIT"}}, logbook::Engine{{"TS-40"}, {"E-1001"}},
                    logbook::Part{{"PN-4411"}, {"B-88"}}, logbook::Part{{"PN-9"}, {"E-2"}},
                    logbook::Engine{{"TS-40"}, {"E-2"}}};
    known.tasks = {{logbook::TaskClass::inspection, {"annual inspection"}},
                   {logbook::TaskClass::directive, {"D-26-04"}},
                   {logbook::TaskClass::task, {"300-hour"}}};
    known.models = {{"TS-40"}};
    known.part_numbers = {{"PN-4411"}};
    known.people = {{"B. Quill"}, {"A. Fenwick"}};
    return known;
  }();
  return book;
}

Reading at_the_terminal() { return {quantity::make_day({2026, 3, 5}), &known()}; }

void check(const std::vector<Pair>& pairs) {
  for (const Pair& pair : pairs) {
    const Read read = sentence::read(pair.typed, at_the_terminal());
    BOOST_TEST_REQUIRE(read.said.has_value(), pair.typed);
    BOOST_TEST(say(*read.said) == pair.canonical);
  }
}

}  // namespace

BOOST_AUTO_TEST_SUITE(typed_sentences)

BOOST_AUTO_TEST_CASE(flights_are_read_as_people_type_them) {
  const std::string flew = "2026-03-05 aircraft ZZ-KIT flew ";
  check({{"zz-kit flew 1:42, 1 start, 3 ldgs", flew + "1.7 h, 1 start, 3 landings."},
         {"ZZ-KIT flew 3 landings, 1 h 42 min", flew + "1.7 h, 3 landings."},
         {"ZZ-KIT flew 1h42,1 start,3 lndgs.", flew + "1.7 h, 1 start, 3 landings."},
         {"aircraft zz-kit flew 1,7 hrs", flew + "1.7 h."},
         {"today ZZ-KIT flew 1.7h, pilot a. fenwick", flew + "1.7 h, pilot \"A. Fenwick\"."},
         {"yesterday ZZ-KIT flew 47 min", "2026-03-04 aircraft ZZ-KIT flew 0:47 h."},
         {"4 Mar 2026 ZZ-KIT flew 1.7 h", "2026-03-04 aircraft ZZ-KIT flew 1.7 h."},
         {"ZZ-KIT flew 1.7 h, \"Collective\" meter 1234,5 to 1236,2",
          flew + "1.7 h, collective meter 1234.5 to 1236.2."},
         {"ZZ-KIT flew 1.7 h, pilot \xE2\x80\x9C"
          "C. \xE2\x80\x9D  ",
          flew + "1.7 h, pilot \"C.\"."},
         {"ZZ-KIT flew 1 hour, for hire, 2 starts on \"ENGINE  1\"",
          flew + "1.0 h, 2 starts on engine 1, for hire."}});
}

BOOST_AUTO_TEST_CASE(a_bare_name_is_the_one_thing_that_has_it) {
  check({{"E-1001 washed", "2026-03-05 engine TS-40 E-1001 washed."},
         {"engine e-1001 washed", "2026-03-05 engine TS-40 E-1001 washed."},
         {"engine E-2 washed", "2026-03-05 engine TS-40 E-2 washed."},
         {"B-88 fitted to zz-kit \"blade 1\"",
          "2026-03-05 part PN-4411 B-88 fitted to aircraft ZZ-KIT \"blade 1\"."},
         {"annual inspection done on ZZ-KIT, by b. quill",
          "2026-03-05 inspection \"annual inspection\" done on aircraft ZZ-KIT, by \"B. Quill\"."},
         {"d-26-04 on TS-40 ends", "2026-03-05 directive D-26-04 on model TS-40 ends."},
         {"task 300-hour on ZZ-KIT every 300 h",
          "2026-03-05 task \"300-hour\" on aircraft ZZ-KIT every 300.0 h."},
         {"PN-4411 retires at 2200 h since new",
          "2026-03-05 part number PN-4411 retires at 2200.0 h since new."}});
}

BOOST_AUTO_TEST_CASE(a_bare_name_that_two_things_have_is_refused_with_both) {
  const Read read = sentence::read("E-2 overhauled", at_the_terminal());
  BOOST_TEST_REQUIRE(read.wrong.size() == 1U);
  BOOST_TEST((read.wrong[0].fault == Fault::two_things));
  BOOST_TEST(read.wrong[0].read == "E-2");
  BOOST_TEST(read.wrong[0].first == "part PN-9 E-2");
  BOOST_TEST(read.wrong[0].second == "engine TS-40 E-2");
}

BOOST_AUTO_TEST_CASE(without_a_book_only_names_with_their_class_are_taken) {
  const Reading reading{quantity::make_day({2026, 3, 5}), nullptr};
  BOOST_TEST(!sentence::read("ZZ-KIT flew 1.7 h", reading).said.has_value());
  BOOST_TEST(sentence::read("aircraft ZZ-KIT flew 1.7 h", reading).said.has_value());
}

BOOST_AUTO_TEST_CASE(names_are_written_bare_only_where_they_may_stand_bare) {
  check(
      {{"aircraft \"zz-kit\" unaccounted 1 h", "2026-03-05 aircraft ZZ-KIT unaccounted 1.0 h."},
       {"engine ts-40 k7qxm-12 washed", "2026-03-05 engine TS-40 \"K7QXM-12\" washed."},
       {"part PN-1 \"1234\" overhauled", "2026-03-05 part PN-1 \"1234\" overhauled."},
       {"aircraft ZZ-KIT is model \"Larkwing  5\", serial \"5012\"",
        "2026-03-05 aircraft ZZ-KIT is model \"Larkwing 5\", serial 5012."},
       {"task \"D-26-05\" on aircraft ZZ-KIT ends",
        "2026-03-05 task D-26-05 on aircraft ZZ-KIT ends."},
       {"person \"say \\\"hi\\\" \\\\\" ends", "2026-03-05 person \"say \\\"hi\\\" \\\\\" ends."}});
  const auto is_refused = [](const std::string& text) {
    const Read read = sentence::read(text, at_the_terminal());
    return !read.wrong.empty() && read.wrong[0].fault == Fault::bad_name;
  };
  BOOST_TEST(is_refused("aircraft \"09:10\" flew 1.7 h"));
  BOOST_TEST(is_refused("aircraft \"2026-03-04\" flew 1.7 h"));
  BOOST_TEST(is_refused("aircraft \"1,234\" flew 1.7 h"));
  BOOST_TEST(is_refused("person \"\" ends"));
}

BOOST_AUTO_TEST_CASE(the_clauses_of_a_correction_take_the_place_of_the_old_ones) {
  const Read old = sentence::read(
      "2026-03-04 aircraft ZZ-KIT flew 1.3 h, 1 start, 3 landings, for hire, remark \"x\"", {});
  BOOST_TEST_REQUIRE(old.said.has_value());
  const Read read = amend("1.8 h, 4 ldgs, remark \"y\", pilot \"A. Fenwick\"", *old.said, {});
  BOOST_TEST_REQUIRE(read.said.has_value());
  BOOST_TEST(say(*read.said) ==
             "2026-03-04 aircraft ZZ-KIT flew 1.8 h, 1 start, 4 landings, for hire, "
             "pilot \"A. Fenwick\", remark \"y\".");
  const Read wrong = amend("1,800 h, 4 landngs", *old.said, {});
  BOOST_TEST_REQUIRE(wrong.wrong.size() == 2U);
  BOOST_TEST((wrong.wrong[0].fault == Fault::two_readings));
  BOOST_TEST(wrong.wrong[1].nearest == "landings");
  BOOST_TEST(amend("", *old.said, {}).wrong.size() == 1U);
}

BOOST_AUTO_TEST_CASE(a_sentence_is_about_all_that_it_touches) {
  const auto about_of = [](const std::string& text) {
    std::string result;
    for (const logbook::About& about : about(*sentence::read(text, at_the_terminal()).said)) {
      result += about.class_;
      for (const std::string& name : about.names) result += ':' + name;
      result += ' ';
    }
    return result;
  };
  BOOST_TEST(about_of("part PN-4411 B-91 fitted to engine TS-40 E-1001 \"disc 1\"") ==
             "engine:TS-40:E-1001 part:PN-4411:B-91 ");
  BOOST_TEST(about_of("part number PN-1 retires at 5 h since new, on model M-1") ==
             "model:M-1 part number:PN-1 ");
  BOOST_TEST(about_of("directive D-26-04 on model TS-40 every 5 h, by \"B. Quill\"") ==
             "directive:D-26-04 model:TS-40 person:B. Quill ");
  BOOST_TEST(
      about_of("entry K7QXM-1 corrected because \"x\": 2026-03-04 aircraft ZZ-KIT flew 1 h") ==
      "aircraft:ZZ-KIT entry:K7QXM-1 ");
}

BOOST_AUTO_TEST_CASE(the_entries_that_a_sentence_names_are_told) {
  const Read read = sentence::read(
      "entry K7QXM-9 corrected because \"x\": 2026-03-04 part number PN-1 on condition, "
      "instead of entry K7QXM-4",
      at_the_terminal());
  BOOST_TEST_REQUIRE(read.said.has_value());
  const std::vector<logbook::EntryName> names = named_entries(*read.said);
  BOOST_TEST_REQUIRE(names.size() == 2U);
  BOOST_TEST((names[0] == logbook::EntryName{"K7QXM", 9}));
  BOOST_TEST((names[1] == logbook::EntryName{"K7QXM", 4}));
}

BOOST_AUTO_TEST_SUITE_END()
