#include "flyable.h"

namespace flyable {

using namespace definitions;

namespace {

const std::string begins = "2025-03-01";

void say_totals(support::Book& book, Without without) {
  logbook::BringsForward airframe = support::forward(
      kit, "1000.0", {support::had(support::starts(950)), support::had(support::landings(2000))});
  if (without == Without::airframe_total) {
    airframe.airframe.reset();
    airframe.unknown = {logbook::Unknown{}};
  }
  book.say(begins, airframe);
  logbook::BringsForward power =
      support::forward(engine, {support::had_hours("800.0"), support::had(support::starts(900))});
  if (without == Without::engine_total) {
    power.had = {support::had(support::starts(900))};
    power.unknown = {logbook::Unknown{}};
  }
  book.say(begins, power);
}

void say_programme(support::Book& book, Without without) {
  if (without == Without::programme) return;
  logbook::Task annual = task("annual inspection", kit, {period(12, PeriodUnit::calendar_months)});
  book.say(begins, annual);
  if (without == Without::last_done) return;
  book.say("2024-06-06", support::done("annual inspection", kit, "900.0"));
}

}  // namespace

support::Book complete_book(Without without) {
  support::Book book;
  book.say(begins, is_model(kit, "Larkwing 5"));
  say_totals(book, without);
  if (without != Without::no_engine)
    book.say(begins, support::fitted(engine, {kit, "engine 1", ""}));
  book.say(begins, required(logbook::Model{{"Larkwing 5"}}, "engine 1"));
  if (without == Without::place) book.say(begins, required(kit, "tail rotor"));
  say_programme(book, without);
  if (without != Without::limit) book.say(begins, on_condition(logbook::Model{{"TS-40"}}));
  if (without != Without::review) book.say(begins, reviewed(kit));
  return book;
}

void add_task(support::Book& book, const std::string& name, std::vector<logbook::Term> every) {
  book.say(begins, task(name, kit, std::move(every)));
  book.say(begins, support::done(name, kit, "1000.0"));
}

reckon::Ready ask(const support::Book& book, const std::string& as_of, const reckon::Trip& trip,
                  const reckon::Book& known) {
  const AsOf asked(book, as_of);
  reckon::Ready answer = reckon::ready(asked.histories, asked.standing, {kit, trip, known});
  return answer;
}

}  // namespace flyable
