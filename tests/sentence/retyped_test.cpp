// The retyped law: canonical text typed as people type is the same fact or a refusal, and what is
// known of the book never changes what a canonical sentence means.
#include "sentence/retyped.h"

#include <boost/test/unit_test.hpp>
#include <map>

#include "sentence/kinds/kinds.h"
#include "sentence/random_facts.h"
#include "sentence/sentence.h"
#include "sentence/sorts/things.h"
#include "sentence/walk.h"

using namespace sentence;
using random_facts::Dice;

namespace {

constexpr std::int64_t ordinary_facts = 400;

template <class Type>
const Type* as(const Sort& sort, const void* value) {
  return &sort == &sort_of<Type> ? static_cast<const Type*>(value) : nullptr;
}

// Adds the names in a sentence, as a book knows them once it holds it.
void learn(Known& known, const logbook::Said& said) {
  logbook::TaskClass class_ = logbook::TaskClass::task;
  walk(said, [&](const Sort& sort, const void* value) {
    if (const auto* name = as<logbook::Aircraft>(sort, value)) known.things.emplace_back(*name);
    if (const auto* name = as<logbook::Engine>(sort, value)) known.things.emplace_back(*name);
    if (const auto* name = as<logbook::Part>(sort, value)) known.things.emplace_back(*name);
    if (const auto* name = as<logbook::Model>(sort, value)) known.models.push_back(name->name);
    if (const auto* name = as<logbook::PartKind>(sort, value)) {
      known.part_numbers.push_back(name->number);
    }
    if (const auto* name = as<logbook::PersonName>(sort, value)) known.people.push_back(*name);
    if (const auto* word = as<logbook::TaskClass>(sort, value)) class_ = *word;
    if (const auto* name = as<logbook::TaskName>(sort, value)) {
      known.tasks.push_back({class_, *name});
    }
  });
}

// A small book that holds this sentence too.
Known known_by(Dice& dice, const logbook::Said& said) {
  Known known;
  learn(known, said);
  for (int i = 0; i < 12; ++i) {
    const auto last = static_cast<std::int64_t>(all_kinds().size()) - 1;
    const auto index = static_cast<std::size_t>(dice.between(0, last));
    learn(known, random_facts::said_of(dice, *all_kinds()[index]));
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
    const Known known = known_by(dice, said);
    const Reading reading{said.day, &known};
    const Read read = sentence::read(text, reading);
    BOOST_TEST_REQUIRE(read.said.has_value(), text);
    BOOST_TEST((*read.said == said), text << " read as " << say(*read.said));
  });
}

BOOST_AUTO_TEST_CASE(what_is_known_makes_no_retyped_sentence_another_fact) {
  for_random_facts([&](Dice& dice, const logbook::Said& said, const std::string& text) {
    const Known known = known_by(dice, said);
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
