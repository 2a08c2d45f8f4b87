#include <ostream>

#include "command/commands.h"
#include "command/enter.h"
#include "command/the_book.h"
#include "logbook/fact_record.h"
#include "store/book.h"
#include "text/visible.h"

namespace command {

namespace {

struct Begun {
  logbook::Said said;
  std::string wrong;
};

// A record for tests has a fixed clock and seed, so that the same words make the same bytes.
void take_test_options(const Typed& typed, World& world, logbook::RecordBegins& record,
                       std::string& wrong) {
  if (!typed.has("--for-tests")) return;
  record.for_tests = true;
  const auto clock = quantity::read_instant(typed.text("--clock").value_or(""));
  const auto seed = quantity::read_whole(typed.text("--seed").value_or("1"));
  if (!clock.is_read() || !seed.is_read()) {
    wrong =
        "A record for tests needs --clock, like --clock 2026-03-05T08:00:00Z, and a whole "
        "number for --seed.";
    return;
  }
  record.clock = clock.value();
  record.seed = seed.value();
  world.now = clock.value();
  world.today = quantity::utc_day(clock.value());
}

void take_settings(const Typed& typed, logbook::RecordBegins& record, std::string& wrong) {
  if (typed.has("--utc-days")) record.deferrals = logbook::DayKind::utc_day;
  if (typed.has("--tenths-half-down")) record.tenths = quantity::TenthsRule::half_down;
  if (const auto days = typed.text("--review-days")) {
    const auto number = quantity::read_whole(*days);
    if (number.is_read() && number.value() > 0) {
      record.review_days = number.value();
    } else {
      wrong = "\"" + *days + "\" is no number of days.";
    }
  }
}

Begun begins(const Typed& typed, World& world) {
  Begun begun;
  logbook::RecordBegins record;
  record.name.text = typed.joined();
  record.deferrals = logbook::DayKind::local_day;
  record.tenths = quantity::TenthsRule::half_up;
  take_test_options(typed, world, record, begun.wrong);
  take_settings(typed, record, begun.wrong);
  begun.said.day = world.today;
  begun.said.fact = std::move(record);
  return begun;
}

ExitCode run_new(const Typed& typed, World& world) {
  if (typed.operands.empty()) {
    *world.err << "A record has a name. Say for example: timeworn new 'Marrow Point'\n";
    return typed_wrongly;
  }
  Begun begun = begins(typed, world);
  if (!begun.wrong.empty()) {
    tell(*world.err, begun.wrong + " Nothing was made.\n");
    return typed_wrongly;
  }
  // What is said must be what people could have typed: a bad name is refused like any sentence.
  const auto read = sentence::read(sentence::say(begun.said), {});
  if (!read.said) {
    tell(*world.err, "\"" + text::visible_line(typed.joined()) +
                         "\" cannot be a record's name. Nothing was made.\n");
    return typed_wrongly;
  }
  store::Book::make(world.book_path, *read.said, surroundings(world));
  world.has_saved = true;
  warn_of_place(world.book_path, world);
  tell(*world.out, "Made the book " + text::visible_line(world.book_path) +
                       ".\nSaved: " + sentence::say(*read.said) + "\n");
  *world.out << "Next, say what there is: timeworn say 'aircraft ZZ-KIT is model \"Larkwing "
                "5\"'\n";
  return done;
}

}  // namespace

const Command new_command{
    "new",
    "begin a book",
    "NAME",
    "  timeworn new 'Marrow Point'\n"
    "  timeworn new 'Marrow Point' --book /tmp/trial.db\n",
    {{"--utc-days", "", "deferrals run by UTC days (else by local days)"},
     {"--tenths-half-down", "", "minutes to tenths by the half-down table (else half-up)"},
     {"--review-days", "N", "how old a review of directives may be for a yes (else 30)"},
     {"--for-tests", "", "a record with a fixed clock and seed, never for real use"},
     {"--clock", "INSTANT", "with --for-tests: 2026-03-05T08:00:00Z"},
     {"--seed", "N", "with --for-tests: where chance comes from"}},
    run_new};

}  // namespace command
