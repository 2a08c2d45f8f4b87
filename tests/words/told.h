#pragma once
// What every sentence that we say must keep to.

#include <array>
#include <boost/test/unit_test.hpp>
#include <cctype>
#include <string>
#include <string_view>

namespace words_test {

inline std::string lower(std::string_view text) {
  std::string result;
  for (const char c : text) {
    result += static_cast<char>(std::tolower(static_cast<unsigned char>(c)));
  }
  return result;
}

// Words that have another word in our texts, or that say too much.
inline std::string banned_word_in(std::string_view text) {
  static constexpr std::array<std::string_view, 9> banned = {
      "remaining", "hub", "writer", "digest", "airworthy", "safe to fly", "null", "delete", "void"};
  const std::string plain = " " + lower(text) + " ";
  for (const std::string_view word : banned) {
    for (auto at = plain.find(word); at != std::string::npos; at = plain.find(word, at + 1)) {
      const auto end = at + word.size();
      const bool is_word = std::isalpha(static_cast<unsigned char>(plain[at - 1])) == 0 &&
                           std::isalpha(static_cast<unsigned char>(plain[end])) == 0;
      if (is_word) return std::string(word);
    }
  }
  return {};
}

inline std::size_t words_in_longest_sentence(std::string_view text) {
  std::size_t longest = 0;
  std::size_t words = 0;
  bool is_in_word = false;
  for (std::size_t i = 0; i < text.size(); ++i) {
    const bool is_blank = text[i] == ' ';
    if (!is_blank && !is_in_word) ++words;
    is_in_word = !is_blank;
    const bool is_end = text[i] == '.' && (i + 1 == text.size() || text[i + 1] == ' ');
    if (!is_end) continue;
    longest = std::max(longest, words);
    words = 0;
    is_in_word = false;
  }
  return std::max(longest, words);
}

// A whole text: nothing unfilled, no banned word, no sentence of more than so many words.
inline void check_told(const std::string& text, std::size_t most_words = 20) {
  BOOST_TEST(text.find_first_of("{}") == std::string::npos, text);
  BOOST_TEST(banned_word_in(text).empty(), banned_word_in(text) << " in: " << text);
  BOOST_TEST(words_in_longest_sentence(text) <= most_words, text);
  BOOST_TEST(text.find("  ") == std::string::npos, text);
  BOOST_TEST((text.ends_with('.') || text.ends_with('?')), text);
}

}  // namespace words_test
