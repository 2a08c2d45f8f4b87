#include "reckon/check.h"

#include <algorithm>
#include <tuple>

#include "command/book_view.h"
#include "command/commands.h"
#include "command/the_book.h"
#include "report/record_check.h"
#include "sentence/frame.h"
#include "store/book.h"
#include "text/binary.h"
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
  checked.questions = view.standing.questions;
  const auto& more = view.histories().questions();
  checked.questions.insert(checked.questions.end(), more.begin(), more.end());
}

std::string head_text(const logbook::Entry& entry) {
  return words::entry_name(entry.id) + " " + text::hex(entry.id.digest).substr(0, 16);
}

void take_heads(const BookView& view, report::Checked& checked) {
  for (std::size_t i = 0; i < view.entries.size(); ++i) {
    const bool is_last =
        i + 1 == view.entries.size() || view.entries[i + 1].id.writer != view.entries[i].id.writer;
    if (is_last) checked.heads.push_back(head_text(view.entries[i]));
  }
}

ExitCode run(const Typed& typed, World& world) {
  const store::Book book = open_to_read(world);
  report::Checked checked;
  for (const store::Finding& finding : book.check()) {
    checked.faults.push_back(
        {finding.what, finding.entry ? words::entry_name(*finding.entry) : "", finding.detail});
  }
  auto looked = look(typed, world);
  if (const auto* why = std::get_if<Unanswerable>(&looked)) return say_unanswerable(*why, world);
  const BookView& view = *std::get<std::unique_ptr<BookView>>(looked);
  checked.entries = static_cast<std::int64_t>(view.entries.size());
  for (const logbook::Thing& thing : view.histories().things()) {
    const auto* aircraft = std::get_if<logbook::Aircraft>(&thing);
    if (aircraft == nullptr) continue;
    compare_totals(book, view.histories().derived(*aircraft, *quantity::make_day({1900, 1, 1})),
                   checked);
  }
  take_findings(view, checked);
  take_heads(view, checked);
  return say_answer(report::record_check(checked, view.sheet()), typed, world);
}

}  // namespace

const Command check_command{"check",
                            "prove the chain, the figures and every entry",
                            "",
                            "  timeworn check\n"
                            "\nThe exit code is 1 if anything wants attention.\n",
                            {json_option},
                            run};

}  // namespace command
