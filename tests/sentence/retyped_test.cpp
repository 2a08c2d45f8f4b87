// The retyped law: canonical text typed as people type is the same fact or a refusal, and what is
// known of the book never changes what a canonical sentence means.
#include "sentence/retyped.h"

#include <boost/test/unit_test.hpp>
#include <map>

#include "sentence/kinds/kinds.h"
#include "sentence/random_facts.h"
#include "sentence/sentence.h"
#include "sentence/walk.h"

using namespace sentence;
using random_facts::Dice;

namespace {

constexpr std::int64_t ordinary_facts = 400;

// The names of a few random facts, as a book would know them.
Known known_by(Dice& dice) {
  Known known;
  for (int i = 0; i < 6; ++i) {
    const std::string name = random_facts::hostile_text(dice);
    known.things.emplace_back(logbook::Aircraft{{name}});
    known.things.emplace_back(logbook::Engine{{"TS-40"}, {random_facts::hostile_text(dice)}});
    known.things.emplace_back(logbook::Part{{"PN-1"}, {random_facts::hostile_text(dice)}});
    known.tasks.push_back({logbook::TaskClass::inspection, {random_facts::hostile_text(dice)}});
    known.people.push_back({random_facts::hostile_text(dice)});
    known.models.push_back({random_facts::hostile_text(dice)});
  }
  return known;
}

template <class Check>
void for_random_facts(Check check) {
  BOOST_TEST_MESSAGE("seed " << random_facts::seed());
  Dice dice(random_facts::seed() + 1);
  const std::int64_t facts = random_facts::facts(ordinary_facts);
  for (std::int64_t i = 0; i < facts; ++i) {
    const auto kinds = all_kinds();
    const Kind& kind = *kinds[static_cast<std::size_t>(i) % kinds.size()];
    const logbook::Said said = random_facts::said_of(dice, kind);
    const std::string text = say(said);
    if (text.size() <= 2000) check(dice, said, text);
  }
}

}  // namespace

BOOST_AUTO_TEST_SUITE(retyped_law)

BOOST_AUTO_TEST_CASE(text_typed_as_people_type_is_the_same_fact_or_refused) {
  std::map<std::string, std::int64_t> taken;
  for_random_facts([&](Dice&, const logbook::Said& said, const std::string& text) {
    for (const retyped::Way& way : retyped::ways()) {
      const std::string typed = way.type(text);
      const Read read = sentence::read(typed, {});
      BOOST_TEST(read.said.has_value() == read.wrong.empty());
      if (!read.said) continue;
      ++taken[way.name];
      BOOST_TEST((*read.said == said), way.name << ": " << typed << " read as " << say(*read.said));
    }
  });
  for (const retyped::Way& way : retyped::ways()) BOOST_TEST(taken[way.name] > 0, way.name);
}

BOOST_AUTO_TEST_CASE(what_is_known_changes_no_canonical_sentence) {
  for_random_facts([&](Dice& dice, const logbook::Said& said, const std::string& text) {
    const Known known = known_by(dice);
    const Reading reading{said.day, &known};
    const Read read = sentence::read(text, reading);
    BOOST_TEST_REQUIRE(read.said.has_value(), text);
    BOOST_TEST((*read.said == said), text << " read as " << say(*read.said));
  });
}

BOOST_AUTO_TEST_CASE(what_is_known_makes_no_retyped_sentence_another_fact) {
  for_random_facts([&](Dice& dice, const logbook::Said& said, const std::string& text) {
    const Known known = known_by(dice);
    const Reading reading{said.day, &known};
    for (const retyped::Way& way : retyped::ways()) {
      const std::string typed = way.type(text);
      const Read read = sentence::read(typed, reading);
      if (!read.said) continue;
      BOOST_TEST((*read.said == said), way.name << ": " << typed << " read as " << say(*read.said));
    }
  });
}

BOOST_AUTO_TEST_SUITE_END()
