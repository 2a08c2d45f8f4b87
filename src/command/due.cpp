#include "command/book_view.h"
#include "command/commands.h"
#include "report/due_list.h"

namespace command {

namespace {

// "25 h", "30 days", "10 landings": widens what counts as soon.
std::optional<Unanswerable> read_within(const std::string& text, reckon::Soon& soon) {
  const auto blank = text.find(' ');
  const std::string number = text.substr(0, blank);
  const std::string unit = blank == std::string::npos ? std::string() : text.substr(blank + 1);
  const auto hours = quantity::read_hours(number);
  const auto whole = quantity::read_whole(number);
  if (unit == "h" && hours.is_read()) {
    soon.hours = hours.value();
  } else if (unit.starts_with("day") && whole.is_read()) {
    soon.days = quantity::Days::of(whole.value());
  } else if (!unit.empty() && whole.is_read()) {
    soon.count = quantity::whole_cycles(whole.value());
  } else {
    return Unanswerable{
        "\"" + text + "\" is no distance. Write \"25 h\", \"30 days\" or " + "\"10 landings\".",
        typed_wrongly};
  }
  return std::nullopt;
}

}  // namespace

Answering answer_due(const Typed& typed, const BookView& view) {
  const auto aircraft = find_aircraft(view, typed.joined());
  if (const auto* why = std::get_if<Unanswerable>(&aircraft)) return *why;
  reckon::Soon soon;
  if (const auto within = typed.text("--within")) {
    if (const auto wrong = read_within(*within, soon)) return *wrong;
  }
  const auto& which = std::get<logbook::Aircraft>(aircraft);
  return answered(
      report::due_list(view.histories(), which, view.due(which, soon), view.daily_sheet(which)),
      view);
}

const Command due_command{
    "due",
    "what falls due next, in order",
    "[AIRCRAFT]",
    "  timeworn due ZZ-KIT\n"
    "  timeworn due ZZ-KIT --within '30 days'\n"
    "  timeworn due ZZ-KIT --as-of 2026-03-04 --json\n",
    {{"--within", "DISTANCE", "call it soon within \"25 h\", \"30 days\" or \"10 landings\""},
     as_of_option,
     known_option,
     known_on_option,
     json_option},
    run_asking<answer_due>};

}  // namespace command
