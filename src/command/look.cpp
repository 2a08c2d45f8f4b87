// How a book is opened for a question: which day, which horizon.
#include <algorithm>

#include "command/book_view.h"
#include "command/the_book.h"
#include "sentence/frame.h"
#include "store/book.h"
#include "text/pieces.h"
#include "words/copies.h"
#include "words/words.h"

namespace command {

namespace {

using Refusal = std::optional<Unanswerable>;

struct Asked {
  quantity::Day as_of;
  std::optional<logbook::Horizon> horizon;
};

std::variant<quantity::Day, Unanswerable> read_option_day(const Typed& typed,
                                                          std::string_view option) {
  const std::string text = *typed.text(option);
  const auto day = quantity::read_day(text);
  if (day.is_read()) return day.value();
  return Unanswerable{"\"" + text + "\" is no day. Write it like 2026-03-04.", typed_wrongly};
}

// "K7QXM-130" of a writer whose entries are in the book.
std::optional<logbook::Head> read_head(std::string_view word,
                                       const std::vector<logbook::Entry>& entries) {
  const auto name = sentence::read_entry_name(word);
  if (!name) return std::nullopt;
  for (const logbook::Entry& entry : entries) {
    if (sentence::say_writer(entry.id.writer).starts_with(name->writer)) {
      return logbook::Head{entry.id.writer, name->number};
    }
  }
  return std::nullopt;
}

std::variant<logbook::Horizon, Unanswerable> read_horizon(
    const std::string& text, const std::vector<logbook::Entry>& entries) {
  logbook::Horizon horizon;
  for (const std::string_view piece : text::split(text, ' ')) {
    if (piece.empty()) continue;
    const std::string word(piece);
    const auto head = read_head(word, entries);
    if (!head) {
      return Unanswerable{"\"" + word + "\" names no base of this book. Write the horizon as it " +
                              "stands at the head of a sheet, like \"K7QXM-130\".",
                          typed_wrongly};
    }
    horizon.push_back(*head);
  }
  return horizon;
}

// Fills asked from the options; a refusal says what was wrong with them.
Refusal read_options(const Typed& typed, const World& world, const store::Book& book,
                     Asked& asked) {
  if (typed.has("--as-of")) {
    const auto day = read_option_day(typed, "--as-of");
    if (const auto* wrong = std::get_if<Unanswerable>(&day)) return *wrong;
    asked.as_of = std::get<quantity::Day>(day);
  }
  if (asked.as_of > world.today) {
    return Unanswerable{quantity::say(asked.as_of) + " has not happened yet: today is " +
                            quantity::say(world.today) + ". timeworn due --within looks ahead.",
                        typed_wrongly};
  }
  if (typed.has("--known")) {
    auto horizon = read_horizon(*typed.text("--known"), book.entries(std::nullopt));
    if (auto* wrong = std::get_if<Unanswerable>(&horizon)) return *wrong;
    asked.horizon = std::get<logbook::Horizon>(std::move(horizon));
  } else if (typed.has("--known-on")) {
    const auto day = read_option_day(typed, "--known-on");
    if (const auto* wrong = std::get_if<Unanswerable>(&day)) return *wrong;
    asked.horizon = book.known_on(std::get<quantity::Day>(day));
  }
  return std::nullopt;
}

// How old the copies elsewhere are is asked only of a book that is written here: of a copy that is
// looked at, this machine knows no more than that it wrote on.
std::string book_notice(const store::Book& book, quantity::Instant now) {
  if (const auto missing = book.missing()) return words::cut_or_older_text(*missing);
  const auto uncopied = book.goes_on_here() ? book.uncopied() : std::nullopt;
  if (!uncopied) return {};
  return words::not_copied_text({uncopied->entries, uncopied->since, uncopied->newest_copy}, now);
}

}  // namespace

std::variant<std::unique_ptr<BookView>, Unanswerable> look_into(const store::Book& book,
                                                                const Typed& typed, World& world) {
  const store::Look one_state(book);
  Asked asked;
  auto entries = book.entries(std::nullopt);
  take_the_record_clock(entries, world);
  asked.as_of = world.today;
  if (auto refusal = read_options(typed, world, book, asked)) return *refusal;
  if (asked.horizon) entries = book.entries(asked.horizon);
  auto view = view_of(std::move(entries), asked.as_of, world.today);
  view->own = book.writer();
  view->book_notice = book_notice(book, world.now);
  view->horizon = asked.horizon ? *asked.horizon : book.horizon();
  return view;
}

std::variant<std::unique_ptr<BookView>, Unanswerable> look(const Typed& typed, World& world) {
  return look_into(open_to_read(world), typed, world);
}

}  // namespace command
