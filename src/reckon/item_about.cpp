#include "reckon/item_about.h"

#include "reckon/subject_text.h"

namespace reckon {

Item item_about(const View& view, const logbook::Thing& thing, const StandingFact& definition) {
  Item item;
  item.entry = definition.root;
  item.because.push_back(definition.root);
  item.thing = thing;
  item.aircraft = view.histories.aircraft_now(thing);
  if (const auto stay = view.histories.stay_now(thing)) item.place = stay->place;
  return item;
}

Item limit_about(const View& view, const logbook::Thing& thing, const StandingFact& definition) {
  Item item = item_about(view, thing, definition);
  item.kind = Item::Kind::limit;
  item.id = "limit:" + subject_text(thing) + ":" + entry_text(definition.root);
  return item;
}

}  // namespace reckon
