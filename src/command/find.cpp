// How a thing is found by the name that a person types.
#include "command/book_view.h"
#include "text/nearest.h"
#include "text/pieces.h"
#include "words/words.h"

namespace command {

namespace {

struct ShortName {
  std::string operator()(const logbook::Aircraft& it) const { return it.registration.text; }
  std::string operator()(const logbook::Engine& it) const { return it.serial.text; }
  std::string operator()(const logbook::Part& it) const { return it.serial.text; }
};

std::string short_name(const logbook::Thing& thing) { return std::visit(ShortName{}, thing); }

// "disc T1-77" and "engine TS-40 E-1001" end with the name that tells.
std::string last_word(const std::string& name) {
  const auto blank = name.rfind(' ');
  return blank == std::string::npos ? name : name.substr(blank + 1);
}

Unanswerable no_such_thing(const BookView& view, const std::string& name) {
  std::vector<std::string> names;
  for (const auto& thing : view.histories().things()) names.push_back(short_name(thing));
  const auto near = text::nearest(last_word(name), names, 3);
  std::string sentence = "The book knows nothing by the name \"" + name + "\".";
  if (!near.empty()) sentence += " Did you mean " + text::join(near, " or ") + "?";
  return {sentence, no_such};
}

Unanswerable several(const std::vector<logbook::Thing>& found, const std::string& name) {
  std::vector<std::string> names;
  for (const auto& thing : found) names.push_back(words::thing_name(thing));
  return {"\"" + name + "\" can mean " + text::join(names, " or ") + ". Write one of these.",
          typed_wrongly};
}

}  // namespace

std::variant<logbook::Thing, Unanswerable> find_thing(const BookView& view,
                                                      const std::string& name) {
  const std::string wanted = text::upper(last_word(name));
  std::vector<logbook::Thing> found;
  for (const auto& thing : view.histories().things()) {
    if (text::upper(words::thing_name(thing)) == text::upper(name)) return thing;
    if (text::upper(short_name(thing)) == wanted) found.push_back(thing);
  }
  if (found.size() == 1) return found.front();
  if (found.empty()) return no_such_thing(view, name);
  return several(found, name);
}

std::variant<logbook::Aircraft, Unanswerable> find_aircraft(const BookView& view,
                                                            const std::string& name) {
  std::vector<logbook::Aircraft> fleet;
  for (const auto& thing : view.histories().things()) {
    if (const auto* aircraft = std::get_if<logbook::Aircraft>(&thing)) fleet.push_back(*aircraft);
  }
  if (name.empty()) {
    if (fleet.size() == 1) return fleet.front();
    std::vector<std::string> names;
    for (const auto& aircraft : fleet) names.push_back(aircraft.registration.text);
    return Unanswerable{fleet.empty()
                            ? std::string("The book has no aircraft yet. Say for example: aircraft "
                                          "ZZ-KIT is model \"Larkwing 5\".")
                            : "Which aircraft? The book has " + text::join(names, ", ") + ".",
                        fleet.empty() ? no_such : typed_wrongly};
  }
  const auto thing = find_thing(view, name);
  if (const auto* wrong = std::get_if<Unanswerable>(&thing)) return *wrong;
  if (const auto* aircraft = std::get_if<logbook::Aircraft>(&std::get<logbook::Thing>(thing))) {
    return *aircraft;
  }
  return Unanswerable{words::thing_name(std::get<logbook::Thing>(thing)) + " is no aircraft.",
                      typed_wrongly};
}

}  // namespace command
