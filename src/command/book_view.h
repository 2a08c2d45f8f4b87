// command/book_view.h: a book as an asking command sees it: loaded once, inside a horizon, reckoned
// as of a day. The spine of every asking command.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <variant>
#include <vector>

#include "command/command.h"
#include "reckon/due.h"
#include "reckon/histories.h"
#include "reckon/ready.h"
#include "reckon/standing.h"
#include "report/sheet.h"
#include "store/book.h"

namespace command {

// The record's own settings, from its first entry.
struct Settings {
  std::string record_name;
  quantity::TenthsRule tenths = quantity::TenthsRule::half_up;
  std::int64_t review_days = 30;
};

// The record with corrections made apart decided in one of the other ways.
struct OtherReading {
  reckon::Standing standing;
  std::optional<reckon::Histories> early;
  std::optional<reckon::Histories> late;
};

// Everything that answers rest on. Members point into one another, so it is not moved.
struct BookView {
  std::vector<logbook::Entry> entries;
  logbook::Horizon horizon;
  quantity::Day as_of;
  quantity::Day today;
  Settings settings;
  reckon::Standing standing;
  std::optional<reckon::Histories> early;  // work before the day's flights where nothing tells
  std::optional<reckon::Histories> late;   // only if an order within a day is ambiguous
  std::vector<std::unique_ptr<OtherReading>> others;
  bool are_all_read = true;  // whether these are all the ways to decide (reckon/apart.h)
  logbook::WriterId own;     // the writer of this book
  std::string book_notice;   // that copies elsewhere are too old, or that the book is; or empty

  // The reckoning that most figures are shown from.
  const reckon::Histories& histories() const { return *early; }
  report::Sheet sheet() const;
  // With the work on one thing (an aircraft: also on what is aboard), or on all, that would change
  // an answer if it were signed as the record asks.
  report::Sheet sheet_with_work(const std::optional<logbook::Thing>& only) const;
  // Further with hours that were accepted as missing.
  report::Sheet sheet_with_gaps(const std::optional<logbook::Aircraft>& only) const;
  // The same with the notice about the book and its copies, for the answers that are looked at
  // every day.
  report::Sheet daily_sheet(const logbook::Aircraft& aircraft) const;
  // The due list with the harsher of both orders, and of corrections made apart; the lives
  // likewise.
  std::vector<reckon::Item> due(const logbook::Aircraft& aircraft,
                                const reckon::Soon& soon = {}) const;
  std::vector<reckon::Item> lives() const;
  reckon::Ready ready(const logbook::Aircraft& aircraft, const reckon::Trip& trip) const;
};

// A sentence that says why the question cannot be answered, with its exit code.
struct Unanswerable {
  std::string sentence;
  ExitCode code = typed_wrongly;
};

// Opens the book, reads the options --as-of, --known, --known-on, loads and reckons.
std::variant<std::unique_ptr<BookView>, Unanswerable> look(const Typed& typed, World& world);

// The same of a book that is open.
std::variant<std::unique_ptr<BookView>, Unanswerable> look_into(const store::Book& book,
                                                                const Typed& typed, World& world);

// The reckoning of entries at hand, as of a day: for the receipt after an entry.
std::unique_ptr<BookView> view_of(std::vector<logbook::Entry> entries, quantity::Day as_of,
                                  quantity::Day today);

Settings settings_of(const std::vector<logbook::Entry>& entries);
// The day in the record's world: a record begun for tests has a fixed clock.
void take_the_record_clock(const std::vector<logbook::Entry>& entries, World& world);

// Finds what a person means by a name: "ZZ-KIT", "E-1001", "disc T1-77", "engine TS-40 E-1001".
std::variant<logbook::Thing, Unanswerable> find_thing(const BookView& view,
                                                      const std::string& name);
std::variant<logbook::Aircraft, Unanswerable> find_aircraft(const BookView& view,
                                                            const std::string& name);

// What an asking command answers; print puts the same answers on paper.
struct Answered {
  report::Answer answer;
  ExitCode code = done;
};
using Answering = std::variant<Answered, Unanswerable>;
Answering answer_ready(const Typed& typed, const BookView& view);
Answering answer_due(const Typed& typed, const BookView& view);
Answering answer_lives(const Typed& typed, const BookView& view);
Answering answer_trend(const Typed& typed, const BookView& view);
Answering answer_fleet(const Typed& typed, const BookView& view);
Answering answer_history(const Typed& typed, const BookView& view);

using AnswerTo = Answering (*)(const Typed& typed, const BookView& view);

// Looks into the book and answers.
Answering look_and_answer(const Typed& typed, World& world, AnswerTo answer);
// What an asking command does: looks, answers, writes the answer; gives the exit code.
ExitCode ask(const Typed& typed, World& world, AnswerTo answer);
template <AnswerTo answer>
ExitCode run_asking(const Typed& typed, World& world) {
  return ask(typed, world, answer);
}
// Writes the answer in the form asked for, and gives the exit code.
Answered answered(report::Answer answer);  // attention if it needs some, else done
// The same of what rests on the whole record: a correction that is not decided wants attention too.
Answered answered(report::Answer answer, const BookView& view);
ExitCode say_answer(const report::Answer& answer, const Typed& typed, World& world);
ExitCode say_unanswerable(const Unanswerable& why, World& world);

}  // namespace command
