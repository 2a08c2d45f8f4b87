#include "quantity/figure.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <cstddef>
#include <optional>
#include <variant>

#include "quantity/exact.h"

namespace quantity {
namespace {

constexpr std::size_t most_whole_digits = 9;
constexpr std::size_t most_decimals = 6;

// A figure as it was written: groups of digits with a point or comma between them. Nine digits and
// decimals make at most four groups; what has more than five is no figure.
struct Written {
  bool is_negative = false;
  std::array<std::string_view, 5> groups;
  std::size_t group_count = 0;
  std::string marks;
};

std::optional<Written> take_apart(std::string_view text) {
  Written written;
  if (text.starts_with('-')) {
    written.is_negative = true;
    text.remove_prefix(1);
  }
  while (true) {
    const std::size_t mark = text.find_first_of(".,");
    const std::string_view group = text.substr(0, mark);
    if (!is_all_digits(group) || written.group_count == written.groups.size()) return std::nullopt;
    written.groups.at(written.group_count++) = group;
    if (mark == std::string_view::npos) return written;
    written.marks.push_back(text[mark]);
    text.remove_prefix(mark + 1);
  }
}

// All the digits, with a point before the group of this number only.
std::string with_point_before(const Written& written, std::size_t point) {
  std::string text = written.is_negative ? "-" : "";
  for (std::size_t i = 0; i < written.group_count; ++i) {
    if (i == point) text += '.';
    text += written.groups.at(i);
  }
  return text;
}

// 1,234 and 1.234,5 and 1,234,567: marks that may part thousands, or whole from decimals.
bool may_part_thousands(const Written& written) {
  const std::size_t marks = written.marks.size();
  const bool ends_in_decimals = written.marks.front() != written.marks.back();
  const std::size_t thousands = ends_in_decimals ? marks - 1 : marks;
  if (written.groups.front().size() > 3) return false;
  for (std::size_t i = 0; i < thousands; ++i) {
    if (written.marks[i] != written.marks.front() || written.groups.at(i + 1).size() != 3)
      return false;
  }
  return true;
}

Misread two_readings(const Written& written) {
  const bool ends_in_decimals = written.marks.front() != written.marks.back();
  const std::size_t last = ends_in_decimals ? written.marks.size() : written.group_count;
  return {Misreading::two_readings, with_point_before(written, 1),
          with_point_before(written, last)};
}

// A figure with at most one mark, which is known to stand before the decimals.
struct Plain {
  bool is_negative = false;
  std::string_view whole;
  std::string_view decimals;
};

std::variant<Plain, Misread> settle_marks(const Written& written) {
  if (written.marks.empty()) return Plain{written.is_negative, written.groups[0], {}};
  const bool is_one = written.marks.size() == 1;
  const bool is_decimal = is_one && (written.marks[0] == '.' || written.groups[1].size() <= 2);
  if (is_decimal) return Plain{written.is_negative, written.groups[0], written.groups[1]};
  if (may_part_thousands(written)) return two_readings(written);
  return Misread{Misreading::not_a_number, {}, {}};
}

std::int64_t power_of_ten(std::size_t exponent) {
  std::int64_t power = 1;
  for (std::size_t i = 0; i < exponent; ++i) power *= 10;
  return power;
}

std::int64_t millionths(const Plain& plain) {
  std::int64_t value = value_of_digits(plain.whole) * power_of_ten(most_decimals);
  if (!plain.decimals.empty()) {
    value += value_of_digits(plain.decimals) * power_of_ten(most_decimals - plain.decimals.size());
  }
  return plain.is_negative ? -value : value;
}

std::string in_full(std::int64_t count, int decimals) {
  return say_figure(count, {decimals, decimals});
}

// 4.320 in a form of two decimals: nobody needs the third, so a thousand may be meant.
bool may_be_thousands(const Plain& plain, const FigureForm& form) {
  return form.decimals < 3 && plain.decimals.size() == 3 && plain.whole.size() <= 3 &&
         plain.whole.front() != '0';
}

Misread thousands_or_decimals(const Plain& plain, std::int64_t count, const FigureForm& form) {
  const std::string sign = plain.is_negative ? "-" : "";
  const std::string thousands = sign + std::string(plain.whole) + std::string(plain.decimals);
  return {Misreading::two_readings, say_figure(count, {form.decimals, 0}), thousands};
}

Typed<std::int64_t> weigh(const Plain& plain, const FigureForm& form) {
  constexpr Misreading out_of_range = Misreading::out_of_range;
  const bool is_too_long =
      plain.whole.size() > most_whole_digits || plain.decimals.size() > most_decimals;
  if (is_too_long || (plain.is_negative && form.lowest >= 0)) return out_of_range;
  const std::int64_t value = millionths(plain);
  const std::int64_t unit = power_of_ten(most_decimals - static_cast<std::size_t>(form.decimals));
  if (value < form.lowest * unit || value > form.highest * unit) return out_of_range;
  const std::int64_t below = floor_divide(value, unit);
  if (below * unit != value) {
    return Misread{form.decimals == 0 ? Misreading::not_whole : Misreading::not_exact,
                   in_full(below, form.decimals), in_full(below + 1, form.decimals)};
  }
  if (may_be_thousands(plain, form)) return thousands_or_decimals(plain, below, form);
  return below;
}

}  // namespace

Typed<std::int64_t> read_figure(std::string_view text, const FigureForm& form) {
  const std::optional<Written> written = take_apart(text);
  if (!written) return Misreading::not_a_number;
  const std::variant<Plain, Misread> settled = settle_marks(*written);
  if (const Misread* misread = std::get_if<Misread>(&settled)) return *misread;
  return weigh(std::get<Plain>(settled), form);
}

std::string say_figure(std::int64_t count, Decimals decimals) {
  const std::int64_t unit = power_of_ten(static_cast<std::size_t>(decimals.held));
  const std::int64_t size = count < 0 ? checked_subtract(0, count) : count;
  std::string text = (count < 0 ? "-" : "") + say_digits(size / unit, 1);
  std::string fraction = say_digits(size % unit, static_cast<std::size_t>(decimals.held));
  if (decimals.held == 0) return text;
  while (fraction.size() > static_cast<std::size_t>(decimals.least) && fraction.ends_with('0')) {
    fraction.pop_back();
  }
  return fraction.empty() ? text : text + '.' + fraction;
}

bool is_all_digits(std::string_view text) {
  return !text.empty() && std::all_of(text.begin(), text.end(), is_digit);
}

std::int64_t value_of_digits(std::string_view digits) {
  EXPECT(is_all_digits(digits) && digits.size() <= 18);
  std::int64_t value = 0;
  std::from_chars(digits.data(), digits.data() + digits.size(), value);
  return value;
}

std::string say_digits(std::int64_t count, std::size_t width) {
  EXPECT(count >= 0);
  const std::string digits = std::to_string(count);
  return digits.size() < width ? std::string(width - digits.size(), '0') + digits : digits;
}

}  // namespace quantity
