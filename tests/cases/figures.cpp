#include "cases/figures.h"

#include <cctype>

#include "cases/pieces.h"

namespace cases {

namespace {

constexpr std::int64_t seconds_an_hour = 3600;
constexpr std::int64_t thousandths = 1000;

bool is_digit(char c) { return std::isdigit(static_cast<unsigned char>(c)) != 0; }

// "1:42" or "1:42:10" in seconds.
std::optional<std::int64_t> read_clock(std::string_view text) {
  std::int64_t seconds = 0;
  std::int64_t unit = seconds_an_hour;
  for (const std::string& piece : pieces_of(text, ":")) {
    const auto number = read_decimal(piece, 1);
    if (!number || unit == 0) return std::nullopt;
    seconds += *number * unit;
    unit /= 60;
  }
  return seconds;
}

}  // namespace

std::optional<std::int64_t> read_decimal(std::string_view text, std::int64_t units) {
  const bool is_negative = !text.empty() && text.front() == '-';
  if (is_negative) text.remove_prefix(1);
  if (text.empty() || !is_digit(text.front())) return std::nullopt;
  __extension__ using Wide = __int128;
  Wide digits = 0;
  Wide scale = 1;
  bool is_behind_point = false;
  for (const char c : text) {
    if (c == '.' && !is_behind_point) {
      is_behind_point = true;
      continue;
    }
    if (!is_digit(c) || scale > 1'000'000) return std::nullopt;
    digits = digits * 10 + (c - '0');
    if (is_behind_point) scale *= 10;
  }
  const Wide amount = digits * units;
  if (amount % scale != 0) return std::nullopt;
  const auto whole = static_cast<std::int64_t>(amount / scale);
  return is_negative ? -whole : whole;
}

std::string unit_key(std::string_view unit) {
  std::string key(unit);
  const bool is_hours = key == "h" || key.starts_with("h ");
  if (!is_hours && !key.ends_with('s')) key += 's';
  return key;
}

std::optional<Figure> read_figure(std::string_view text) {
  text = trimmed(text);
  const auto blank = text.find(' ');
  if (blank == std::string_view::npos) return std::nullopt;
  const std::string_view number = text.substr(0, blank);
  Figure figure;
  figure.unit = unit_key(trimmed(text.substr(blank)));
  const bool is_hours =
      figure.unit.front() == 'h' && (figure.unit.size() == 1 || figure.unit[1] == ' ');
  std::optional<std::int64_t> amount;
  if (is_hours && number.find(':') != std::string_view::npos) {
    amount = read_clock(number);
  } else if (is_hours) {
    amount = read_decimal(number, seconds_an_hour);
  } else {
    amount = read_decimal(number, figure.unit == "days" ? 1 : thousandths);
  }
  if (!amount) return std::nullopt;
  figure.amount = *amount;
  return figure;
}

}  // namespace cases
