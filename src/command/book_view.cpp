#include "command/book_view.h"

#include <algorithm>
#include <ostream>

#include "document/render.h"
#include "store/book.h"
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

bool is_alone(const std::vector<Entry>& entries, const logbook::Horizon& horizon) {
  return std::all_of(entries.begin(), entries.end(), [&](const Entry& entry) {
    return horizon.empty() || entry.id.writer == entries.front().id.writer;
  });
}

}  // namespace

report::Sheet BookView::sheet() const {
  report::Sheet sheet;
  sheet.as_of = as_of;
  sheet.horizon = horizon;
  sheet.tenths = settings.tenths;
  return sheet;
}

std::vector<reckon::Item> BookView::due(const logbook::Aircraft& aircraft,
                                        const reckon::Soon& soon) const {
  auto items = reckon::due(*early, standing, aircraft, soon);
  if (!late) return items;
  return reckon::harsher(std::move(items), reckon::due(*late, standing, aircraft, soon));
}

std::vector<reckon::Item> BookView::lives() const {
  auto items = reckon::lives(*early, standing);
  if (!late) return items;
  return reckon::harsher(std::move(items), reckon::lives(*late, standing));
}

reckon::Ready BookView::ready(const logbook::Aircraft& aircraft, const reckon::Trip& trip) const {
  reckon::Book book;
  book.review_days = settings.review_days;
  book.all_bases_heard = is_alone(entries, horizon);
  reckon::Ready first = reckon::ready(*early, standing, aircraft, trip, book);
  if (!late) return first;
  return reckon::harsher(std::move(first), reckon::ready(*late, standing, aircraft, trip, book));
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
  return view;
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
  *world.err << why.sentence << '\n';
  return why.code;
}

}  // namespace command
