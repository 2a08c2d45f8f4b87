#include "document/json.h"

#include <algorithm>
#include <stdexcept>

#include "document/number.h"
#include "text/unicode.h"
#include "text/visible.h"

namespace document {
namespace {

// All of text::is_control lies below U+10000, so one \u of four digits is enough.
std::string escaped_control(char32_t code) {
  switch (code) {
    case U'\b':
      return "\\b";
    case U'\f':
      return "\\f";
    case U'\n':
      return "\\n";
    case U'\r':
      return "\\r";
    case U'\t':
      return "\\t";
    default:
      break;
  }
  constexpr std::string_view digits = "0123456789abcdef";
  std::string result = "\\u";
  for (int shift = 12; shift >= 0; shift -= 4) result += digits[(code >> shift) & 0xF];
  return result;
}

std::string json_escaped(const text::Character& character) {
  if (!character.code) return "\xEF\xBF\xBD";
  if (*character.code == U'"') return "\\\"";
  if (*character.code == U'\\') return "\\\\";
  if (text::is_control(*character.code)) return escaped_control(*character.code);
  return std::string(character.bytes);
}

void start_line(std::string& out, std::size_t depth) {
  out += '\n';
  out.append(2 * depth, ' ');
}

}  // namespace

std::string json_string(std::string_view words) {
  std::string result = "\"";
  while (!words.empty()) {
    const text::Character character = text::first_character(words);
    result += json_escaped(character);
    words.remove_prefix(character.bytes.size());
  }
  return result + '"';
}

void Json::set_number(std::int64_t number) {
  constexpr std::int64_t widest = 9007199254740991;
  token_ = std::to_string(number);
  if (number > widest || number < -widest) kind_ = Kind::string;
}

Json Json::number(std::string digits) {
  if (!is_plain_number(digits)) throw std::logic_error("no plain number for JSON: " + digits);
  Json result;
  result.token_ = std::move(digits);
  return result;
}

Json Json::object() {
  Json result;
  result.kind_ = Kind::object;
  return result;
}

Json Json::array() {
  Json result;
  result.kind_ = Kind::array;
  return result;
}

Json& Json::set(std::string_view name, Json value) {
  const auto found = std::find(names_.begin(), names_.end(), name);
  if (found != names_.end()) {
    values_[static_cast<std::size_t>(found - names_.begin())] = std::move(value);
    return *this;
  }
  names_.emplace_back(name);
  values_.push_back(std::move(value));
  return *this;
}

Json& Json::add(Json value) {
  values_.push_back(std::move(value));
  return *this;
}

std::string Json::in_one_line() const {
  std::string out;
  write(out, 0, false);
  return out;
}

std::string Json::in_lines() const {
  std::string out;
  write(out, 0, true);
  return out;
}

void Json::write(std::string& out, std::size_t depth, bool is_in_lines) const {
  switch (kind_) {
    case Kind::token:
      out += token_;
      return;
    case Kind::string:
      out += json_string(token_);
      return;
    case Kind::array:
    case Kind::object:
      break;
  }
  out += kind_ == Kind::object ? '{' : '[';
  write_members(out, depth + 1, is_in_lines);
  if (is_in_lines && !values_.empty()) start_line(out, depth);
  out += kind_ == Kind::object ? '}' : ']';
}

void Json::write_members(std::string& out, std::size_t depth, bool is_in_lines) const {
  for (std::size_t i = 0; i < values_.size(); ++i) {
    if (i > 0) out += ',';
    if (is_in_lines) start_line(out, depth);
    if (kind_ == Kind::object) out += json_string(names_[i]) + (is_in_lines ? ": " : ":");
    values_[i].write(out, depth, is_in_lines);
  }
}

}  // namespace document
