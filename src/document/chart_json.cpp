#include "document/chart_json.h"

namespace document {
namespace {

Json number(const ChartValue& value) { return Json::number(value.exact); }

Json axis_json(const ChartAxis& axis) {
  return Json::object().set("name", axis.name).set("unit", axis.unit);
}

Json place_json(const ChartPlace& place) {
  return Json::object().set("x", number(place.x)).set("y", number(place.y));
}

Json points_json(const Chart& chart) {
  Json points = Json::array();
  for (const ChartPoint& point : chart.points) {
    Json one = place_json(point.place);
    points.add(one.set("state", word(point.mark)).set("reason", point.reason));
  }
  return points;
}

Json lines_json(const Chart& chart) {
  Json lines = Json::array();
  for (const ChartLine& line : chart.lines) {
    Json one = Json::object();
    one.set("reach", line.reach == ChartReach::fitted ? "fitted" : "ahead");
    lines.add(one.set("from", place_json(line.from)).set("to", place_json(line.to)));
  }
  return lines;
}

Json bands_json(const Chart& chart) {
  Json bands = Json::array();
  for (const ChartBand& band : chart.bands) {
    Json samples = Json::array();
    for (const ChartBandAt& at : band.samples) {
      Json one = Json::object().set("x", number(at.x)).set("lower", number(at.lower));
      samples.add(one.set("upper", number(at.upper)));
    }
    bands.add(Json::object().set("label", band.label).set("samples", std::move(samples)));
  }
  return bands;
}

}  // namespace

Json chart_json(const Chart& chart) {
  Json levels = Json::array();
  for (const ChartLevel& level : chart.levels) {
    levels.add(Json::object().set("label", level.label).set("y", number(level.y)));
  }
  Json events = Json::array();
  for (const ChartEvent& event : chart.events) {
    events.add(Json::object().set("label", event.label).set("x", number(event.x)));
  }
  Json result = Json::object();
  result.set("kind", "chart").set("key", chart.key).set("title", chart.title);
  result.set("alt", chart.alt).set("points_name", chart.points_name);
  result.set("size", chart.size == ChartSize::full ? "full" : "tile");
  result.set("x", axis_json(chart.x)).set("y", axis_json(chart.y));
  result.set("points", points_json(chart)).set("lines", lines_json(chart));
  result.set("bands", bands_json(chart)).set("levels", std::move(levels));
  return result.set("events", std::move(events));
}

}  // namespace document
