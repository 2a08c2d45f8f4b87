// The laws of the language over random facts of every kind.
#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <cmath>

#include "sentence/pieces_of_sentence.h"
#include "sentence/random_facts.h"
#include "sentence/reader.h"

using namespace sentence;
using random_facts::Dice;

namespace {

constexpr std::int64_t ordinary_facts = 2000;

// Runs a check over random facts, all kinds in turn.
template <class Check>
void for_random_facts(Check check) {
  BOOST_TEST_MESSAGE("seed " << random_facts::seed());
  Dice dice(random_facts::seed());
  const std::int64_t facts = random_facts::facts(ordinary_facts);
  for (std::int64_t i = 0; i < facts; ++i) {
    const auto kinds = all_kinds();
    const Kind& kind = *kinds[static_cast<std::size_t>(i) % kinds.size()];
    const logbook::Said said = random_facts::said_of(dice, kind);
    const std::string text = say(said);
    if (text.size() <= 4096) check(dice, said, text);
  }
}

// The kinds whose head fits, with a first clause where the head is followed by one.
std::size_t fitting_heads(const std::string& text) {
  const Reading reading;
  std::size_t fitting = 0;
  for (const Kind* kind : all_kinds()) {
    Cursor cursor(text, text.size() - 1, reading);
    logbook::Said said;
    BOOST_REQUIRE(read_value(cursor, day_sort(), &said.day));
    BOOST_REQUIRE(read_time(cursor, said));
    void* fact = kind->make(said.fact);
    if (!read_head(cursor, *kind, fact)) continue;
    Clauses clauses(*kind, fact, said);
    const bool is_whole = cursor.is_at_clause_end();
    const bool goes_on = !kind->head.has_comma_after() && clauses.take(cursor);
    if (is_whole || goes_on) ++fitting;
  }
  return fitting;
}

std::size_t takers(const std::string& clause_text, const Kind& kind) {
  const Reading reading;
  logbook::Said said;
  void* fact = kind.make(said.fact);
  std::size_t count = 0;
  const auto count_takers = [&](std::span<const Clause> clauses, void* owner) {
    for (const Clause& clause : clauses) {
      Cursor cursor(clause_text, clause_text.size(), reading);
      if (!takes_common(kind, clause) && owner == &said) continue;
      if (clause.slot.take(cursor, clause, owner)) ++count;
    }
  };
  count_takers(kind.clauses, fact);
  count_takers(common_clauses(), &said);
  return count;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(laws_of_the_language)

BOOST_AUTO_TEST_CASE(what_is_said_is_read_as_the_same_fact) {
  for_random_facts([](Dice&, const logbook::Said& said, const std::string& text) {
    const Read read = sentence::read(text, {});
    BOOST_TEST_REQUIRE(read.said.has_value(), text);
    BOOST_TEST((*read.said == said), text);
  });
}

BOOST_AUTO_TEST_CASE(what_is_read_is_said_in_the_same_bytes) {
  for_random_facts([](Dice&, const logbook::Said&, const std::string& text) {
    const Read read = sentence::read(text, {});
    BOOST_TEST_REQUIRE(read.said.has_value(), text);
    BOOST_TEST(say(*read.said) == text);
  });
}

BOOST_AUTO_TEST_CASE(exactly_one_head_fits_a_sentence) {
  for_random_facts([](Dice&, const logbook::Said&, const std::string& text) {
    BOOST_TEST(fitting_heads(text) == 1U, text);
  });
}

BOOST_AUTO_TEST_CASE(exactly_one_clause_of_a_kind_takes_a_clause) {
  for_random_facts([](Dice&, const logbook::Said& said, const std::string& text) {
    const Kind& kind = kind_of(said.fact);
    if (kind.common == Common::none) return;
    for (const std::string& clause : pieces_of(text).clauses) {
      BOOST_TEST(takers(clause, kind) == 1U, clause << " in " << text);
    }
  });
}

BOOST_AUTO_TEST_CASE(clauses_may_stand_in_any_order) {
  for_random_facts([](Dice& dice, const logbook::Said& said, const std::string& text) {
    if (kind_of(said.fact).common == Common::none) return;
    Pieces pieces = pieces_of(text);
    std::shuffle(pieces.clauses.begin(), pieces.clauses.end(), dice.engine());
    const Read read = sentence::read(put_together(pieces), {});
    BOOST_TEST_REQUIRE(read.said.has_value(), put_together(pieces));
    BOOST_TEST(say(*read.said) == text);
  });
}

BOOST_AUTO_TEST_CASE(a_clause_said_again_is_refused) {
  for_random_facts([](Dice&, const logbook::Said& said, const std::string& text) {
    if (kind_of(said.fact).common == Common::none) return;
    Pieces pieces = pieces_of(text);
    if (pieces.clauses.empty()) return;
    pieces.clauses.push_back(pieces.clauses.front());
    const Read read = sentence::read(put_together(pieces), {});
    BOOST_TEST_REQUIRE(!read.wrong.empty(), put_together(pieces));
    BOOST_TEST((read.wrong.front().fault == Fault::said_twice));
  });
}

BOOST_AUTO_TEST_CASE(a_line_cut_anywhere_is_read_or_explained) {
  for_random_facts([](Dice& dice, const logbook::Said&, const std::string& text) {
    const auto size =
        static_cast<std::size_t>(dice.between(0, static_cast<std::int64_t>(text.size()) - 1));
    const Read read = sentence::read(text.substr(0, size), {});
    BOOST_TEST(read.said.has_value() == read.wrong.empty());
    for (const Misreading& misreading : read.wrong) {
      BOOST_TEST(misreading.from <= misreading.to);
      BOOST_TEST(misreading.to <= size);
    }
  });
}

BOOST_AUTO_TEST_SUITE_END()
