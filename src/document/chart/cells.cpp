#include "document/chart/cells.h"

#include <algorithm>
#include <cmath>
#include <map>
#include <utility>

#include "document/chart/legend.h"

namespace document {
namespace {

// A tick about every so many columns and rows.
constexpr std::size_t columns_a_tick = 14;
constexpr std::size_t rows_a_tick = 3;

class Drawing {
 public:
  Drawing(const Chart& chart, const Frame& frame, std::size_t columns)
      : chart_(chart),
        frame_(frame),
        rows_(cell_of(frame.plot.bottom) + 1, std::string(columns, ' ')) {}

  void draw_events() {
    for (const ChartEvent* event : numbered_events(chart_)) {
      const std::size_t column = cell_of(x_on(frame_, event->x.at));
      for (std::string& row : rows_) row[column] = cell_marks::event;
    }
  }

  void draw_bands() {
    for (const ChartBand& band : chart_.bands) {
      const BandEdges edges = edges_on(frame_, band);
      for (const std::vector<Spot>* edge : {&edges.upper, &edges.lower}) {
        for (std::size_t i = 1; i < edge->size(); ++i) {
          draw_stretch((*edge)[i - 1], (*edge)[i], cell_marks::band);
        }
      }
    }
  }

  void draw_levels() {
    for (const ChartLevel& level : chart_.levels) {
      std::string& row = rows_[cell_of(y_on(frame_, level.y.at))];
      row.assign(row.size(), cell_marks::level);
    }
  }

  void draw_lines() {
    for (const ChartLine& line : chart_.lines) {
      const bool is_fitted = line.reach == ChartReach::fitted;
      draw_stretch(spot_on(frame_, line.from), spot_on(frame_, line.to),
                   is_fitted ? cell_marks::line : cell_marks::ahead);
    }
  }

  void draw_points();

  std::vector<std::string> rows() const { return rows_; }

 private:
  struct Count {
    std::size_t counted = 0;
    std::size_t flagged = 0;
    Beyond beyond = Beyond::inside;
  };

  static char mark_of(const Count& count) {
    if (count.counted > 0 && count.flagged > 0) return cell_marks::both;
    if (count.beyond == Beyond::above) return cell_marks::above;
    if (count.beyond == Beyond::below) return cell_marks::below;
    if (count.flagged > 1) return cell_marks::several_flagged;
    if (count.flagged == 1) return cell_marks::flagged;
    return count.counted > 1 ? cell_marks::several_counted : cell_marks::counted;
  }

  // One cell in each column, or in each row where it is steeper than that.
  void draw_stretch(Spot from, Spot to, char mark) {
    const double longest = std::max(std::abs(to.x - from.x), std::abs(to.y - from.y));
    const auto steps = static_cast<std::size_t>(std::ceil(longest)) + 1;
    for (std::size_t step = 0; step <= steps; ++step) {
      const double share = static_cast<double>(step) / static_cast<double>(steps);
      const Spot spot{from.x + (to.x - from.x) * share, from.y + (to.y - from.y) * share};
      rows_[cell_of(spot.y)][cell_of(spot.x)] = mark;
    }
  }

  const Chart& chart_;
  const Frame& frame_;
  std::vector<std::string> rows_;
};

void Drawing::draw_points() {
  std::map<std::pair<std::size_t, std::size_t>, Count> counts;
  for (const ChartPoint& point : chart_.points) {
    const Spot spot = point_on(frame_, point.place);
    Count& count = counts[{cell_of(spot.y), cell_of(spot.x)}];
    ++(point.mark == ChartMark::counted ? count.counted : count.flagged);
    const Beyond place = beyond(frame_.covered, point.place.y.at);
    if (place != Beyond::inside) count.beyond = place;
  }
  for (const auto& [cell, count] : counts) rows_[cell.first][cell.second] = mark_of(count);
}

}  // namespace

std::size_t cell_of(double place) { return static_cast<std::size_t>(std::lround(place)); }

CellPlot cell_plot(const Chart& chart, std::size_t columns, std::size_t rows) {
  const Box plot{0, 0, static_cast<double>(columns - 1), static_cast<double>(rows - 1)};
  const Steps most{std::max<std::size_t>(columns / columns_a_tick, 2), rows / rows_a_tick};
  const Frame frame = frame_of(chart, plot, most);
  Drawing drawing(chart, frame, columns);
  drawing.draw_events();
  drawing.draw_bands();
  drawing.draw_levels();
  drawing.draw_lines();
  drawing.draw_points();
  return {frame, drawing.rows()};
}

}  // namespace document
