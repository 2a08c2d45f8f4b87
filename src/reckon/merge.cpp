#include "reckon/merge.h"

#include <algorithm>
#include <map>
#include <optional>
#include <tuple>

namespace reckon {

namespace {

// An item's place: its row, and how far along.
struct Spot {
  std::size_t row = 0;
  std::size_t at = 0;
  auto operator<=>(const Spot&) const = default;
};

class Merging {
 public:
  explicit Merging(const std::vector<std::vector<DayItem>>& rows)
      : rows_(rows), next_(rows.size(), 0) {
    note_what_comes_first();
  }

  std::vector<DayItem> run() {
    std::vector<DayItem> result;
    while (const auto row = next_row()) {
      const Spot spot{*row, next_[*row]++};
      result.push_back(item(spot));
    }
    return result;
  }

 private:
  const DayItem& item(const Spot& spot) const { return rows_[spot.row][spot.at]; }

  void note_what_comes_first() {
    std::map<logbook::Thing, std::vector<Spot>> about;
    for (std::size_t row = 0; row < rows_.size(); ++row) {
      for (std::size_t at = 0; at < rows_[row].size(); ++at) {
        for (const logbook::Thing& thing : rows_[row][at].moved) about[thing].push_back({row, at});
      }
    }
    for (auto& [thing, spots] : about) {
      std::sort(spots.begin(), spots.end(), [&](const Spot& a, const Spot& b) {
        return std::tuple(item(a).told, a) < std::tuple(item(b).told, b);
      });
      for (std::size_t at = 1; at < spots.size(); ++at) {
        if (spots[at - 1].row != spots[at].row) before_[spots[at]].push_back(spots[at - 1]);
      }
    }
  }

  bool is_free(const Spot& spot) const {
    const auto found = before_.find(spot);
    if (found == before_.end()) return true;
    return std::all_of(found->second.begin(), found->second.end(),
                       [&](const Spot& earlier) { return earlier.at < next_[earlier.row]; });
  }

  // Of the rows' next items the free one that was told first; if none is free, the aircraft's own
  // orders contradict what was told, and they rule.
  std::optional<std::size_t> next_row() const {
    std::optional<std::size_t> best;
    const auto rank = [&](std::size_t row) {
      const Spot spot{row, next_[row]};
      return std::tuple(!is_free(spot), item(spot).told, row);
    };
    for (std::size_t row = 0; row < rows_.size(); ++row) {
      if (next_[row] == rows_[row].size()) continue;
      if (!best || rank(row) < rank(*best)) best = row;
    }
    return best;
  }

  const std::vector<std::vector<DayItem>>& rows_;
  std::vector<std::size_t> next_;
  std::map<Spot, std::vector<Spot>> before_;
};

}  // namespace

std::vector<DayItem> merged(const std::vector<std::vector<DayItem>>& rows) {
  if (rows.size() == 1) return rows.front();
  return Merging(rows).run();
}

}  // namespace reckon
