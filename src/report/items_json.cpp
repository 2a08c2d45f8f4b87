// Items as minimal JSON, additive for ever (docs/manual.md).
#include "report/pieces.h"
#include "words/dues.h"
#include "words/figures.h"
#include "words/names.h"
#include "words/shares.h"
#include "words/signings.h"
#include "words/words.h"

namespace report {

namespace {

using document::Json;
using reckon::Item;
using reckon::Side;

Json item_head(const Item& item) {
  Json object = Json::object();
  object.set("id", item.id).set("about", words::thing_name(item.thing));
  return object.set("item", words::item_name(item));
}

Json shown_json(const Side& side) {
  Json shown = Json::object();
  shown.set("used", words::used_text(side)).set("limit", words::limit_text(side));
  return shown.set("left", words::left_text(side)).set("due_at", words::due_text(side));
}

void set_figures(Json& object, const Side& side) {
  object.set("unit", words::unit_key(side));
  object.set("used", figure_json(side.used.figure, Toward::up));
  object.set("limit", figure_json(side.limit, Toward::down));
  object.set("left", figure_json(side.left, Toward::down));
  object.set("due_at", figure_json(side.due_at, Toward::down));
  object.set("due_day", day_json(side.last_legal));
}

void set_rest(Json& object, const Item& item) {
  object.set("source", item.source).set("because", names_json(item.because));
}

void set_more(Json& object, const Item& item) {
  object.set("last_done", item.last_done ? Json(words::entry_name(*item.last_done)) : Json());
  object.set("last_done_day", day_json(item.last_done_day));
  object.set("last_done_signed",
             item.last_done_signed ? Json(words::sign_state_word(*item.last_done_signed)) : Json());
  object.set("not_counted", names_json(item.not_counted));
}

// Of a side that is not known while another is due or over, why it is not.
Json why_not_known(const Item& item, const Side& side) {
  if (item.state == reckon::State::not_known) return words::lack_text(item);
  return side.lack == reckon::Lack::nothing ? Json() : Json(words::lack_text(side));
}

// Only of lives that several models or counters use up together.
void set_sharing(Json& object, const Item& item, const Side& side) {
  const std::string_view sharing = words::sharing_word(item.sharing);
  if (!sharing.empty()) object.set("shares_lives", sharing);
  if (side.life_used) {
    object.set("life_used", Json::number(words::life_used_text(*side.life_used)));
  }
}

Json side_json(const Item& item, const Side& side) {
  Json object = item_head(item);
  set_figures(object, side);
  object.set("governs", &side == words::governing(item)).set("state", state_word(side.state));
  set_rest(object, item);
  object.set("shown", shown_json(side)).set("left_is_at_most", side.left_is_at_most);
  object.set("due_at_airframe", figure_json(side.due_at_airframe, Toward::down));
  object.set("expected_day", day_json(side.expected));
  set_more(object, item);
  object.set("why_not_known", why_not_known(item, side));
  set_sharing(object, item, side);
  return object;
}

Json item_without_sides(const Item& item) {
  Json object = item_head(item);
  object.set("unit", Json());
  for (const char* name : {"used", "limit", "left", "due_at", "due_day"}) object.set(name, Json());
  object.set("governs", true).set("state", state_word(item.state));
  set_rest(object, item);
  set_more(object, item);
  const bool is_known = item.state != reckon::State::not_known;
  return object.set("why_not_known", is_known ? Json() : Json(words::lack_text(item)));
}

}  // namespace

Json figure_json(const std::optional<reckon::Figure>& figure, Toward toward) {
  if (!figure || figure->is_unknown()) return {};
  switch (figure->unit()) {
    case reckon::Unit::days:
      return figure->days().count();
    case reckon::Unit::count:
      return Json::number(quantity::say(figure->count()));
    case reckon::Unit::hours:
      break;
  }
  return toward == Toward::up ? quantity::ceiling_to_seconds(figure->hours()).count()
                              : quantity::floor_to_seconds(figure->hours()).count();
}

Json day_json(std::optional<quantity::Day> day) { return day ? Json(quantity::say(*day)) : Json(); }

Json names_json(const std::vector<logbook::EntryId>& entries) {
  Json names = Json::array();
  for (const auto& entry : entries) names.add(words::entry_name(entry));
  return names;
}

Json items_json(const std::vector<Item>& items) {
  Json array = Json::array();
  for (const Item& item : items) {
    if (item.sides.empty()) array.add(item_without_sides(item));
    for (const Side& side : item.sides) array.add(side_json(item, side));
  }
  return array;
}

}  // namespace report
