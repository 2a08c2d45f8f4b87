// What a sentence is about, and which entries it names.
#include <algorithm>

#include "sentence/sentence.h"
#include "sentence/sorts/things.h"
#include "sentence/walk.h"

namespace sentence {
namespace {

std::string task_class_word(logbook::TaskClass class_) {
  std::string word;
  say_value(word, sort_of<logbook::TaskClass>, &class_);
  return word;
}

// Adds a name with its class if the value is of this type.
template <class Name>
bool add_name(std::vector<logbook::About>& about, std::string_view class_,
              std::pair<const Sort*, const void*> value) {
  if (value.first != &sort_of<Name>) return false;
  about.push_back({std::string(class_), {declared::look<Name>(value.second).text}});
  return true;
}

class Gathered {
 public:
  void add(const Sort& sort, const void* value) {
    const std::pair pair(&sort, value);
    if (add_thing(sort, value) || add_task(sort, value)) return;
    add_name<logbook::PersonName>(about_, "person", pair);
    add_name<logbook::BaseName>(about_, "base", pair);
    add_name<logbook::RecordName>(about_, "record", pair);
    add_model(sort, value);
    if (&sort == &sort_of<logbook::EntryName>) {
      std::string name;
      say_entry(name, declared::look<logbook::EntryName>(value));
      about_.push_back({"entry", {name}});
    }
  }
  std::vector<logbook::About> sorted() {
    std::sort(about_.begin(), about_.end());
    about_.erase(std::unique(about_.begin(), about_.end()), about_.end());
    return std::move(about_);
  }

 private:
  bool add_thing(const Sort& sort, const void* value) {
    if (&sort == &sort_of<logbook::Aircraft>) {
      const auto& aircraft = declared::look<logbook::Aircraft>(value);
      about_.push_back({"aircraft", {aircraft.registration.text}});
    } else if (&sort == &sort_of<logbook::Engine>) {
      const auto& engine = declared::look<logbook::Engine>(value);
      about_.push_back({"engine", {engine.model.text, engine.serial.text}});
      is_inside_engine_ = true;
    } else if (&sort == &sort_of<logbook::Part>) {
      const auto& part = declared::look<logbook::Part>(value);
      about_.push_back({"part", {part.number.text, part.serial.text}});
    } else if (&sort == &sort_of<logbook::PartKind>) {
      about_.push_back({"part number", {declared::look<logbook::PartKind>(value).number.text}});
    } else {
      return false;
    }
    return true;
  }
  // The class of a task stands before its name.
  bool add_task(const Sort& sort, const void* value) {
    if (&sort == &sort_of<logbook::TaskClass>) {
      class_ = task_class_word(declared::look<logbook::TaskClass>(value));
      return true;
    }
    return add_name<logbook::TaskName>(about_, class_, {&sort, value});
  }
  // The model inside an engine's name is told with the engine.
  void add_model(const Sort& sort, const void* value) {
    if (&sort != &sort_of<logbook::ModelName>) return;
    if (!is_inside_engine_) {
      add_name<logbook::ModelName>(about_, "model", {&sort, value});
    }
    is_inside_engine_ = false;
  }

  std::vector<logbook::About> about_;
  std::string class_;
  bool is_inside_engine_ = false;
};

// The entries between the ends of a signed range.
void add_range(const logbook::Said& said, std::vector<logbook::EntryName>& names) {
  if (const auto* corrected = std::get_if<logbook::Corrected>(&said.fact)) {
    return add_range(*corrected->instead, names);
  }
  const auto* signed_ = std::get_if<logbook::Signed>(&said.fact);
  if (signed_ == nullptr) return;
  const std::vector<logbook::EntryName> inside = logbook::between(*signed_);
  names.insert(names.end(), inside.begin(), inside.end());
}

}  // namespace

std::vector<logbook::About> about(const logbook::Said& said) {
  Gathered gathered;
  walk(said, [&](const Sort& sort, const void* value) { gathered.add(sort, value); });
  return gathered.sorted();
}

std::vector<logbook::EntryName> named_entries(const logbook::Said& said) {
  std::vector<logbook::EntryName> names;
  walk(said, [&](const Sort& sort, const void* value) {
    if (&sort == &sort_of<logbook::EntryName>) {
      names.push_back(declared::look<logbook::EntryName>(value));
    }
  });
  add_range(said, names);
  return names;
}

}  // namespace sentence
