#include "reckon/item_about.h"

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

}  // namespace reckon
