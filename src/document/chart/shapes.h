#pragma once
// The marks of a picture, each as SVG elements, with their colours. All are told apart by shape or
// dash; the one accent only repeats that.

#include <cstddef>
#include <string>
#include <string_view>
#include <vector>

#include "document/chart/geometry.h"
#include "document/markup.h"

namespace document {

// On white: ink 16.6, muted 8.2, accent 8.9, edge 3.9 to 1 (WCAG 2.1 contrast; text wants 7,
// graphics 3).
constexpr std::string_view ink = "#1b1f24";
constexpr std::string_view muted = "#46505a";
constexpr std::string_view accent = "#0b4f6c";
constexpr std::string_view edge = "#78828c";
constexpr std::string_view band_fill = "#e4e9ed";
constexpr std::string_view grid_grey = "#e6eaed";
constexpr std::string_view typeface = "system-ui, -apple-system, 'Liberation Sans', sans-serif";

// A length with at most one digit behind the point.
std::string length(double at);

// A circle, a hollow diamond, and for what lies beyond the chart a hollow triangle that points
// there.
std::string counted_mark(Spot spot, double radius);
std::string flagged_mark(Spot spot, double radius, Beyond beyond);

// Solid or dashed strokes.
std::string fitted_stroke(Spot from, Spot to);
std::string ahead_stroke(Spot from, Spot to);
std::string level_stroke(Spot from, Spot to);
std::string event_stroke(Spot from, Spot to);
std::string plain_stroke(Spot from, Spot to, std::string_view colour);

// The area of a band in light grey between two dark edges.
std::string band_area(const BandEdges& edges);

// Words whose baseline is at the spot.
enum class Anchor { start, middle, end };
enum class Weight { plain, strong };
struct Lettering {
  Anchor anchor = Anchor::start;
  Weight weight = Weight::plain;
  std::string_view colour = ink;
};
std::string lettering(Spot spot, std::string_view words, const Lettering& how);

}  // namespace document
