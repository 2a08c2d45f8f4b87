#include <algorithm>
#include <ostream>
#include <set>

#include "command/book_view.h"
#include "command/commands.h"
#include "reckon/aboard.h"
#include "reckon/trend/margins.h"
#include "report/ready_answer.h"
#include "words/engines.h"

namespace command {

namespace {

Unanswerable bad_value(std::string_view option, const std::string& value,
                       std::string_view example) {
  return {"\"" + value + "\" cannot be read for " + std::string(option) + ". Write for example " +
              std::string(option) + " " + std::string(example) + ".",
          typed_wrongly};
}

std::optional<Unanswerable> read_count(const Typed& typed, std::string_view option,
                                       quantity::Cycles& count) {
  const auto text = typed.text(option);
  if (!text) return std::nullopt;
  const auto value = quantity::read_whole_count(*text);
  if (!value.is_read()) return bad_value(option, *text, "2");
  count = value.value();
  return std::nullopt;
}

std::optional<Unanswerable> read_hours_and_day(const Typed& typed, reckon::Trip& trip) {
  if (const auto text = typed.text("--hours")) {
    const auto hours = quantity::read_hours(*text);
    if (!hours.is_read() || hours.value().is_negative()) return bad_value("--hours", *text, "3.0");
    trip.hours = hours.value();
  }
  if (const auto text = typed.text("--by")) {
    const auto day = quantity::read_day(*text);
    if (!day.is_read()) return bad_value("--by", *text, "2026-03-04");
    trip.by = day.value();
  }
  return std::nullopt;
}

// "1236.2" on the aircraft's source meter.
std::optional<Unanswerable> read_meter(const Typed& typed, const BookView& view,
                                       const logbook::Aircraft& aircraft, reckon::Trip& trip) {
  const auto text = typed.text("--meter");
  if (!text) return std::nullopt;
  const auto reading = quantity::read_hour_meter(*text);
  if (!reading.is_read()) return bad_value("--meter", *text, "1236.2");
  const auto source = view.histories().source_meter(aircraft);
  if (!source) {
    return Unanswerable{"No meter is on record for " + aircraft.registration.text +
                            ", so a reading cannot be compared. Say for example: aircraft " +
                            aircraft.registration.text +
                            " counts airframe hours from collective meter.",
                        typed_wrongly};
  }
  trip.meter = logbook::MeterReading{*source, reading.value()};
  return std::nullopt;
}

std::optional<Unanswerable> read_trip(const Typed& typed, const BookView& view,
                                      const logbook::Aircraft& aircraft, reckon::Trip& trip) {
  if (auto wrong = read_hours_and_day(typed, trip)) return wrong;
  if (trip.by && *trip.by < view.as_of) {
    return Unanswerable{"The trip cannot end on " + quantity::say(*trip.by) + ": that is before " +
                            quantity::say(view.as_of) + ".",
                        typed_wrongly};
  }
  if (auto wrong = read_count(typed, "--starts", trip.starts)) return wrong;
  if (auto wrong = read_count(typed, "--landings", trip.landings)) return wrong;
  if (auto wrong = read_count(typed, "--flights", trip.flights)) return wrong;
  return read_meter(typed, view, aircraft, trip);
}

ExitCode exit_code(reckon::Answer answer) {
  switch (answer) {
    case reckon::Answer::yes:
      return done;
    case reckon::Answer::no:
      return attention;
    case reckon::Answer::not_known:
      return not_known;
  }
  return our_fault;
}

std::set<logbook::Engine> engines_aboard(const BookView& view, const logbook::Aircraft& aircraft) {
  std::set<logbook::Engine> engines;
  for (const logbook::Thing& thing : reckon::aboard(view.histories(), aircraft)) {
    if (const auto* engine = std::get_if<logbook::Engine>(&thing)) engines.insert(*engine);
  }
  return engines;
}

// A line about each engine aboard of which a start or a margin is on record: cruise margins always,
// the others where they warn.
std::vector<std::string> engines_of(const BookView& view, const logbook::Aircraft& aircraft) {
  const std::set<logbook::Engine> engines = engines_aboard(view, aircraft);
  const auto starts = reckon::judged_starts(view.histories(), view.standing);
  const auto series = reckon::trend::margin_series(view.histories(), view.standing, engines);
  std::vector<std::string> sentences;
  for (const logbook::Engine& engine : engines) {
    const auto last = std::find_if(starts.rbegin(), starts.rend(),
                                   [&](const auto& start) { return start.engine == engine; });
    std::vector<const reckon::trend::Series*> margins;
    for (const auto& one : series) {
      const bool is_told = one.check == logbook::CheckKind::cruise ||
                           reckon::trend::worry_of(one) != reckon::trend::Worry::none;
      if (one.engine == engine && is_told) margins.push_back(&one);
    }
    std::string sentence =
        words::engine_text(engine, last == starts.rend() ? nullptr : &*last, margins);
    if (!sentence.empty()) sentences.push_back(std::move(sentence));
  }
  return sentences;
}

}  // namespace

Answering answer_ready(const Typed& typed, const BookView& view) {
  const auto found = find_aircraft(view, typed.joined());
  if (const auto* why = std::get_if<Unanswerable>(&found)) return *why;
  const auto& aircraft = std::get<logbook::Aircraft>(found);
  reckon::Trip trip;
  if (auto wrong = read_trip(typed, view, aircraft, trip)) return *wrong;
  const reckon::Ready ready = view.ready(aircraft, trip);
  return Answered{report::ready_answer(view.histories(),
                                       {aircraft, trip, view.as_of, engines_of(view, aircraft)},
                                       ready, view.daily_sheet(aircraft)),
                  exit_code(ready.answer)};
}

const Command ready_command{
    "ready",
    "can I fly this?",
    "[AIRCRAFT]",
    "  timeworn ready ZZ-KIT --hours 3\n"
    "  timeworn ready ZZ-KIT --hours 1:30 --landings 4 --by 2026-03-06\n"
    "  timeworn ready ZZ-KIT --meter 1236.2\n"
    "\nThe exit code is 0 for yes, 1 for no, 3 for not known.\n",
    {{"--hours", "HOURS", "how long the trip is: 3, 1.5 or 1:30"},
     {"--starts", "N", "starts of each engine (else 1)"},
     {"--landings", "N", "landings (else 1)"},
     {"--flights", "N", "flights (else 1)"},
     {"--by", "DAY", "the day on which the trip ends (else today)"},
     {"--meter", "READING", "what the meter shows now; a gap is counted in"},
     as_of_option,
     known_option,
     known_on_option,
     json_option},
    run_asking<answer_ready>};

}  // namespace command
