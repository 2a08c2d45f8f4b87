#include "sentence/sorts/things.h"

#include <variant>

#include "sentence/sorts/known.h"

namespace sentence {
namespace {

using logbook::Scope;
using logbook::Thing;
using ThingCandidates = std::vector<Candidate<Thing>>;

std::string_view short_name(const Thing& thing) {
  if (const auto* aircraft = std::get_if<logbook::Aircraft>(&thing)) {
    return aircraft->registration.text;
  }
  if (const auto* engine = std::get_if<logbook::Engine>(&thing)) return engine->serial.text;
  return std::get<logbook::Part>(thing).serial.text;
}

template <class Value>
std::string canonical(const Value& value) {
  std::string result;
  say_value(result, sort_of<Value>, &value);
  return result;
}

bool take_class_word(Cursor& cursor, std::string_view word) {
  return take_quietly(cursor, [&] { return cursor.take_words(word); });
}

// All known things, or those of the class whose word stands at the cursor (which is taken).
ThingCandidates candidates_at(Cursor& cursor) {
  const bool is_aircraft = take_class_word(cursor, "aircraft");
  const bool is_engine = !is_aircraft && take_class_word(cursor, "engine");
  const bool is_part = !is_aircraft && !is_engine && take_class_word(cursor, "part");
  const bool is_any = !is_aircraft && !is_engine && !is_part;
  ThingCandidates candidates;
  for (const Thing& thing : cursor.known()->things) {
    const bool fits = is_any || (is_aircraft && std::holds_alternative<logbook::Aircraft>(thing)) ||
                      (is_engine && std::holds_alternative<logbook::Engine>(thing)) ||
                      (is_part && std::holds_alternative<logbook::Part>(thing));
    if (fits) candidates.push_back({short_name(thing), thing, canonical(thing)});
  }
  return candidates;
}

template <class Kind>
bool read_short_of(Cursor& cursor, void* value) {
  ThingCandidates candidates = candidates_at(cursor);
  std::erase_if(candidates, [](const auto& candidate) {
    return !std::holds_alternative<Kind>(candidate.value);
  });
  Thing thing;
  if (!take_only(cursor, candidates, thing)) return false;
  declared::at<Kind>(value) = std::get<Kind>(thing);
  return true;
}

Scope as_scope(const Thing& thing) {
  return std::visit([](const auto& value) -> Scope { return value; }, thing);
}

}  // namespace

bool read_short_aircraft(Cursor& cursor, void* aircraft) {
  return read_short_of<logbook::Aircraft>(cursor, aircraft);
}
bool read_short_engine(Cursor& cursor, void* engine) {
  return read_short_of<logbook::Engine>(cursor, engine);
}
bool read_short_part(Cursor& cursor, void* part) {
  return read_short_of<logbook::Part>(cursor, part);
}

bool read_short_thing(Cursor& cursor, void* thing) {
  const ThingCandidates candidates = candidates_at(cursor);
  return take_only(cursor, candidates, declared::at<Thing>(thing));
}

bool read_short_scope(Cursor& cursor, void* scope) {
  const std::size_t start = cursor.skip_blanks();
  const ThingCandidates things = candidates_at(cursor);
  const bool has_class = cursor.skip_blanks() != start;
  std::vector<Candidate<Scope>> candidates;
  for (const auto& thing : things) {
    candidates.push_back({thing.name, as_scope(thing.value), thing.shown});
  }
  if (!has_class) {
    for (const logbook::ModelName& name : cursor.known()->models) {
      const Scope model = logbook::Model{name};
      candidates.push_back({name.text, model, canonical(model)});
    }
    for (const logbook::PartNumber& number : cursor.known()->part_numbers) {
      const Scope kind = logbook::PartKind{number};
      candidates.push_back({number.text, kind, canonical(kind)});
    }
  }
  return take_only(cursor, candidates, declared::at<Scope>(scope));
}

bool read_short_task_class(Cursor& cursor, void* task_class) {
  const std::size_t start = cursor.skip_blanks();
  std::vector<Candidate<logbook::TaskClass>> candidates;
  for (const auto& [class_, name] : cursor.known()->tasks) {
    candidates.push_back({name.text, class_, canonical(class_) + ' ' + canonical(name)});
  }
  // What stands there as a bare name is no other task, however alike.
  logbook::TaskName named;
  if (!read_task(cursor, named)) return false;
  cursor.go_to(start);
  std::erase_if(candidates, [&](const auto& candidate) { return candidate.name != named.text; });
  const bool is_taken = take_only(cursor, candidates, declared::at<logbook::TaskClass>(task_class));
  if (is_taken) cursor.go_to(start);
  return is_taken;
}

}  // namespace sentence
