#include "command/book_view.h"

#include <algorithm>
#include <map>
#include <ostream>

#include "document/render.h"
#include "reckon/aboard.h"
#include "reckon/apart.h"
#include "reckon/waiting.h"
#include "reckon/work.h"
#include "store/book.h"
#include "words/signings.h"
#include "words/words.h"

namespace command {

namespace {

using logbook::Entry;

const logbook::RecordBegins* begins(const std::vector<Entry>& entries) {
  for (const Entry& entry : entries) {
    if (!entry.said) continue;
    const auto* found = std::get_if<logbook::RecordBegins>(&entry.said->fact);
    if (found != nullptr) return found;
  }
  return nullptr;
}

// No beats not known, which beats yes.
int harshness(reckon::Answer answer) {
  switch (answer) {
    case reckon::Answer::yes:
      return 0;
    case reckon::Answer::not_known:
      return 1;
    case reckon::Answer::no:
      return 2;
  }
  return 2;
}

// Of two ways to read the record, the answer that lets less be flown.
reckon::Ready harsher(reckon::Ready a, reckon::Ready b) {
  if (harshness(a.answer) != harshness(b.answer)) {
    return harshness(a.answer) > harshness(b.answer) ? a : b;
  }
  const bool b_allows_less =
      a.allowed_hours && b.allowed_hours && *b.allowed_hours < *a.allowed_hours;
  return b_allows_less ? b : a;
}

// One way to read the record: the facts, in one order or both.
struct Way {
  const reckon::Standing* facts = nullptr;
  std::vector<const reckon::Histories*> orders;
};

Way way_of(const reckon::Standing& facts, const std::optional<reckon::Histories>& early,
           const std::optional<reckon::Histories>& late) {
  Way way{&facts, {&*early}};
  if (late) way.orders.push_back(&*late);
  return way;
}

std::vector<Way> ways_of(const BookView& view) {
  std::vector<Way> ways{way_of(view.standing, view.early, view.late)};
  for (const auto& other : view.others) {
    ways.push_back(way_of(other->standing, other->early, other->late));
  }
  return ways;
}

// The items with least left by any way and order.
template <class Items>
std::vector<reckon::Item> least_of(const BookView& view, const Items& items) {
  std::vector<std::vector<reckon::Item>> by_way;
  for (const Way& way : ways_of(view)) {
    by_way.push_back(items(*way.orders.front(), *way.facts));
    if (way.orders.size() < 2) continue;
    by_way.back() =
        reckon::harsher(std::move(by_way.back()), items(*way.orders.back(), *way.facts));
  }
  return reckon::with_least_left(std::move(by_way), view.are_all_read);
}

// Where not all ways were read, any of the open corrections may be about the aircraft.
void leave_undecided(const BookView& view, const logbook::Aircraft& aircraft,
                     reckon::Ready& ready) {
  if (ready.answer == reckon::Answer::yes) ready.answer = reckon::Answer::not_known;
  ready.allowed_hours.reset();
  for (const reckon::Question& question : view.standing.questions) {
    const bool is_told =
        std::any_of(ready.missing.begin(), ready.missing.end(),
                    [&](const auto& one) { return one.question == question.name; });
    if (is_told || question.class_ != "two corrections") continue;
    reckon::Missing open;
    open.condition = reckon::Condition::questions;
    open.thing = aircraft;
    open.question = question.name;
    open.entries = question.entries;
    ready.missing.push_back(std::move(open));
  }
}

// The record with its corrections made apart decided in the other ways.
void read_otherwise(BookView& view) {
  reckon::WaysToDecide ways = reckon::ways_to_decide(view.standing.made_apart);
  view.are_all_read = ways.are_all;
  for (const reckon::Decided& way : ways.others) {
    auto other = std::make_unique<OtherReading>();
    other->standing = reckon::standing(view.entries, view.as_of, way);
    other->early.emplace(other->standing, view.as_of, reckon::Ambiguous::early);
    if (other->early->has_ambiguous_order()) {
      other->late.emplace(other->standing, view.as_of, reckon::Ambiguous::late);
    }
    view.others.push_back(std::move(other));
  }
}

// The newest day in the entries of each other base that joined (docs/decisions/0010).
bool are_all_heard(const std::vector<Entry>& entries, const logbook::WriterId& own,
                   std::optional<quantity::Day> last_flight) {
  std::map<logbook::WriterId, quantity::Day> heard;
  for (const Entry& entry : entries) {
    if (!entry.said || entry.id.writer == own) continue;
    if (std::holds_alternative<logbook::BaseJoins>(entry.said->fact)) {
      heard.emplace(entry.id.writer, entry.said->day);
    }
  }
  for (const Entry& entry : entries) {
    const auto base = heard.find(entry.id.writer);
    if (base != heard.end() && entry.said) base->second = std::max(base->second, entry.said->day);
  }
  return !last_flight || std::all_of(heard.begin(), heard.end(),
                                     [&](const auto& base) { return base.second >= *last_flight; });
}

// Whether the work was done on this aircraft, or to what is on it now; on another thing, to itself.
bool is_work_on(const BookView& view, const logbook::Fact& work, const logbook::Thing& thing) {
  const logbook::Thing subject = reckon::subject_of_work(work);
  if (subject == thing) return true;
  const auto aircraft = reckon::aircraft_at(view.histories(), subject, view.histories().now());
  return aircraft && logbook::Thing(*aircraft) == thing;
}

// Work that would change an answer if it were signed as the record asks, with why it does not
// count.
void add_unsigned_work(const BookView& view, const std::optional<logbook::Thing>& only,
                       report::Sheet& head) {
  for (const reckon::StandingFact& fact : view.standing.facts) {
    if (fact.is_counted || (only && !is_work_on(view, fact.said->fact, *only))) continue;
    if (!reckon::waits(fact, view.histories(), view.standing)) continue;
    head.left_out.push_back(words::not_counted_text(fact));
  }
}

}  // namespace

report::Sheet BookView::sheet() const {
  report::Sheet sheet;
  sheet.as_of = as_of;
  sheet.horizon = horizon;
  sheet.tenths = settings.tenths;
  for (const reckon::Question& question : standing.questions) {
    if (question.class_ == "two corrections") {
      sheet.notices.push_back(words::question_text(question));
    }
  }
  return sheet;
}

report::Sheet BookView::sheet_with_gaps(const std::optional<logbook::Aircraft>& only) const {
  report::Sheet head = sheet_with_work(only);
  for (const reckon::StandingFact& fact : standing.facts) {
    const auto* flew = std::get_if<logbook::Flew>(&fact.said->fact);
    if (flew == nullptr || (only && *only != flew->aircraft)) continue;
    for (const logbook::AcceptedDoubt& accepted : fact.said->although) {
      if (!words::tells_of_missing_hours(accepted.doubt)) continue;
      head.left_out.push_back(words::missing_hours_text(accepted.doubt, fact.chain.back()));
    }
  }
  return head;
}

report::Sheet BookView::sheet_with_work(const std::optional<logbook::Thing>& only) const {
  report::Sheet head = sheet();
  add_unsigned_work(*this, only, head);
  return head;
}

report::Sheet BookView::daily_sheet(const logbook::Aircraft& aircraft) const {
  report::Sheet head = sheet_with_gaps(aircraft);
  if (!book_notice.empty()) head.notices.push_back(book_notice);
  return head;
}

std::vector<reckon::Item> BookView::due(const logbook::Aircraft& aircraft,
                                        const reckon::Soon& soon) const {
  return least_of(*this, [&](const auto& histories, const auto& facts) {
    return reckon::due(histories, facts, aircraft, soon);
  });
}

std::vector<reckon::Item> BookView::lives() const {
  return least_of(*this, [](const auto& histories, const auto& facts) {
    return reckon::lives(histories, facts);
  });
}

reckon::Ready BookView::ready(const logbook::Aircraft& aircraft, const reckon::Trip& trip) const {
  reckon::Book book;
  book.review_days = settings.review_days;
  book.all_bases_heard = are_all_heard(entries, own, early->last_flight(aircraft));
  std::optional<reckon::Ready> least;
  for (const Way& way : ways_of(*this)) {
    for (const reckon::Histories* histories : way.orders) {
      reckon::Ready here = reckon::ready(*histories, *way.facts, {aircraft, trip, book});
      least = least ? harsher(std::move(*least), std::move(here)) : std::move(here);
    }
  }
  if (!are_all_read) leave_undecided(*this, aircraft, *least);
  return std::move(*least);
}

Settings settings_of(const std::vector<Entry>& entries) {
  Settings settings;
  const auto* record = begins(entries);
  if (record == nullptr) return settings;
  settings.record_name = record->name.text;
  settings.tenths = record->tenths.value_or(settings.tenths);
  settings.review_days = record->review_days.value_or(settings.review_days);
  return settings;
}

void take_the_record_clock(const std::vector<Entry>& entries, World& world) {
  const auto* record = begins(entries);
  if (record == nullptr || !record->for_tests || !record->clock) return;
  world.now = *record->clock;
  world.today = quantity::utc_day(world.now);
}

std::unique_ptr<BookView> view_of(std::vector<Entry> entries, quantity::Day as_of,
                                  quantity::Day today) {
  auto view = std::make_unique<BookView>();
  view->entries = std::move(entries);
  view->as_of = as_of;
  view->today = today;
  view->settings = settings_of(view->entries);
  view->standing = reckon::standing(view->entries, as_of);
  view->early.emplace(view->standing, as_of, reckon::Ambiguous::early);
  if (view->early->has_ambiguous_order()) {
    view->late.emplace(view->standing, as_of, reckon::Ambiguous::late);
  }
  read_otherwise(*view);
  return view;
}

Answering look_and_answer(const Typed& typed, World& world, AnswerTo answer) {
  auto looked = look(typed, world);
  if (auto* why = std::get_if<Unanswerable>(&looked)) return std::move(*why);
  return answer(typed, *std::get<std::unique_ptr<BookView>>(looked));
}

ExitCode ask(const Typed& typed, World& world, AnswerTo answer) {
  const Answering given = look_and_answer(typed, world, answer);
  if (const auto* why = std::get_if<Unanswerable>(&given)) return say_unanswerable(*why, world);
  say_answer(std::get<Answered>(given).answer, typed, world);
  return std::get<Answered>(given).code;
}

Answered answered(report::Answer answer) {
  const ExitCode code = answer.needs_attention ? attention : done;
  return {std::move(answer), code};
}

Answered answered(report::Answer answer, const BookView& view) {
  if (!view.standing.made_apart.empty()) answer.needs_attention = true;
  return answered(std::move(answer));
}

ExitCode say_answer(const report::Answer& answer, const Typed& typed, World& world) {
  if (typed.has("--json")) {
    *world.out << answer.json.in_lines() << '\n';
  } else {
    *world.out << document::render(answer.document, document::Format::text, world.columns);
  }
  return answer.needs_attention ? attention : done;
}

ExitCode say_unanswerable(const Unanswerable& why, World& world) {
  tell(*world.err, why.sentence + "\n");
  return why.code;
}

}  // namespace command
