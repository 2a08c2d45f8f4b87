// words/grammar.h: how sentences with gaps are filled and how lists and counts are said.
#pragma once

#include <cstdint>
#include <functional>
#include <initializer_list>
#include <string>
#include <string_view>
#include <vector>

namespace words {

// The sentence with its gaps {} filled in order. Another number of gaps is a broken promise. What
// is filled in is never looked through for gaps.
std::string fill(std::string_view sentence, std::initializer_list<std::string_view> gaps);

// The sentence with each gap {name} filled by what lookup gives for its name.
std::string fill_named(std::string_view sentence,
                       const std::function<std::string(std::string_view)>& lookup);

// "1 cycle", "2 cycles".
std::string counted(std::int64_t number, std::string_view one, std::string_view many);

// "a", "a and b", "a, b and c"; with "or" likewise.
std::string listed(const std::vector<std::string>& items, std::string_view last_join);

// With its first letter as a capital, if that is one of a-z.
std::string capital(std::string sentence);

// The first candidate that is at most so many columns wide; if none is, the last one, cut with "…".
std::string that_fits(const std::vector<std::string>& candidates, std::size_t columns);

}  // namespace words
