#include "document/chart/picture_file.h"

#include <algorithm>

#include "document/chart/picture.h"
#include "document/chart/shapes.h"

namespace document {
namespace {

constexpr double page_side = 20;
constexpr double between_charts = 34;
constexpr double between_tiles = 24;
constexpr double key_indent = 42;
constexpr std::size_t tiles_in_a_row = 3;

struct Panel {
  double height;
  std::string markup;
};

// Writes lines of text from the top downward.
class PanelWriter {
 public:
  explicit PanelWriter(double width) : width_(width) {}

  void write(std::string_view words, const Lettering& how) {
    const double width = how.weight == Weight::strong ? width_ / bold_widening : width_;
    for (const std::string& line : boxed(words, width)) {
      markup_ += lettering({0, height_ + letter_height}, line, how);
      height_ += line_height;
    }
  }

  void write_entry(const LegendEntry& entry) {
    markup_ += key_mark(entry, {14, height_ + letter_height - 5});
    for (const std::string& line : boxed(entry.words, width_ - key_indent)) {
      markup_ += lettering({key_indent, height_ + letter_height}, line, {});
      height_ += line_height;
    }
  }

  void draw(const Chart& chart, const Layout& layout) {
    height_ += 8;
    markup_ += element("g", {{"transform", "translate(0," + length(height_) + ")"}},
                       drawing(chart, layout));
    height_ += layout.height + 8;
  }

  Panel panel() const { return {height_, markup_}; }

 private:
  double width_;
  double height_ = 0;
  std::string markup_;
};

Panel panel_of(const Chart& chart) {
  const Layout layout = layout_of(chart);
  PanelWriter writer(layout.width);
  writer.write(chart.title, {Anchor::start, Weight::strong});
  writer.write(chart.alt, {});
  writer.draw(chart, layout);
  for (const LegendEntry& entry : legend(chart)) writer.write_entry(entry);
  Panel panel = writer.panel();
  panel.markup = described(chart) + panel.markup;
  return panel;
}

// Puts blocks beside and below each other.
class Sheet {
 public:
  void add(const Chart& chart) {
    const Panel panel = panel_of(chart);
    const bool is_tile = chart.size == ChartSize::tile;
    if (!is_tile || in_row_ == tiles_in_a_row) end_row();
    const double x = page_side + static_cast<double>(in_row_) * (tile_width + between_tiles);
    markup_ +=
        element("g",
                {{"role", "img"},
                 {"aria-labelledby", "chart-" + chart.key + "-title chart-" + chart.key + "-desc"},
                 {"transform", "translate(" + length(x) + "," + length(top_) + ")"}},
                panel.markup);
    row_height_ = std::max(row_height_, panel.height);
    ++in_row_;
    if (!is_tile) end_row();
  }

  std::string whole() {
    end_row();
    const double width = 2 * page_side + std::max(full_width, 3 * tile_width + 2 * between_tiles);
    const double height = std::max(top_ - between_charts, 0.0) + page_side;
    const std::string paper = element(
        "rect", {{"width", length(width)}, {"height", length(height)}, {"fill", "#ffffff"}});
    return element("svg", svg_attributes(width, height), paper + markup_) + "\n";
  }

 private:
  void end_row() {
    if (in_row_ == 0) return;
    top_ += row_height_ + between_charts;
    row_height_ = 0;
    in_row_ = 0;
  }

  double top_ = page_side;
  double row_height_ = 0;
  std::size_t in_row_ = 0;
  std::string markup_;
};

}  // namespace

std::string picture_file(const std::vector<const Chart*>& charts) {
  Sheet sheet;
  for (const Chart* chart : charts) sheet.add(*chart);
  return sheet.whole();
}

}  // namespace document
