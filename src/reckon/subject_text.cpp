#include "reckon/subject_text.h"

#include "reckon/entry_named.h"

namespace reckon {
namespace {

std::string text(const logbook::Aircraft& aircraft) { return aircraft.registration.text; }
std::string text(const logbook::Engine& engine) {
  return engine.model.text + " " + engine.serial.text;
}
std::string text(const logbook::Part& part) { return part.number.text + " " + part.serial.text; }

}  // namespace

std::string subject_text(const logbook::Thing& thing) {
  return std::visit([](const auto& subject) { return text(subject); }, thing);
}

std::string class_text(logbook::TaskClass class_) {
  switch (class_) {
    case logbook::TaskClass::inspection:
      return "inspection";
    case logbook::TaskClass::service:
      return "service";
    case logbook::TaskClass::storage_step:
      return "storage step";
    case logbook::TaskClass::directive:
      return "directive";
    case logbook::TaskClass::task:
      break;
  }
  return "task";
}

std::string entry_text(const logbook::EntryId& id) {
  return writer_letters(id.writer, 5) + "-" + std::to_string(id.number);
}

}  // namespace reckon
