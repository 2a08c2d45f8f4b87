// The canonical examples: those of the page about the record language, and those of the tables.
#include <boost/test/unit_test.hpp>
#include <set>

#include "sentence/kinds/kinds.h"
#include "sentence/sentence.h"

using namespace sentence;

namespace {

const std::vector<std::string> examples_of_the_page = {
    R"(2026-01-01 record "Marrow Point" begins, language 1, )"
    "deferrals by local day, tenths half up.",
    R"(2026-01-01 base "North" joins, days in "America/Denver".)",
    R"(2026-01-01 person "B. Quill" holds certificate "A-1234", kind "mechanic".)",
    R"(2026-01-01 person "B. Quill" holds certificate "A-1234", kind "mechanic", )"
    "key d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a.",
    R"(2026-01-01 person "B. Quill" key )"
    "d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a ends.",
    R"(2026-03-10 entry K7QXM-131 signed, through K7QXM-134, by "B. Quill", )"
    R"(certificate "A-1234", kind "mechanic", statement "as the rule asks".)",
    R"(2026-03-10 entry K7QXM-131 signed on paper, page "12", by "B. Quill".)",
    R"(2026-01-01 person "B. Quill" ends.)",
    R"(2026-01-01 aircraft ZZ-KIT is model "Larkwing 5", serial 5012, made 2019-03-14, )"
    R"(first certificate 2019-04-02.)",
    "2026-01-01 aircraft ZZ-KIT has required place engine 1.",
    R"(2026-01-01 aircraft ZZ-KIT has optional place "cargo hook".)",
    "2026-01-01 engine TS-40 E-1001 is made 2018-11-02.",
    R"(2026-01-01 part PN-4411 B-88 is "main rotor blade", made 2018-05-01, )"
    "released 2018-06-10.",
    R"(2026-01-01 part PN-4411 B-88 is "main rotor blade", cured 2Q2018.)",
    "2026-01-01 aircraft ZZ-KIT brings forward airframe 4321.6 h, 5608 landings, "
    R"(collective meter 1234.5, basis "signed log 3 page 41".)",
    "2026-01-01 engine TS-40 E-1001 brings forward 1820.4 h, 2101 starts, "
    "2210.35 gas-generator cycles, 320.4 h since overhaul.",
    "2026-01-01 engine TS-40 E-1001 brings forward hours unknown.",
    "2026-01-01 engine TS-40 E-1001 brings forward at least 2310 starts.",
    R"(2026-01-01 engine TS-40 E-1001 brings forward put together from "two logs".)",
    "2026-01-01 aircraft ZZ-MOB counts airframe hours from collective meter, factor 1.12.",
    "2026-02-01 aircraft ZZ-MOB changed collective meter, out 6120.8, in 12.0.",
    "2026-02-01 aircraft ZZ-MOB lost collective meter at 1500.2.",
    "2026-01-01 part number PN-4411 retires at 2200.0 h since new or 10 years since manufacture, "
    R"(class life, source "limitations rev 4".)",
    "2026-01-01 part number PN-4411 overhaul at 3500.0 h since overhaul.",
    R"(2026-01-01 part number PN-4411 retires at 2200.0 h since new, on model "Larkwing 5".)",
    R"(2026-01-01 part number DX-1 retires when full cycles / 5000 + abbreviated cycles / 20000 )"
    R"(reach 1, class life, source "directive 7".)",
    R"(2026-01-01 part number PN-4411 on condition, source "manual 5-10".)",
    "2026-01-01 part number PN-4411 shares lives by fractions.",
    "2026-01-01 part number PN-4411 shares lives, shorter limit stays.",
    R"(2026-01-01 task "100-hour inspection" on aircraft ZZ-KIT every 100.0 h since done, )"
    R"(excess counts, over 10.0 h to reach the shop, source "manual 5-20".)",
    R"(2026-01-01 task "annual inspection" on aircraft ZZ-KIT every 12 calendar months.)",
    R"(2026-01-01 task "progressive inspection" on aircraft ZZ-KIT ends, )"
    R"(because "annual instead".)",
    "2026-01-01 directive D-26-04 on model TS-40 first at the latest of 150.0 h after 2014-10-08 "
    R"(and 500.0 h since new, every 500.0 h since done, revision "2".)",
    R"(2026-03-01 aircraft ZZ-KIT reviewed "directives and limitations", revision "2026-02", )"
    R"(by "M. Tansley".)",
    "2026-03-01 aircraft ZZ-KIT plans 25.0 h a month, from 2026-05-01, to 2026-09-30.",
    "2026-03-01 aircraft ZZ-KIT plans 110.0 h in 299 days.",
    "2026-03-04 aircraft ZZ-KIT flew 1.7 h, 1 start, 3 landings, "
    "collective meter 1234.5 to 1236.2, took off 09:11-07:00, landed 10:53-07:00, "
    R"(pilot "A. Fenwick".)",
    "2026-03-04 aircraft ZZ-KIT engine 1 E-1001 ran 0.2 h, 1 start.",
    "2026-03-04 aircraft ZZ-KIT engine 1 E-1001 tried 2 starts.",
    "2026-03-20 aircraft ZZ-KIT unaccounted 2.3 h, collective meter 1236.2 to 1238.5.",
    "2026-03-04 aircraft ZZ-KIT engine 1 E-1001 started, battery 25.9 V, lowest 19.8 V, "
    "outside air 12 C, residual 60 C, light-off in 4 s, peak 742 C, above 810 C for 0 s, "
    "idle in 24 s, generator 28.1 V, starter out at 51 %, power from battery.",
    "2026-03-04 aircraft ZZ-KIT engine 1 E-1001 cruise 3500 ft, outside air 12 C, torque 78 %, "
    "gas generator 96.1 %, temperature 702 C, fuel 210 lb/h, bleed off, steady 5 min.",
    "2026-01-01 model TS-40 idle limit 560 C.",
    "2026-01-01 model TS-40 cruise limit 720 C.",
    "2026-01-01 model TS-40 trend, floor 10 C, serial correlation 0.2.",
    "2026-03-11 engine TS-40 E-1001 washed.",
    "2026-03-11 engine TS-40 E-1001 hot section done.",
    "2026-03-11 engine TS-40 E-1001 temperature probe changed.",
    "2026-03-11 engine TS-40 E-1001 fuel control adjusted.",
    R"(2026-03-10 task "100-hour inspection" done on aircraft ZZ-KIT, airframe 4323.3 h, )"
    R"(by "B. Quill", method "paragraph f", returned to service, )"
    R"(second inspection by "M. Tansley".)",
    R"(2026-03-10 part PN-4411 B-88 removed from aircraft ZZ-KIT "main rotor blade 1", )"
    R"(airframe 4323.3 h, because "loan".)",
    R"(2026-03-10 part PN-4411 B-91 fitted to aircraft ZZ-KIT "main rotor blade 1", )"
    R"(airframe 4323.3 h, with 2159.0 h since new, paper "form 1".)",
    R"(2026-03-10 engine TS-40 E-1001 overhauled, 1822.1 h since new, paper "form 1".)",
    R"(2026-03-12 entry K7QXM-123 corrected because "typed 1.3, was 1.8": )"
    "2026-03-04 aircraft ZZ-KIT flew 1.8 h, 1 start, 3 landings.",
    R"(2026-03-12 entry K7QXM-124 struck because "entered twice".)",
    R"(2026-03-04 aircraft ZZ-KIT flew 0.9 h, by "B. Quill", scan )"
    R"(00112233445566778899aabbccddeeff00112233445566778899aabbccddeeff, from "flights.csv" )"
    R"(row 12, remark "x", although "2.3 h are missing before this flight" because )"
    R"("ferry by the seller".)",
    "2026-03-01 part number PN-4411 retires at 2400.0 h since new, instead of entry K7QXM-88.",
};

void comes_back(const std::string& text) {
  const Read read = sentence::read(text, {});
  BOOST_TEST_REQUIRE(read.said.has_value(), text);
  BOOST_TEST(say(*read.said) == text);
}

}  // namespace

