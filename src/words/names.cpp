#include "words/names.h"

#include <algorithm>

#include "text/binary.h"
#include "words/grammar.h"
#include "words/words.h"

namespace words {

namespace {

constexpr std::size_t shown_of_writer = 5;

bool is_letter(char c) { return c >= 'A' && c <= 'Z'; }
bool is_digit(char c) { return c >= '0' && c <= '9'; }
bool is_mark(char c) { return c == '-' || c == '/'; }

// Capitals, digits, hyphens and strokes with a letter among them and a digit or hyphen.
bool may_stand_bare(std::string_view name) {
  const bool is_made_so = std::all_of(
      name.begin(), name.end(), [](char c) { return is_letter(c) || is_digit(c) || is_mark(c); });
  const bool has_letter = std::any_of(name.begin(), name.end(), is_letter);
  const bool has_figure =
      std::any_of(name.begin(), name.end(), [](char c) { return is_digit(c) || c == '-'; });
  return is_made_so && has_letter && has_figure && name.size() <= 24;
}

struct ThingName {
  std::string operator()(const logbook::Aircraft& it) const {
    return fill("aircraft {}", {written_name(it.registration.text)});
  }
  std::string operator()(const logbook::Engine& it) const {
    return fill("engine {} {}", {written_name(it.model.text), written_name(it.serial.text)});
  }
  std::string operator()(const logbook::Part& it) const {
    return fill("part {} {}", {written_name(it.number.text), written_name(it.serial.text)});
  }
  std::string operator()(const logbook::Model& it) const {
    return fill("model {}", {written_name(it.name.text)});
  }
  std::string operator()(const logbook::PartKind& it) const {
    return fill("part number {}", {written_name(it.number.text)});
  }
};

std::string task_name(const reckon::Item& item) {
  const logbook::Task& task = *item.task;
  const bool is_directive = task.class_ == logbook::TaskClass::directive;
  std::string name = is_directive ? "directive " + task.name.text : task.name.text;
  if (std::holds_alternative<logbook::Aircraft>(item.thing)) return name;
  return fill("{} on {}", {name, thing_name(item.thing)});
}

std::string limit_name(const reckon::Item& item) {
  const std::string thing = thing_name(item.thing);
  if (item.mixed != nullptr) {
    const bool is_shelf = item.mixed->class_ == logbook::LimitClass::shelf;
    return fill(is_shelf ? "shelf life of {}" : "life of {}", {thing});
  }
  if (item.limit == nullptr) return thing;
  if (item.limit->verb == logbook::LimitVerb::overhaul) return fill("overhaul of {}", {thing});
  if (item.limit->class_ == logbook::LimitClass::shelf) return fill("shelf life of {}", {thing});
  return fill("life of {}", {thing});
}

}  // namespace

std::string entry_name(const logbook::EntryId& entry) {
  return head_name({entry.writer, entry.number});
}

std::string head_name(const logbook::Head& head) {
  return text::base32(head.writer.bytes).substr(0, shown_of_writer) + "-" +
         std::to_string(head.number);
}

std::string horizon_text(const logbook::Horizon& horizon) {
  std::string line;
  for (const logbook::Head& head : horizon) {
    if (!line.empty()) line += ' ';
    line += head_name(head);
  }
  return line;
}

std::string thing_name(const logbook::Thing& thing) { return std::visit(ThingName{}, thing); }

std::string scope_name(const logbook::Scope& scope) { return std::visit(ThingName{}, scope); }

std::string short_name(const logbook::Thing& thing) {
  const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
  return aircraft != nullptr ? written_name(aircraft->registration.text) : thing_name(thing);
}

std::string in_quotes(std::string_view words) {
  std::string quoted = "\"";
  for (const char c : words) {
    if (c == '"' || c == '\\') quoted += '\\';
    quoted += c;
  }
  return quoted + '"';
}

std::string written_name(std::string_view name) {
  // A serial of digits alone (5012) is written bare as well.
  const bool is_number = !name.empty() && std::all_of(name.begin(), name.end(), is_digit);
  return may_stand_bare(name) || is_number ? std::string(name) : in_quotes(name);
}

std::string written_place(const logbook::PlaceName& place) {
  const std::string_view name = place.text;
  const bool is_engine = name.size() == 8 && name.starts_with("engine ") && is_digit(name.back());
  return is_engine && name.back() != '0' ? std::string(name) : in_quotes(name);
}

std::string_view class_name(logbook::TaskClass class_) {
  switch (class_) {
    case logbook::TaskClass::task:
      return "task";
    case logbook::TaskClass::inspection:
      return "inspection";
    case logbook::TaskClass::service:
      return "service";
    case logbook::TaskClass::storage_step:
      return "storage step";
    case logbook::TaskClass::directive:
      return "directive";
  }
  return "task";
}

std::string written_task(logbook::TaskClass class_, const logbook::TaskName& name) {
  return fill("{} {}", {class_name(class_), written_name(name.text)});
}

std::string item_name(const reckon::Item& item) {
  return item.task != nullptr ? task_name(item) : limit_name(item);
}

std::string where_text(const reckon::Item& item) {
  if (std::holds_alternative<logbook::Aircraft>(item.thing)) return short_name(item.thing);
  const std::string aircraft = item.aircraft ? short_name(*item.aircraft) : "no aircraft";
  if (!item.place) return fill("on {}", {aircraft});
  return item.aircraft ? fill("{} of {}", {item.place->text, aircraft})
                       : fill("{}, on no aircraft", {item.place->text});
}

std::string_view basis_text(logbook::Basis basis) {
  switch (basis) {
    case logbook::Basis::new_:
      return "since new";
    case logbook::Basis::overhaul:
      return "since overhaul";
    case logbook::Basis::fitting:
      return "since fitting";
    case logbook::Basis::release:
      return "since release";
    case logbook::Basis::manufacture:
      return "since manufacture";
    case logbook::Basis::first_certificate:
      return "since first certificate";
    case logbook::Basis::done:
      return "since done";
  }
  return "since new";
}

std::string source_text(std::string_view source) {
  return source.empty() ? std::string("no source on record") : in_quotes(source);
}

}  // namespace words
