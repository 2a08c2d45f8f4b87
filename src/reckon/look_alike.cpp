#include "reckon/look_alike.h"

#include <algorithm>
#include <cctype>
#include <utility>

namespace reckon {

namespace {

char capital(char c) { return static_cast<char>(std::toupper(static_cast<unsigned char>(c))); }

char looked_at(char c) {
  switch (c) {
    case 'O':
      return '0';
    case 'I':
    case 'L':
      return '1';
    case 'S':
      return '5';
    case 'B':
      return '8';
    default:
      return c;
  }
}

// The least number of characters put in, left out or exchanged, without regard to case.
std::size_t edits(std::string_view left, std::string_view right) {
  std::vector<std::size_t> row(right.size() + 1);
  for (std::size_t i = 0; i <= right.size(); ++i) row[i] = i;
  for (std::size_t l = 1; l <= left.size(); ++l) {
    std::size_t diagonal = std::exchange(row[0], l);
    for (std::size_t r = 1; r <= right.size(); ++r) {
      const std::size_t changed =
          diagonal + (capital(left[l - 1]) == capital(right[r - 1]) ? 0 : 1);
      diagonal = row[r];
      row[r] = std::min({changed, row[r] + 1, row[r - 1] + 1});
    }
  }
  return row.back();
}

}  // namespace

std::string folded(std::string_view name) {
  std::string result;
  for (const char c : name) {
    if (c != ' ' && c != '-') result += looked_at(capital(c));
  }
  return result;
}

std::string folded(const logbook::Thing& thing) {
  struct Fold {
    std::string operator()(const logbook::Aircraft& aircraft) const {
      return "aircraft " + folded(aircraft.registration.text);
    }
    std::string operator()(const logbook::Engine& engine) const {
      return "engine " + folded(engine.model.text) + " " + folded(engine.serial.text);
    }
    std::string operator()(const logbook::Part& part) const {
      return "part " + folded(part.number.text) + " " + folded(part.serial.text);
    }
  };
  return std::visit(Fold{}, thing);
}

std::vector<std::string> nearest_three(std::string_view word,
                                       const std::vector<std::string>& candidates) {
  const std::size_t most = std::max<std::size_t>(1, word.size() / 3);
  std::vector<std::pair<std::size_t, std::string>> near;
  for (const std::string& candidate : candidates) {
    const std::size_t distance = edits(word, candidate);
    if (distance <= most) near.emplace_back(distance, candidate);
  }
  std::sort(near.begin(), near.end());
  near.erase(std::unique(near.begin(), near.end()), near.end());
  std::vector<std::string> names;
  for (auto& [distance, name] : near) {
    if (names.size() < 3) names.push_back(std::move(name));
  }
  return names;
}

}  // namespace reckon
