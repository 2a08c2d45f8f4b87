// The names that the entries hold, for the reader's short forms and hints.
#include <set>

#include "command/enter.h"

namespace command {

namespace {

using logbook::About;

struct Names {
  std::set<logbook::Thing> things;
  std::set<logbook::ModelName> models;
  std::set<logbook::PartNumber> part_numbers;
  std::set<logbook::PersonName> people;
};

// What a sentence touches is in its frame, so no kind has to be told here.
void take(const About& about, Names& names) {
  const auto& parts = about.names;
  if (about.class_ == "aircraft" && parts.size() == 1) {
    names.things.insert(logbook::Aircraft{{parts[0]}});
  } else if (about.class_ == "engine" && parts.size() == 2) {
    names.things.insert(logbook::Engine{{parts[0]}, {parts[1]}});
  } else if (about.class_ == "part" && parts.size() == 2) {
    names.things.insert(logbook::Part{{parts[0]}, {parts[1]}});
  } else if (about.class_ == "model" && parts.size() == 1) {
    names.models.insert({parts[0]});
  } else if (about.class_ == "part number" && parts.size() == 1) {
    names.part_numbers.insert({parts[0]});
  } else if (about.class_ == "person" && parts.size() == 1) {
    names.people.insert({parts[0]});
  }
}

}  // namespace

sentence::Known known_names(const std::vector<logbook::Entry>& entries) {
  Names names;
  std::set<std::pair<logbook::TaskClass, logbook::TaskName>> tasks;
  for (const logbook::Entry& entry : entries) {
    for (const About& about : entry.frame.about) take(about, names);
    if (!entry.said) continue;
    if (const auto* task = std::get_if<logbook::Task>(&entry.said->fact)) {
      tasks.emplace(task->class_, task->name);
    }
  }
  sentence::Known known;
  known.things.assign(names.things.begin(), names.things.end());
  known.tasks.assign(tasks.begin(), tasks.end());
  known.models.assign(names.models.begin(), names.models.end());
  known.part_numbers.assign(names.part_numbers.begin(), names.part_numbers.end());
  known.people.assign(names.people.begin(), names.people.end());
  return known;
}

}  // namespace command
