#include "text/nearest.h"

#include <algorithm>
#include <set>
#include <tuple>

#include "text/unicode.h"

namespace text {
namespace {

// Bytes that are not UTF-8 get numbers above all code points, so that they differ from all of them.
std::u32string code_points(std::string_view words) {
  std::u32string result;
  for (const Character& character : characters(words)) {
    const auto byte = static_cast<unsigned char>(character.bytes.front());
    result += character.code.value_or(0x110000U + byte);
  }
  return result;
}

// Three rows of the table are enough: a swap looks back two.
struct Rows {
  std::vector<std::size_t> before_last, last, current;
};

std::size_t cheapest(const Rows& rows, std::size_t column, bool is_same) {
  const std::size_t exchanged = rows.last[column - 1] + (is_same ? 0 : 1);
  return std::min({rows.last[column] + 1, rows.current[column - 1] + 1, exchanged});
}

void fill_row(Rows& rows, std::u32string_view left, std::u32string_view right, std::size_t row) {
  rows.current[0] = row;
  for (std::size_t column = 1; column <= right.size(); ++column) {
    const char32_t a = left[row - 1];
    const char32_t b = right[column - 1];
    std::size_t cost = cheapest(rows, column, a == b);
    if (row > 1 && column > 1 && a == right[column - 2] && left[row - 2] == b) {
      cost = std::min(cost, rows.before_last[column - 2] + 1);
    }
    rows.current[column] = cost;
  }
}

std::size_t distance_of(std::u32string_view left, std::u32string_view right) {
  Rows rows;
  rows.before_last.assign(right.size() + 1, 0);
  rows.current = rows.before_last;
  for (std::size_t column = 0; column <= right.size(); ++column) rows.last.push_back(column);
  for (std::size_t row = 1; row <= left.size(); ++row) {
    fill_row(rows, left, right, row);
    std::swap(rows.before_last, rows.last);
    std::swap(rows.last, rows.current);
  }
  return rows.last[right.size()];
}

struct Ranked {
  std::size_t distance;
  bool is_other_first;
  std::size_t place;
};

bool is_near(const Ranked& ranked, std::u32string_view typed, std::u32string_view known) {
  const bool is_begun = typed.size() >= 3 && known.substr(0, typed.size()) == typed;
  return is_begun || ranked.distance <= std::max<std::size_t>(1, typed.size() / 3);
}

std::vector<Ranked> near_ones(const std::u32string& typed,
                              const std::vector<std::string>& candidates) {
  std::vector<Ranked> result;
  std::set<std::string_view> seen;
  for (std::size_t place = 0; place < candidates.size(); ++place) {
    const std::u32string known = code_points(fold(candidates[place]));
    const bool is_other_first = known.substr(0, 1) != typed.substr(0, 1);
    const Ranked ranked{distance_of(typed, known), is_other_first, place};
    if (!is_near(ranked, typed, known)) continue;
    if (seen.insert(candidates[place]).second) result.push_back(ranked);
  }
  return result;
}

}  // namespace

std::size_t edit_distance(std::string_view left, std::string_view right) {
  return distance_of(code_points(left), code_points(right));
}

std::vector<std::string> nearest(std::string_view word, const std::vector<std::string>& candidates,
                                 std::size_t most) {
  std::vector<Ranked> near = near_ones(code_points(fold(word)), candidates);
  std::sort(near.begin(), near.end(), [](const Ranked& a, const Ranked& b) {
    return std::tie(a.distance, a.is_other_first, a.place) <
           std::tie(b.distance, b.is_other_first, b.place);
  });
  std::vector<std::string> result;
  for (const Ranked& ranked : near) {
    if (result.size() < most) result.push_back(candidates[ranked.place]);
  }
  return result;
}

}  // namespace text
