#pragma once
// A chart laid out for a drawing: how large it is and where axes, rows of labels and the plot
// stand. Lengths are units of the drawing, as letters.h has them.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "document/chart/event_labels.h"
#include "document/chart/geometry.h"

namespace document {

constexpr double full_width = 720;
constexpr double tile_width = 232;

// A word in the margin at the height of its level, moved a little where two would touch.
struct LevelName {
  double y;  // of the middle of the letters
  std::string words;
};

struct Layout {
  double width, height;
  std::vector<std::string> y_words;  // above the plot and the labels, from the top downward
  std::vector<std::string> x_words;  // below the figures of the axis
  Frame frame;
  std::vector<EventLabel> events;
  std::vector<LevelName> levels;  // none in a tile, which has its key for that
};

// The drawing without title and key; its height grows with the rows of labels.
Layout layout_of(const Chart& chart);

// The height of the middle of the labels of that row.
double label_middle(const Layout& layout, std::size_t row);

}  // namespace document
