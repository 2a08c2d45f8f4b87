// tests/quantity/outcome.h: what came of reading a text, as one line that a test can compare.
#pragma once

#include <cstdint>
#include <cstdlib>
#include <iostream>
#include <random>
#include <string>
#include <string_view>

#include "quantity/calendar.h"
#include "quantity/counts.h"
#include "quantity/hours.h"
#include "quantity/temperature.h"
#include "quantity/typed.h"

namespace outcome {

inline std::string name_of(quantity::Misreading why) {
  using enum quantity::Misreading;
  switch (why) {
    case not_a_number:
      return "not_a_number";
    case two_readings:
      return "two_readings";
    case not_exact:
      return "not_exact";
    case not_whole:
      return "not_whole";
    case out_of_range:
      return "out_of_range";
    case no_such_day:
      return "no_such_day";
    case ambiguous_day:
      return "ambiguous_day";
  }
  return "no such misreading";
}

inline std::string say(std::int64_t whole) { return std::to_string(whole); }

// The canonical text of what was read, or "not_exact 1.70 1.71".
template <class T>
std::string of(const quantity::Typed<T>& typed) {
  if (typed.is_read()) return say(typed.value());
  const quantity::Misread& misread = typed.misread();
  std::string line = name_of(misread.why);
  if (!misread.first.empty()) line += ' ' + misread.first;
  if (!misread.second.empty()) line += ' ' + misread.second;
  return line;
}

// Random choices whose seed is printed; TIMEWORN_SEED=… plays a failure again.
inline std::mt19937_64 seeded(const char* test) {
  const char* wanted = std::getenv("TIMEWORN_SEED");
  const std::uint64_t seed = wanted ? std::stoull(wanted) : std::random_device{}();
  std::cout << test << ": seed " << seed << '\n';
  return std::mt19937_64(seed);
}

inline std::int64_t between(std::int64_t low, std::int64_t high, std::mt19937_64& choices) {
  return std::uniform_int_distribution<std::int64_t>(low, high)(choices);
}

}  // namespace outcome
