#include "told.h"

#include "quantity/counts.h"

namespace told {

namespace {

std::string value_of(const reckon::Figure& figure) {
  if (figure.unit() == reckon::Unit::count) return say(figure.count());
  if (figure.raw() % 1000 != 0) return std::to_string(figure.raw()) + " thousandths";
  return say(quantity::floor_to_seconds(figure.hours()));
}

}  // namespace

std::string text(const reckon::Figure& figure) {
  switch (figure.sureness()) {
    case reckon::Sureness::exact:
      return value_of(figure);
    case reckon::Sureness::by_default:
      return "by default " + value_of(figure);
    case reckon::Sureness::at_least:
      return "at least " + value_of(figure);
    case reckon::Sureness::unknown:
      break;
  }
  return "unknown";
}

std::string Told::hours(const logbook::Thing& thing) const {
  return text(histories.total(thing, reckon::service_clock, histories.now()).figure);
}
std::string Told::hours_at(const logbook::Thing& thing, const logbook::EntryId& entry) const {
  return text(histories.total(thing, reckon::service_clock, histories.mark_of(entry)).figure);
}
std::string Told::count(const logbook::Thing& thing, logbook::CounterKind kind) const {
  return text(histories.total(thing, logbook::Counter{kind, ""}, histories.now()).figure);
}
std::string Told::overhaul(const logbook::Thing& thing) const {
  return text(histories.since_overhaul(thing, reckon::service_clock, histories.now()).figure);
}
std::string Told::fitting(const logbook::Thing& thing) const {
  return text(histories.since_fitting(thing, reckon::service_clock, histories.now()).figure);
}
std::string Told::fitting(const logbook::Thing& thing, logbook::CounterKind kind) const {
  return text(histories.since_fitting(thing, logbook::Counter{kind, ""}, histories.now()).figure);
}
std::string Told::statement(const logbook::EntryId& entry) const {
  for (const reckon::Statement& one : histories.statements()) {
    if (one.entry != entry) continue;
    if (!one.agreed_when_written) return text(one.stated) + " against " + text(one.reckoned);
    if (one.stated == one.reckoned) return text(one.stated);
    return text(one.stated) + ", now " + text(one.reckoned);
  }
  return "none";
}

}  // namespace told