BOOST_AUTO_TEST_SUITE(canonical_examples)

BOOST_AUTO_TEST_CASE(the_examples_of_the_page_come_back_byte_for_byte) {
  for (const std::string& text : examples_of_the_page) comes_back(text);
}

BOOST_AUTO_TEST_CASE(the_examples_of_each_kind_come_back_and_are_of_that_kind) {
  for (const KindText& kind : kinds()) {
    BOOST_TEST(!kind.purpose.empty(), kind.name);
    BOOST_TEST(!kind.examples.empty(), kind.name);
    for (const std::string& example : kind.examples) {
      comes_back(example);
      BOOST_TEST(kind_name(sentence::read(example, {}).said->fact) == kind.name);
    }
  }
}

BOOST_AUTO_TEST_CASE(each_kind_stands_at_its_place_in_the_fact) {
  for (std::size_t i = 0; i < all_kinds().size(); ++i) BOOST_TEST(all_kinds()[i]->index == i);
}

BOOST_AUTO_TEST_CASE(no_rule_of_the_printed_grammar_has_the_name_of_another) {
  std::set<std::string> names;
  const std::string grammar = ebnf();
  for (std::size_t at = 0; at < grammar.size();) {
    const std::size_t end = grammar.find('\n', at);
    const std::string line = grammar.substr(at, end - at);
    const std::string name = line.substr(0, line.find(' '));
    BOOST_TEST(names.insert(name).second, name);
    at = end == std::string::npos ? grammar.size() : end + 1;
  }
  BOOST_TEST(names.contains("flew"));
  BOOST_TEST(names.contains("hours"));
}

BOOST_AUTO_TEST_CASE(no_kind_names_two_clauses_alike) {
  for (const Kind* kind : all_kinds()) {
    std::set<std::string_view> names;
    for (const Clause& clause : kind->clauses) BOOST_TEST(names.insert(clause.name).second);
  }
}

BOOST_AUTO_TEST_SUITE_END()
