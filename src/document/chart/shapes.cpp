#include "document/chart/shapes.h"

#include "document/chart/decimal.h"

namespace document {
namespace {

std::string pair(Spot spot) { return length(spot.x) + "," + length(spot.y); }

std::string stroke(Spot from, Spot to, const Attributes& how) {
  Attributes all{
      {"x1", length(from.x)}, {"y1", length(from.y)}, {"x2", length(to.x)}, {"y2", length(to.y)}};
  all.insert(all.end(), how.begin(), how.end());
  return element("line", all);
}

Attributes drawn(std::string_view colour, std::string_view width, std::string_view dashes) {
  Attributes result{{"stroke", std::string(colour)}, {"stroke-width", std::string(width)}};
  if (!dashes.empty()) result.push_back({"stroke-dasharray", std::string(dashes)});
  return result;
}

std::string outline(const std::vector<Spot>& spots) {
  std::string result;
  for (const Spot& spot : spots) result += (result.empty() ? "" : " ") + pair(spot);
  return result;
}

std::string edge_line(const std::vector<Spot>& spots) {
  return element("polyline", {{"points", outline(spots)},
                              {"fill", "none"},
                              {"stroke", std::string(edge)},
                              {"stroke-width", "1"}});
}

}  // namespace

std::string length(double at) { return shortest(at, 1); }

std::string counted_mark(Spot spot, double radius) {
  return element("circle", {{"cx", length(spot.x)},
                            {"cy", length(spot.y)},
                            {"r", length(radius)},
                            {"fill", std::string(ink)},
                            {"stroke", "#ffffff"},
                            {"stroke-width", "0.7"}});
}

std::string flagged_mark(Spot spot, double radius, Beyond beyond) {
  const double reach = radius + 2;
  const Spot left{spot.x - reach, spot.y};
  const Spot right{spot.x + reach, spot.y};
  const Spot top{spot.x, spot.y - reach};
  const Spot bottom{spot.x, spot.y + reach};
  std::vector<Spot> spots{left, top, right, bottom};
  // The triangle hangs inside the plot with its tip at the edge.
  if (beyond == Beyond::above) {
    spots = {spot, {right.x, spot.y + 2 * reach}, {left.x, spot.y + 2 * reach}};
  }
  if (beyond == Beyond::below) {
    spots = {spot, {right.x, spot.y - 2 * reach}, {left.x, spot.y - 2 * reach}};
  }
  return element("polygon", {{"points", outline(spots)},
                             {"fill", "#ffffff"},
                             {"stroke", std::string(ink)},
                             {"stroke-width", "1.6"}});
}

std::string fitted_stroke(Spot from, Spot to) { return stroke(from, to, drawn(accent, "2.6", "")); }

std::string ahead_stroke(Spot from, Spot to) {
  return stroke(from, to, drawn(accent, "2.2", "7 5"));
}

std::string level_stroke(Spot from, Spot to) { return stroke(from, to, drawn(ink, "2.4", "14 6")); }

std::string event_stroke(Spot from, Spot to) {
  return stroke(from, to, drawn(muted, "1.2", "1.5 3.5"));
}

std::string plain_stroke(Spot from, Spot to, std::string_view colour) {
  return stroke(from, to, drawn(colour, "1", ""));
}

std::string band_area(const BandEdges& edges) {
  std::vector<Spot> around = edges.upper;
  around.insert(around.end(), edges.lower.rbegin(), edges.lower.rend());
  return element("polygon", {{"points", outline(around)}, {"fill", std::string(band_fill)}}) +
         edge_line(edges.upper) + edge_line(edges.lower);
}

std::string lettering(Spot spot, std::string_view words, const Lettering& how) {
  Attributes attributes{{"x", length(spot.x)}, {"y", length(spot.y)}};
  if (how.anchor == Anchor::middle) attributes.push_back({"text-anchor", "middle"});
  if (how.anchor == Anchor::end) attributes.push_back({"text-anchor", "end"});
  if (how.weight == Weight::strong) attributes.push_back({"font-weight", "600"});
  if (how.colour != ink) attributes.push_back({"fill", std::string(how.colour)});
  return element("text", attributes, escaped(words));
}

}  // namespace document
