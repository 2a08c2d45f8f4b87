#include "reckon/check.h"

#include <algorithm>
#include <tuple>

#include "command/book_view.h"
#include "command/commands.h"
#include "command/heads.h"
#include "command/the_book.h"
#include "report/record_check.h"
#include "store/book.h"
#include "store/trust.h"
#include "words/words.h"

namespace command {

namespace {

using report::BookFault;

// In one order, whatever the order in which each way gives them.
template <class Rows, class Key>
Rows sorted(Rows rows, Key key) {
  std::sort(rows.begin(), rows.end(),
            [&](const auto& a, const auto& b) { return key(a) < key(b); });
  return rows;
}

std::vector<logbook::RunningTotal> sorted_totals(std::vector<logbook::RunningTotal> totals) {
  return sorted(std::move(totals), [](const logbook::RunningTotal& total) {
    return std::tie(total.place, total.key, total.day);
  });
}

std::vector<logbook::UseRow> sorted_uses(std::vector<logbook::UseRow> uses) {
  return sorted(std::move(uses), [](const logbook::UseRow& use) {
    return std::tie(use.place, use.key, use.day, use.order, use.entry);
  });
}

// Three ways to each total: the fold here, the running totals kept, and SQL's own sum.
void compare_totals(const store::Book& book, const logbook::DerivedUse& fold,
                    report::Checked& checked) {
  if (sorted_totals(book.running_totals(fold.aircraft)) != sorted_totals(fold.totals)) {
    checked.faults.push_back({"totals", "",
                              "The running totals of " + fold.aircraft +
                                  " are not those of its entries. Say timeworn rebuild."});
  }
  if (sorted_uses(book.uses(fold.aircraft)) != sorted_uses(fold.uses)) {
    checked.faults.push_back({"uses", "",
                              "The use rows of " + fold.aircraft +
                                  " are not those of its entries. Say timeworn rebuild."});
  }
  for (const auto& total : fold.totals) {
    ++checked.figures_compared;
    if (book.summed(total) == total.total) continue;
    checked.faults.push_back({"sums", "",
                              "The sum of " + total.key + " of " + fold.aircraft + " on " +
                                  quantity::say(total.day) + " differs. Say timeworn rebuild."});
  }
}

bool accepts(const std::vector<logbook::Entry>& entries, const reckon::RecordFinding& finding) {
  const std::string doubt = words::doubt_text(finding.objection);
  for (const auto& entry : entries) {
    if (!(entry.id == finding.entry) || !entry.said) continue;
    const auto* corrected = std::get_if<logbook::Corrected>(&entry.said->fact);
    const logbook::Said& carrier = corrected != nullptr ? *corrected->instead : *entry.said;
    for (const auto& accepted : carrier.although) {
      if (accepted.doubt == doubt) return true;
    }
  }
  return false;
}

void take_findings(const BookView& view, report::Checked& checked) {
  for (auto& finding : reckon::check_record(view.entries, view.as_of)) {
    auto& list = accepts(view.entries, finding) ? checked.accepted : checked.findings;
    list.push_back(std::move(finding));
  }
  checked.refused = report::refused_signatures(view.histories(), view.standing);
  checked.questions = view.standing.questions;
  const auto& more = view.histories().questions();
  checked.questions.insert(checked.questions.end(), more.begin(), more.end());
}

// The chain itself, without what its entries say.
void take_trust(const std::vector<store::Trust>& trusted, report::Checked& checked) {
  for (const store::Trust& one : trusted) {
    checked.proved.push_back(
        {words::head_name({one.writer, one.newest}), words::head_name({one.writer, one.proved}),
         words::head_name({one.writer, one.next}), one.proved > 0, one.proved == one.newest});
  }
}

// Tables of another form hold what can be worked out again, but nothing in them was compared.
constexpr std::string_view other_form =
    "The tables of worked-out figures are of another version, so they were not compared: the book "
    "is not fully proved. The next entry or timeworn rebuild makes them anew.";
constexpr std::string_view newer_version =
    "It was written by a newer Timeworn, and what this version does not know was not looked at: "
    "the book is not fully proved. Check it with that version.";

void take_book(const store::Book& book, const std::vector<store::Finding>& findings,
               report::Checked& checked) {
  bool has_other_form = false;
  for (const store::Finding& finding : findings) {
    has_other_form = has_other_form || finding.what == "form";
    if (finding.what == "form") continue;
    checked.faults.push_back(
        {finding.what, finding.entry ? words::entry_name(*finding.entry) : "", finding.detail});
  }
  if (has_other_form) checked.faults.push_back({"form", "", std::string(other_form)});
  if (!book.is_of_newer_version()) return;
  checked.faults.push_back({"version", "", std::string(newer_version)});
}

// Each head of an old sheet that the book does not hold is a fault.
std::optional<Unanswerable> take_sheet(const Typed& typed, const BookView& view,
                                       report::Checked& checked) {
  const auto text = typed.text("--against");
  if (!text) return std::nullopt;
  const auto compared = compare_heads(*text, view.entries);
  if (const auto* why = std::get_if<Unanswerable>(&compared)) return *why;
  for (const Compared& one : std::get<std::vector<Compared>>(compared)) {
    if (one.is_held) {
      checked.notes.push_back(one.sentence);
    } else {
      checked.faults.push_back({"sheet", one.head, one.sentence});
    }
  }
  return std::nullopt;
}

void take_figures(const store::Book& book, const BookView& view, report::Checked& checked) {
  if (!book.has_our_derived_form()) return;
  for (const logbook::Thing& thing : view.histories().things()) {
    const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
    if (aircraft == nullptr) continue;
    compare_totals(book, view.histories().derived(*aircraft, *quantity::make_day({1900, 1, 1})),
                   checked);
  }
}

// A book whose entries cannot be read at all gives no view, but what was found stands.
std::variant<std::unique_ptr<BookView>, BookFault> view_of_book(const store::Book& book,
                                                                const Typed& typed, World& world) {
  try {
    return std::get<std::unique_ptr<BookView>>(look_into(book, typed, world));
  } catch (const store::Trouble& trouble) {
    if (trouble.what().kind != logbook::TroubleKind::damaged) throw;
    return BookFault{"file", "", trouble.what().detail};
  }
}

report::Sheet sheet_without_view(const World& world) {
  report::Sheet sheet;
  sheet.as_of = world.today;
  return sheet;
}

struct Looked {
  report::Checked checked;
  report::Sheet sheet;
};
using Looking = std::variant<Looked, Unanswerable>;

Looking look_through(const store::Book& book, const Typed& typed, World& world) {
  const auto depth = typed.has("--quick") ? store::Depth::quick : store::Depth::whole;
  report::Checked checked;
  const std::vector<store::Finding> findings = book.check(depth);
  take_book(book, findings, checked);
  checked.is_quick = depth == store::Depth::quick;
  const auto view_or_fault = view_of_book(book, typed, world);
  if (const auto* fault = std::get_if<BookFault>(&view_or_fault)) {
    checked.faults.push_back(*fault);
    return Looked{checked, sheet_without_view(world)};
  }
  const BookView& view = *std::get<std::unique_ptr<BookView>>(view_or_fault);
  if (!checked.faults.empty()) take_trust(store::trust(book.entry_ids(), findings), checked);
  checked.entries = static_cast<std::int64_t>(view.entries.size());
  if (depth == store::Depth::whole) {
    take_figures(book, view, checked);
    take_findings(view, checked);
  }
  if (const auto why = take_sheet(typed, view, checked)) return *why;
  checked.heads = head_texts(view.entries);
  return Looked{checked, view.sheet()};
}

// A writer need not wait for the long look. What was seen while one wrote may be of two states and
// is looked at again, of one state, for which the next writer waits.
Looking look_at_one_state(const store::Book& book, const Typed& typed, World& world) {
  const std::int64_t state = book.state();
  Looking looking = look_through(book, typed, world);
  if (book.state() == state) return looking;
  const store::Look one_state(book);
  return look_through(book, typed, world);
}

ExitCode run_check(const Typed& typed, World& world) {
  const store::Book book = open_to_prove(world);
  const Looking looking = look_at_one_state(book, typed, world);
  if (const auto* why = std::get_if<Unanswerable>(&looking)) return say_unanswerable(*why, world);
  const auto& looked = std::get<Looked>(looking);
  return say_answer(report::record_check(looked.checked, looked.sheet), typed, world);
}

}  // namespace

const Command check_command{"check",
                            "prove the chain, the figures and every entry",
                            "",
                            "  timeworn check\n"
                            "  timeworn check --quick\n"
                            "  timeworn check --against 'K7QXM-130 0123456789abcdef'\n"
                            "\nThe exit code is 1 if anything wants attention.\n",
                            {{"--quick", "", "only the file and the chain, not the figures"},
                             {"--against", "SHEET", "does the book hold what an old sheet says?"},
                             json_option},
                            run_check};

}  // namespace command
