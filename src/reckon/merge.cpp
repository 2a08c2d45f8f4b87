#include "reckon/merge.h"

#include <algorithm>
#include <map>
#include <optional>
#include <tuple>

namespace reckon {

namespace {

// An item's place: its row, and how far along.
struct ItemPlace {
  std::size_t row = 0;
  std::size_t at = 0;
  auto operator<=>(const ItemPlace&) const = default;
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
      const ItemPlace place{*row, next_[*row]++};
      result.push_back(item(place));
    }
    return result;
  }

 private:
  const DayItem& item(const ItemPlace& place) const { return rows_[place.row][place.at]; }

  void note_what_comes_first() {
    std::map<logbook::Thing, std::vector<ItemPlace>> about;
    for (std::size_t row = 0; row < rows_.size(); ++row) {
      for (std::size_t at = 0; at < rows_[row].size(); ++at) {
        for (const logbook::Thing& thing : rows_[row][at].moved) about[thing].push_back({row, at});
      }
    }
    for (auto& [thing, places] : about) {
      std::sort(places.begin(), places.end(), [&](const ItemPlace& a, const ItemPlace& b) {
        return std::tuple(item(a).told, a) < std::tuple(item(b).told, b);
      });
      for (std::size_t at = 1; at < places.size(); ++at) {
        if (places[at - 1].row != places[at].row) before_[places[at]].push_back(places[at - 1]);
      }
    }
  }

  bool is_free(const ItemPlace& place) const {
    const auto found = before_.find(place);
    if (found == before_.end()) return true;
    return std::all_of(found->second.begin(), found->second.end(),
                       [&](const ItemPlace& earlier) { return earlier.at < next_[earlier.row]; });
  }

  // Of the rows' next items the free one that was told first; if none is free, the aircraft's own
  // orders contradict what was told, and they rule.
  std::optional<std::size_t> next_row() const {
    std::optional<std::size_t> best;
    const auto rank = [&](std::size_t row) {
      const ItemPlace place{row, next_[row]};
      return std::tuple(!is_free(place), item(place).told, row);
    };
    for (std::size_t row = 0; row < rows_.size(); ++row) {
      if (next_[row] == rows_[row].size()) continue;
      if (!best || rank(row) < rank(*best)) best = row;
    }
    return best;
  }

  const std::vector<std::vector<DayItem>>& rows_;
  std::vector<std::size_t> next_;
  std::map<ItemPlace, std::vector<ItemPlace>> before_;
};

}  // namespace

std::vector<DayItem> merged(const std::vector<std::vector<DayItem>>& rows) {
  if (rows.size() == 1) return rows.front();
  return Merging(rows).run();
}

}  // namespace reckon
