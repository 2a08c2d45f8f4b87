#include "text/nearest.h"

#include <algorithm>
#include <boost/test/unit_test.hpp>
#include <functional>
#include <set>

namespace {

using Words = std::vector<std::string>;

// The definition itself, without a table: the second way to a distance, for short words only.
std::size_t by_definition(std::string_view a, std::string_view b) {
  if (a.empty() || b.empty()) return a.size() + b.size();
  const std::string_view shorter_a = a.substr(1);
  const std::string_view shorter_b = b.substr(1);
  const std::size_t same = by_definition(shorter_a, shorter_b) + (a[0] == b[0] ? 0 : 1);
  const std::size_t left_out = by_definition(shorter_a, b) + 1;
  const std::size_t put_in = by_definition(a, shorter_b) + 1;
  std::size_t best = std::min({same, left_out, put_in});
  if (a.size() > 1 && b.size() > 1 && a[0] == b[1] && a[1] == b[0]) {
    best = std::min(best, by_definition(a.substr(2), b.substr(2)) + 1);
  }
  return best;
}

Words all_words(std::string_view letters, std::size_t longest) {
  Words words{""};
  for (std::size_t i = 0; i < words.size(); ++i) {
    if (words[i].size() == longest) continue;
    for (const char letter : letters) words.push_back(words[i] + letter);
  }
  return words;
}

// Every word that one slip of the finger makes of `word`.
std::set<std::string> single_edits(const std::string& word) {
  const std::string letters = "abcdefghijklmnopqrstuvwxyz-0123456789";
  std::set<std::string> typos;
  for (std::size_t i = 0; i <= word.size(); ++i) {
    const std::string before = word.substr(0, i);
    for (const char letter : letters) typos.insert(before + letter + word.substr(i));
    if (i == word.size()) break;
    typos.insert(before + word.substr(i + 1));
    for (const char letter : letters) typos.insert(before + letter + word.substr(i + 1));
    if (i + 1 < word.size()) typos.insert(before + word[i + 1] + word[i] + word.substr(i + 2));
  }
  typos.erase(word);
  return typos;
}

const Words commands{"say",    "read",    "log",    "correct",  "strike",   "undo",     "import",
                     "ready",  "due",     "lives",  "trend",    "fleet",    "history",  "why",
                     "find",   "print",   "new",    "check",    "calendar", "handover", "rebuild",
                     "backup", "restore", "sign",   "people",   "settings", "bases",    "give",
                     "take",   "office",  "decide", "questions"};

struct Score {
  std::size_t typos = 0, first = 0, in_three = 0;
};

Score score_of_all_typos(const Words& names) {
  Score score;
  for (const std::string& name : names) {
    for (const std::string& typo : single_edits(name)) {
      if (std::count(names.begin(), names.end(), typo) > 0) continue;
      const Words found = text::nearest(typo, names, 3);
      ++score.typos;
      if (!found.empty() && found.front() == name) ++score.first;
      if (std::count(found.begin(), found.end(), name) > 0) ++score.in_three;
    }
  }
  return score;
}

}  // namespace

BOOST_AUTO_TEST_SUITE(nearest)

// Damerau (1964): one exchange, omission, insertion or swap each; kitten/sitting is Levenshtein's
// usual example; ca/abc is 3 because a swapped pair is not edited again.
BOOST_AUTO_TEST_CASE(distances_of_known_pairs) {
  BOOST_TEST(text::edit_distance("kitten", "sitting") == 3U);
  BOOST_TEST(text::edit_distance("due", "deu") == 1U);
  BOOST_TEST(text::edit_distance("ca", "abc") == 3U);
  BOOST_TEST(text::edit_distance("", "abc") == 3U);
  BOOST_TEST(text::edit_distance("a", "A") == 1U);
  BOOST_TEST(text::edit_distance("caf\xC3\xA9", "cafe") == 1U);  // characters, not bytes
  BOOST_TEST(text::edit_distance("\xFF", "\xC3\xBF") > 0U);      // a broken byte is no letter
}

BOOST_AUTO_TEST_CASE(distances_agree_with_the_definition_for_all_short_words) {
  const Words words = all_words("abc", 4);
  std::size_t wrong = 0;
  for (const std::string& a : words) {
    for (const std::string& b : words) {
      if (text::edit_distance(a, b) != by_definition(a, b)) ++wrong;
    }
  }
  BOOST_TEST(words.size() == 121U);
  BOOST_TEST(wrong == 0U);
}

// The goal for suggestions: first in 98 of 100 single slips, among the first three in all.
BOOST_AUTO_TEST_CASE(the_right_command_comes_first_after_one_slip) {
  const Score score = score_of_all_typos(commands);
  BOOST_TEST_MESSAGE(score.first << " of " << score.typos << " first");
  BOOST_TEST(score.typos > 10000U);
  BOOST_TEST(score.first * 100 >= score.typos * 98);
  BOOST_TEST(score.in_three == score.typos);
}

BOOST_AUTO_TEST_CASE(case_does_not_count_and_the_known_spelling_comes_back) {
  BOOST_TEST((text::nearest("zz-kti", {"ZZ-KIT", "ZZ-MOB"}, 3) == Words{"ZZ-KIT"}));
  BOOST_TEST((text::nearest("\xC3\x89t\xC3\xA9", {"\xC3\xA9t\xC3\xA9"}, 1).size() == 1U));
}

BOOST_AUTO_TEST_CASE(the_nearer_comes_before_the_farther_and_the_count_is_kept) {
  const Words parts{"B-90", "B-81", "B-88"};
  BOOST_TEST((text::nearest("B-89", parts, 3) == Words{"B-81", "B-88"}));
  BOOST_TEST((text::nearest("B-88", parts, 3) == Words{"B-88", "B-81"}));
  BOOST_TEST((text::nearest("B-88", parts, 1) == Words{"B-88"}));
  BOOST_TEST((text::nearest("B-88", parts, 0) == Words{}));
  BOOST_TEST((text::nearest("B-88", {"B-88", "B-88"}, 3) == Words{"B-88"}));
}

BOOST_AUTO_TEST_CASE(the_same_first_character_decides_between_equals) {
  BOOST_TEST((text::nearest("live", {"give", "lives"}, 2) == Words{"lives", "give"}));
}

BOOST_AUTO_TEST_CASE(the_beginning_of_a_long_name_is_near_to_it) {
  const Words tasks{"annual inspection", "100-hour inspection"};
  BOOST_TEST((text::nearest("annual", tasks, 3) == Words{"annual inspection"}));
  BOOST_TEST((text::nearest("an", tasks, 3) == Words{}));
}

BOOST_AUTO_TEST_CASE(nothing_near_gives_nothing) {
  BOOST_TEST(text::nearest("xylophone", commands, 3).empty());
  BOOST_TEST(text::nearest("due", {}, 3).empty());
}

BOOST_AUTO_TEST_SUITE_END()
