#include "support/entries.h"

#include <algorithm>
#include <stdexcept>
#include <utility>

namespace support {

namespace {

template <class T>
T taken(const quantity::Typed<T>& typed, const std::string& text) {
  if (!typed.is_read()) throw std::invalid_argument("the test says " + text);
  return typed.value();
}

std::optional<quantity::Hours> stated(const std::string& text) {
  if (text.empty()) return std::nullopt;
  return hours(text);
}

std::vector<logbook::CountAt> everywhere(const std::vector<logbook::Count>& counts) {
  std::vector<logbook::CountAt> all;
  for (const logbook::Count& each : counts) all.push_back({each, std::nullopt});
  return all;
}

logbook::WriterId writer(char base) {
  logbook::WriterId id;
  id.bytes.fill(static_cast<std::uint8_t>(base));
  return id;
}

}  // namespace

quantity::Day day(const std::string& text) { return taken(quantity::read_day(text), text); }
quantity::Hours hours(const std::string& text) { return taken(quantity::read_hours(text), text); }
quantity::HourMeter meter(const std::string& text) {
  return taken(quantity::read_hour_meter(text), text);
}
quantity::ClockTime clock(const std::string& text) {
  return taken(quantity::read_clock_time(text), text);
}
quantity::ServiceHours service(const std::string& text) {
  return quantity::service_hours(hours(text));
}

logbook::Aircraft aircraft(const std::string& registration) { return {{registration}}; }
logbook::Engine engine(const std::string& model, const std::string& serial) {
  return {{model}, {serial}};
}
logbook::Part part(const std::string& number, const std::string& serial) {
  return {{number}, {serial}};
}
logbook::PlaceName place(const std::string& text) { return {text}; }

logbook::Count starts(std::int64_t whole) {
  return {quantity::whole_cycles(whole), {logbook::CounterKind::starts, ""}};
}
logbook::Count landings(std::int64_t whole) {
  return {quantity::whole_cycles(whole), {logbook::CounterKind::landings, ""}};
}
logbook::Count flights(std::int64_t whole) {
  return {quantity::whole_cycles(whole), {logbook::CounterKind::flights, ""}};
}
logbook::Count count(logbook::CounterKind kind, const std::string& amount) {
  return {taken(quantity::read_cycles(amount), amount), {kind, ""}};
}
logbook::CountAt at(const logbook::Count& count, const std::string& place) {
  return {count, logbook::PlaceName{place}};
}
logbook::MeterRun run(const std::string& name, const std::string& from, const std::string& to) {
  return {{name}, meter(from), meter(to)};
}

logbook::Had had_hours(const std::string& text, std::optional<logbook::Basis> since) {
  return {logbook::Grade::exact, logbook::ClockHours{hours(text), std::nullopt}, since};
}
logbook::Had had(const logbook::Count& count, std::optional<logbook::Basis> since) {
  return {logbook::Grade::exact, count, since};
}

logbook::BringsForward forward(const logbook::Aircraft& aircraft, const std::string& airframe,
                               std::vector<logbook::Had> had) {
  logbook::BringsForward fact;
  fact.thing = aircraft;
  fact.airframe = stated(airframe);
  fact.had = std::move(had);
  return fact;
}
logbook::BringsForward forward(const logbook::Thing& thing, std::vector<logbook::Had> had) {
  logbook::BringsForward fact;
  fact.thing = thing;
  fact.had = std::move(had);
  return fact;
}
logbook::CountsHours counts_from(const logbook::Aircraft& aircraft, const std::string& name,
                                 const std::string& factor) {
  logbook::CountsHours fact;
  fact.aircraft = aircraft;
  if (!name.empty()) fact.source = logbook::MeterName{name};
  if (!factor.empty()) fact.factor = taken(quantity::read_factor(factor), factor);
  return fact;
}
logbook::Flew flew(const logbook::Aircraft& aircraft, const std::string& text,
                   std::vector<logbook::Count> counts, std::vector<logbook::MeterRun> meters) {
  logbook::Flew fact;
  fact.aircraft = aircraft;
  fact.hours = hours(text);
  fact.counts = everywhere(counts);
  fact.meters = std::move(meters);
  return fact;
}
logbook::Ran ran(const logbook::Aircraft& aircraft, const std::string& place,
                 std::vector<logbook::Count> counts) {
  logbook::Ran fact;
  fact.aircraft = aircraft;
  fact.place = {place};
  fact.counts = std::move(counts);
  return fact;
}
logbook::Tried tried(const logbook::Aircraft& aircraft, const std::string& place,
                     std::int64_t number) {
  logbook::Tried fact;
  fact.aircraft = aircraft;
  fact.place = {place};
  fact.counts = {starts(number)};
  return fact;
}
logbook::Unaccounted unaccounted(const logbook::Aircraft& aircraft, const std::string& text,
                                 std::vector<logbook::MeterRun> meters) {
  return {aircraft, hours(text), std::move(meters)};
}

logbook::Fitted fitted(const logbook::Thing& thing, const Where& where,
                       std::vector<logbook::Had> with) {
  logbook::Fitted fact;
  fact.thing = thing;
  fact.host = where.host;
  fact.place = {where.place};
  fact.airframe = stated(where.airframe);
  fact.with = std::move(with);
  return fact;
}
logbook::Removed removed(const logbook::Thing& thing, const Where& where) {
  logbook::Removed fact;
  fact.thing = thing;
  fact.host = where.host;
  fact.place = {where.place};
  fact.airframe = stated(where.airframe);
  return fact;
}
logbook::Done done(const std::string& task, const logbook::Thing& thing,
                   const std::string& airframe) {
  logbook::Done fact;
  fact.name = {task};
  fact.thing = thing;
  fact.airframe = stated(airframe);
  return fact;
}
logbook::Overhauled overhauled(const logbook::Thing& thing, std::vector<logbook::Had> had) {
  return {thing, std::move(had)};
}
logbook::CountingRule rule(const logbook::Scope& scope, logbook::CounterKind counter,
                           std::vector<logbook::Each> each) {
  logbook::CountingRule fact;
  fact.scope = scope;
  fact.counter = {counter, ""};
  fact.each = std::move(each);
  return fact;
}
logbook::Each each(logbook::CountedEvent event, const std::string& weight) {
  return {taken(quantity::read_weight(weight), weight), event};
}

void Book::hear() {
  std::map<logbook::WriterId, std::int64_t> newest;
  for (const logbook::Entry& entry : entries_) {
    newest[entry.id.writer] = std::max(newest[entry.id.writer], entry.id.number);
  }
  newest.erase(writer(base_));
  std::vector<logbook::Knows>& heard = heard_[base_];
  heard.clear();
  for (const auto& [of, number] : newest) heard.push_back({of, number, {}});
}

logbook::EntryId Book::say(const std::string& text, logbook::Fact fact) {
  logbook::Said said;
  said.day = day(text);
  said.fact = std::move(fact);
  return say(std::move(said));
}

logbook::EntryId Book::say(logbook::Said said) {
  logbook::Entry entry;
  entry.id.writer = writer(base_);
  entry.id.number = 1 + std::count_if(entries_.begin(), entries_.end(), [&](const auto& other) {
                      return other.id.writer == entry.id.writer;
                    });
  entry.id.digest[0] = static_cast<std::uint8_t>(base_);
  entry.id.digest[1] = static_cast<std::uint8_t>(entry.id.number % 256);
  entry.frame.writer = entry.id.writer;
  entry.frame.number = entry.id.number;
  entry.frame.knows = std::exchange(heard_[base_], {});
  entry.frame.refers = std::exchange(refers_, {});
  entry.said = std::move(said);
  entries_.push_back(entry);
  return entry.id;
}

Book& Book::refer(const logbook::EntryId& entry) {
  refers_ = {entry};
  return *this;
}

logbook::EntryName Book::named(const logbook::EntryId& entry) {
  refer(entry);
  return {std::string(1, static_cast<char>(entry.writer.bytes[0])), entry.number};
}

logbook::EntryId Book::correct(const logbook::EntryId& entry, const std::string& text,
                               logbook::Fact fact) {
  logbook::Said instead;
  instead.day = day(text);
  instead.fact = std::move(fact);
  logbook::Said said;
  said.day = instead.day;
  said.fact = logbook::Corrected{named(entry), "typed wrongly", logbook::InnerSaid(instead)};
  return say(std::move(said));
}

logbook::EntryId Book::strike(const logbook::EntryId& entry) {
  logbook::Said said;
  said.day = day("2026-01-01");
  said.fact = logbook::Struck{named(entry), "entered twice"};
  return say(std::move(said));
}

}  // namespace support
