#include "house/habits.h"

#include <array>
#include <cctype>
#include <string>

#include "house/scanned.h"

namespace house {

namespace {

struct Word {
  std::string_view word;
  std::string_view instead;
};

template <std::size_t size>
Findings find_words(const Source& source, const std::array<Word, size>& words) {
  Findings findings;
  const auto code = source.path.ends_with(".cpp") || source.path.ends_with(".h")
                        ? scan(source.text).code
                        : source.text;
  for (const auto& entry : words) {
    for (auto at = find_word(code, entry.word); at != std::string::npos;
         at = find_word(code, entry.word, at + 1)) {
      findings.push_back({source.path, line_at(code, at),
                          std::string(entry.word) + ": " + std::string(entry.instead)});
    }
  }
  return findings;
}

bool is_test_program(std::string_view path) {
  return is_under(path, "tests") &&
         (is_code(path) || path.ends_with(".py") || path.ends_with(".sh"));
}

// Where an identifier of ours begins with get_; std::get_if and its like are not ours.
bool is_own_getter(std::string_view code, std::size_t at) {
  if (at > 0 &&
      (std::isalnum(static_cast<unsigned char>(code[at - 1])) != 0 || code[at - 1] == '_')) {
    return false;
  }
  return at < 2 || code.substr(at - 2, 2) != "::";
}

}  // namespace

Findings check_doubles(const Source& source) {
  static constexpr std::array<Word, 2> words = {
      Word{"double", "amounts are whole numbers outside src/reckon/trend and src/document/chart"},
      Word{"float", "amounts are whole numbers outside src/reckon/trend and src/document/chart"}};
  const bool is_exact = is_under(source.path, "src") && is_code(source.path) &&
                        !is_under(source.path, "src/reckon/trend") &&
                        !is_under(source.path, "src/document/chart");
  return is_exact ? find_words(source, words) : Findings();
}

Findings check_tests(const Source& source) {
  static constexpr std::array<Word, 8> words = {
      Word{"sleep_for", "wait for the thing itself"},
      Word{"sleep_until", "wait for the thing itself"},
      Word{"usleep", "wait for the thing itself"},
      Word{"nanosleep", "wait for the thing itself"},
      Word{"sleep", "wait for the thing itself"},
      Word{"disabled", "a test that does not run shows nothing"},
      Word{"BOOST_AUTO_TEST_CASE_EXPECTED_FAILURES", "a test that may fail shows nothing"},
      Word{"expected_failures", "a test that may fail shows nothing"}};
  return is_test_program(source.path) ? find_words(source, words) : Findings();
}

Findings check_names(const Source& source) {
  Findings findings;
  if (!is_code(source.path)) return findings;
  const auto code = scan(source.text).code;
  for (auto at = code.find("get_"); at != std::string::npos; at = code.find("get_", at + 1)) {
    if (!is_own_getter(code, at)) continue;
    findings.push_back({source.path, line_at(code, at), "a name says what it gives, without get_"});
  }
  for (const std::string_view word : {"Manager", "Helper", "Util", "Utils"}) {
    for (auto at = code.find(word); at != std::string::npos; at = code.find(word, at + 1)) {
      const auto end = at + word.size();
      if (end < code.size() && std::isalnum(static_cast<unsigned char>(code[end])) != 0) continue;
      findings.push_back({source.path, line_at(code, at), std::string(word) + " says nothing"});
    }
  }
  return findings;
}

}  // namespace house
