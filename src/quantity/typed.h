// quantity/typed.h: a value as someone typed it, or which kind of misreading it was. Data only; the
// sentences about misreadings stand in words.
#pragma once

#include <string>
#include <utility>
#include <variant>

namespace quantity {

enum class Misreading {
  not_a_number,   // no figure could be read
  two_readings,   // 1,234: may be 1.234 or 1234
  not_exact,      // 1.705 h is no whole number of hundredths
  not_whole,      // 1.5 landings
  out_of_range,   // 25:10 as a time of day, a year 3025, too many digits
  no_such_day,    // 30 February
  ambiguous_day,  // 03/04/2025
};

// Why a text was not taken; the two texts are the possible readings or the nearest exact figures.
struct Misread {
  Misreading why = Misreading::not_a_number;
  std::string first;
  std::string second;
};

template <class T>
class Typed {
 public:
  Typed(T value) : value_(std::move(value)) {}
  Typed(Misread misread) : value_(std::move(misread)) {}
  Typed(Misreading why) : value_(Misread{why, {}, {}}) {}
  bool is_read() const { return std::holds_alternative<T>(value_); }
  const T& value() const { return std::get<T>(value_); }
  const Misread& misread() const { return std::get<Misread>(value_); }

 private:
  std::variant<T, Misread> value_;
};

}  // namespace quantity
