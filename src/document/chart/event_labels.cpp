#include "document/chart/event_labels.h"

#include <algorithm>
#include <numeric>
#include <optional>

#include "text/unicode.h"

namespace document {
namespace {

// Shorter than this a label says less than its number does.
constexpr std::size_t least_columns = 9;

bool overlap(const EventLabel& a, const EventLabel& b, double gap) {
  return a.left < b.right + gap && b.left < a.right + gap;
}

// Works from the right to the left: a label reaches over the lines of events to its right, so it
// must stand higher than their labels do.
class Placer {
 public:
  explicit Placer(const LabelRoom& room) : room_(room) {}

  // False if there is no room for any words of it.
  bool place_words(const EventName& name) {
    std::size_t columns = std::min(room_.most_columns, text::columns(name.label));
    const std::size_t least = std::min(columns, least_columns);
    for (; columns >= least && columns > 0; --columns) {
      const std::string words = std::to_string(name.number) + " " + shortened(name.label, columns);
      const EventLabel label = label_of(name, words);
      const std::size_t row = row_for(label);
      if (label.right > room_.right || row >= room_.most_rows) continue;
      keep(label, row);
      return true;
    }
    return false;
  }

  void place_number(const EventName& name) {
    EventLabel label = label_of(name, std::to_string(name.number));
    const double over = std::max(label.right - room_.right, 0.0);
    label.left -= over;
    label.right -= over;
    keep(label, row_for(label));
  }

  const std::vector<EventLabel>& placed() const { return placed_; }

 private:
  EventLabel label_of(const EventName& name, std::string words) const {
    const double left = name.x + room_.gap;
    const auto wide = static_cast<double>(room_.measure(words));
    return {name.number, name.x, std::move(words), left, left + wide, 0};
  }

  std::size_t row_for(const EventLabel& label) const {
    std::size_t row = 0;
    for (const EventLabel& other : placed_) {
      const bool is_crossed = other.x >= label.left - room_.gap && other.x <= label.right;
      if (is_crossed || overlap(label, other, room_.gap)) row = std::max(row, other.row + 1);
    }
    return row;
  }

  void keep(EventLabel label, std::size_t row) {
    label.row = row;
    placed_.push_back(std::move(label));
  }

  LabelRoom room_;
  std::vector<EventLabel> placed_;
};

}  // namespace

std::string shortened(std::string_view words, std::size_t columns) {
  if (text::columns(words) <= columns) return std::string(words);
  std::string result;
  std::size_t used = 1;  // the ellipsis
  for (const std::string_view cluster : text::clusters(words)) {
    used += text::columns(cluster);
    if (used > columns) break;
    result += cluster;
  }
  result.erase(result.find_last_not_of(' ') + 1);
  return result + "\xE2\x80\xA6";
}

std::vector<EventLabel> placed_labels(const std::vector<EventName>& names, const LabelRoom& room) {
  std::vector<std::size_t> order(names.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  std::stable_sort(order.begin(), order.end(),
                   [&](std::size_t a, std::size_t b) { return names[a].x > names[b].x; });
  Placer placer(room);
  const bool has_room = std::all_of(order.begin(), order.end(),
                                    [&](std::size_t i) { return placer.place_words(names[i]); });
  if (!has_room) {
    placer = Placer(room);
    for (const std::size_t i : order) placer.place_number(names[i]);
  }
  std::vector<EventLabel> result(names.size());
  for (std::size_t i = 0; i < order.size(); ++i) result[order[i]] = placer.placed()[i];
  return result;
}

std::size_t rows_of(const std::vector<EventLabel>& labels) {
  std::size_t rows = 0;
  for (const EventLabel& label : labels) rows = std::max(rows, label.row + 1);
  return rows;
}

}  // namespace document
