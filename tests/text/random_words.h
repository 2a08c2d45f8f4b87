#pragma once
// Random words and bytes for properties, hostile ones among them. Every run prints its seed;
// TIMEWORN_SEED in the environment runs it again.

#include <cstddef>
#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <random>
#include <string>
#include <string_view>
#include <vector>

namespace text_test {

inline std::uint64_t printed_seed(std::string_view property) {
  const char* wanted = std::getenv("TIMEWORN_SEED");
  const std::uint64_t seed =
      wanted != nullptr ? std::strtoull(wanted, nullptr, 10) : std::random_device{}();
  std::cout << property << ": seed " << seed << '\n';
  return seed;
}

// The bytes of one code point, written out by RFC 3629 section 3 and not by what is tested.
inline std::string utf8(char32_t code) {
  const auto byte = [](char32_t number) { return static_cast<char>(number); };
  const auto tail = [&](unsigned shift) { return byte(0x80 | ((code >> shift) & 0x3F)); };
  if (code < 0x80) return {byte(code)};
  if (code < 0x800) return {byte(0xC0 | (code >> 6)), tail(0)};
  if (code < 0x10000) return {byte(0xE0 | (code >> 12)), tail(6), tail(0)};
  return {byte(0xF0 | (code >> 18)), tail(12), tail(6), tail(0)};
}

class RandomWords {
 public:
  explicit RandomWords(std::uint64_t seed) : engine_(seed) {}

  std::size_t below(std::size_t end) {
    return std::uniform_int_distribution<std::size_t>(0, end - 1)(engine_);
  }

  std::vector<std::uint8_t> bytes(std::size_t most) {
    std::vector<std::uint8_t> result(below(most + 1));
    for (std::uint8_t& byte : result) byte = static_cast<std::uint8_t>(below(256));
    return result;
  }

  // Valid UTF-8 of at most so many characters.
  std::string words(std::size_t most) {
    std::string result;
    for (std::size_t left = below(most + 1); left > 0; --left) result += utf8(character());
    return result;
  }

 private:
  struct Range {
    char32_t first, last;
  };

  // Letters and digits, what our forms treat apart, controls, marks, wide ones, joiners, far ones.
  char32_t character() {
    static constexpr Range ranges[] = {{U'a', U'z'},       {U'0', U'9'},       {U' ', U'/'},
                                       {U':', U'@'},       {U' ', U' '},       {0x00, 0x1F},
                                       {0x7F, 0xFF},       {0x300, 0x30F},     {0x4E00, 0x4E20},
                                       {0x200B, 0x2030},   {0x2060, 0x206F},   {0xE000, 0xFFFF},
                                       {0x1F600, 0x1F64F}, {0x10000, 0x10FFFF}};
    const Range range = ranges[below(std::size(ranges))];
    return range.first + static_cast<char32_t>(below(range.last - range.first + 1));
  }

  std::mt19937_64 engine_;
};

}  // namespace text_test
