#pragma once
// A JSON value (RFC 8259) to be written: names keep the order in which they were set, so that the
// same answer is the same bytes. Reading JSON is another matter and not done here.

#include <concepts>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

namespace document {

class Json {
 public:
  Json() = default;  // null
  Json(const char* words) : Json(std::string(words)) {}
  Json(std::string_view words) : Json(std::string(words)) {}
  Json(std::string words) : kind_(Kind::string), token_(std::move(words)) {}

  // True, false, or a whole number. A number that a reader with 53-bit numbers would change
  // (beyond 9007199254740991, RFC 7493 section 2.2) is written as a string of digits.
  // Templates, so that no pointer and no double slips in as one of them.
  template <std::same_as<bool> Truth>
  Json(Truth claim) : token_(claim ? "true" : "false") {}
  template <std::signed_integral Number>
  requires(!std::same_as<Number, char>) Json(Number number) { set_number(number); }

  // A decimal figure with its digits as written (-4.1). Other words are our own bug:
  // std::logic_error.
  static Json number(std::string digits);
  static Json object();
  static Json array();

  // Sets a member of an object; a name that is there already keeps its place and gets the new
  // value, so names stay unique.
  Json& set(std::string_view name, Json value);

  // Adds a value at the end of an array.
  Json& add(Json value);

  // Without any blank or line feed, or over several lines indented by two blanks.
  // Both are ASCII-safe for terminals: control characters (text/visible.h) are written as \u….
  // A byte that is not UTF-8 becomes U+FFFD, since JSON has no way to say it.
  std::string in_one_line() const;
  std::string in_lines() const;

 private:
  enum class Kind { token, string, array, object };

  void set_number(std::int64_t number);
  void write(std::string& out, std::size_t depth, bool is_in_lines) const;
  void write_members(std::string& out, std::size_t depth, bool is_in_lines) const;

  Kind kind_ = Kind::token;
  std::string token_ = "null";      // as written, or the words of a string
  std::vector<std::string> names_;  // of an object, as long as values_
  std::vector<Json> values_;
};

// The words as a JSON string, quotes included, with the shortest escapes of RFC 8259 section 7.
std::string json_string(std::string_view words);

}  // namespace document
