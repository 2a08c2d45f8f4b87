#include "command/enter.h"

#include <algorithm>
#include <list>
#include <ostream>
#include <set>

#include "command/book_view.h"
#include "command/derive.h"
#include "command/lines.h"
#include "command/the_book.h"
#include "reckon/check.h"
#include "reckon/check_signed.h"
#include "report/counting_notices.h"
#include "report/receipt.h"
#include "store/book.h"
#include "words/faults.h"
#include "words/receipts.h"
#include "words/signings.h"
#include "words/words.h"

namespace command {

namespace {

using logbook::Said;
using Facts = std::vector<Said>;

// One line's fact with what the record says against it.
struct Taken {
  Line line;
  Said said;
  std::vector<reckon::Objection> objections;
};

struct Reader {
  const Entering& entering;
  const std::vector<logbook::Entry>& entries;
  World& world;
  sentence::Known known;
  bool day_was_left_out = false;
  std::string faults;
};

void read_line(const Line& line, Reader& reader, std::vector<Taken>& taken) {
  sentence::Reading reading;
  reading.known = &reader.known;
  if (reader.entering.may_leave_out_the_day) reading.today = reader.world.today;
  Meant meant = reader.entering.meaning(line, reader.entries, reading);
  if (!meant.refusal.empty()) {
    reader.faults += line.where + meant.refusal + "\n";
  } else if (!meant.read.said) {
    reader.faults += line.where + words::misreadings_text(line.text, meant.read.wrong) + "\n";
  } else {
    reader.day_was_left_out = reader.day_was_left_out || meant.day_was_left_out;
    taken.push_back({line, *std::move(meant.read.said), {}});
  }
}

// A correction carries its doubts in the sentence inside it.
const Said& carrier(const Said& said) {
  const auto* corrected = std::get_if<logbook::Corrected>(&said.fact);
  return corrected != nullptr ? *corrected->instead : said;
}

void carry(Said& said, logbook::AcceptedDoubt doubt) {
  if (auto* corrected = std::get_if<logbook::Corrected>(&said.fact)) {
    Said inner = *corrected->instead;
    carry(inner, std::move(doubt));
    corrected->instead = logbook::InnerSaid(std::move(inner));
    return;
  }
  const bool is_carried =
      std::any_of(said.although.begin(), said.although.end(),
                  [&](const logbook::AcceptedDoubt& other) { return other.doubt == doubt.doubt; });
  if (is_carried) return;  // two doubts in one wording are accepted with one
  said.although.push_back(std::move(doubt));
  std::sort(said.although.begin(), said.although.end());
}

bool is_accepted(const reckon::Objection& objection, const Said& said) {
  if (objection.severity == reckon::Severity::impossible) return false;
  const std::string doubt = words::doubt_text(objection);
  const auto& although = carrier(said).although;
  return std::any_of(although.begin(), although.end(), [&](const logbook::AcceptedDoubt& accepted) {
    return accepted.doubt == doubt;
  });
}

void leave_out_accepted(Taken& taken) {
  std::erase_if(taken.objections, [&](const reckon::Objection& objection) {
    return is_accepted(objection, taken.said);
  });
}

bool has_impossible(const Taken& taken) {
  return std::any_of(taken.objections.begin(), taken.objections.end(),
                     [](const reckon::Objection& objection) {
                       return objection.severity == reckon::Severity::impossible;
                     });
}

// A person at a terminal may say why a doubt is right; its words then stand in the sentence.
std::string ask_why(const reckon::Objection& objection, World& world) {
  tell(*world.err, words::objection_text(objection) +
                       "\nIf it is right, say why (or press Enter to save nothing): ");
  world.err->flush();
  return next_line(*world.in).value_or("");
}

void accept_doubts(Taken& taken, const Entering& entering, World& world) {
  if (has_impossible(taken)) return;
  std::vector<reckon::Objection> open;
  for (const reckon::Objection& objection : taken.objections) {
    std::string reason = entering.because.value_or("");
    if (reason.empty() && world.can_ask) reason = ask_why(objection, world);
    if (reason.empty()) {
      open.push_back(objection);
    } else {
      carry(taken.said, {words::doubt_text(objection), reason});
    }
  }
  taken.objections = std::move(open);
}

std::string objections_text(const Taken& taken) {
  std::string text;
  const std::size_t told = std::min(taken.objections.size(), words::most_faults_told);
  for (std::size_t i = 0; i < told; ++i) {
    const reckon::Objection& objection = taken.objections[i];
    text += taken.line.where + words::objection_text(objection) + "\n";
    if (objection.severity == reckon::Severity::impossible) continue;
    text += "If it is right, say the sentence again with: although \"" +
            words::doubt_text(objection) + "\" because \"…\".\n";
  }
  const std::string more = words::more_faults_text(taken.objections.size());
  return more.empty() ? text : text + taken.line.where + more + "\n";
}

std::string unclear_text(const std::vector<store::UnclearName>& unclear) {
  std::string text;
  for (const store::UnclearName& one : unclear) {
    const std::string name = one.name.writer + "-" + std::to_string(one.name.number);
    text += one.meant.empty()
                ? "There is no entry " + name + ". timeworn history shows the names.\n"
                : "Entry " + name + " can mean two entries. Write more of its name.\n";
  }
  return text;
}

ExitCode refuse(const std::string& reasons, World& world) {
  tell(*world.err, "Not saved. " + reasons);
  return refused;
}

struct Writing {
  const Entering& entering;
  const std::vector<logbook::Entry>& before;
  World& world;
  store::Pen& pen;
};

// Appends one fact unless the record speaks against it; gives what it says.
std::string append_one(Taken& one, const Writing& writing, reckon::Checker& checker,
                       std::list<logbook::Entry>& appended) {
  one.objections = checker.objections(one.said);
  if (writing.entering.key != nullptr) {
    std::erase_if(one.objections, [](const reckon::Objection& objection) {
      return objection.kind == reckon::CheckKind::signature_needs_key;
    });
  }
  leave_out_accepted(one);
  accept_doubts(one, writing.entering, writing.world);
  if (!one.objections.empty()) return objections_text(one);
  store::Appended written = writing.pen.append(one.said, {}, writing.entering.key);
  if (const auto* unclear = std::get_if<std::vector<store::UnclearName>>(&written)) {
    return one.line.where + unclear_text(*unclear);
  }
  appended.push_back(std::get<logbook::Entry>(std::move(written)));
  checker.add(appended.back());
  return {};
}

// Every line is looked at, so that all objections are told at once; the entries stay where they are
// while the checker lives.
std::string append_all(std::vector<Taken>& taken, const Writing& writing,
                       std::list<logbook::Entry>& appended) {
  reckon::Checker checker(writing.before, writing.world.today);
  std::string against;
  for (Taken& one : taken) against += append_one(one, writing, checker, appended);
  return against;
}

// A signature that would not count is not given: its key or person has ended meanwhile.
std::string against_signature(const std::vector<logbook::Entry>& all,
                              const logbook::EntryId& signature, World& world) {
  const reckon::Standing standing = reckon::standing(all, world.today);
  for (const reckon::StandingFact& fact : standing.facts) {
    for (const reckon::SignatureOn& one : fact.signatures) {
      if (one.entry != signature || one.why_not == reckon::Unsigned::nothing) continue;
      return "It would not count: " + std::string(words::why_not_text(one.why_not)) + ".\n";
    }
  }
  return {};
}

// True if the entry can change what counts of older work.
bool may_change_counting(const logbook::Entry& entry) {
  const logbook::Fact& fact = entry.said->fact;
  return reckon::is_about_signing(fact) || std::holds_alternative<logbook::Corrected>(fact) ||
         std::holds_alternative<logbook::Struck>(fact);
}

// What counted before the newest entries; absent where they change nothing in it.
std::optional<report::CountedWork> counted_before(std::vector<logbook::Entry>& all,
                                                  const report::Saved& saved, const World& world) {
  if (std::none_of(saved.entries.begin(), saved.entries.end(), may_change_counting)) return {};
  // They stand at the end; the others are not copied.
  all.erase(all.end() - static_cast<std::ptrdiff_t>(saved.entries.size()), all.end());
  report::CountedWork before = report::counted_work(reckon::standing(all, world.today));
  all.insert(all.end(), saved.entries.begin(), saved.entries.end());
  return before;
}

// The state after the entries, for the receipt.
ExitCode say_receipt(std::vector<logbook::Entry> all, report::Saved saved, const Typed& typed,
                     World& world) {
  saved.today = world.today;
  saved.counted_before = counted_before(all, saved, world);
  const auto view = view_of(std::move(all), world.today, world.today);
  say_answer(report::receipt(view->histories(), view->standing, saved, view->sheet()), typed,
             world);
  return done;  // writing commands give 0 when saved
}

}  // namespace

Meant plain_meaning(const Line& line, const std::vector<logbook::Entry>&,
                    const sentence::Reading& reading) {
  Meant meant;
  if (reading.today) {
    sentence::Reading strict = reading;
    strict.today.reset();
    meant.read = sentence::read(line.text, strict);
    if (meant.read.said) return meant;
  }
  meant.read = sentence::read(line.text, reading);
  meant.day_was_left_out =
      reading.today && meant.read.said && meant.read.said->day == *reading.today;
  return meant;
}

ExitCode enter(const Entering& entering, const Typed& typed, World& world) {
  store::Book book = open_to_write(world);
  store::Pen pen(book);
  std::vector<logbook::Entry> all = pen.entries();
  take_the_record_clock(all, world);
  Reader reader{entering, all, world, known_names(all), false, {}};
  std::vector<Taken> taken;
  for (const Line& line : entering.lines) read_line(line, reader, taken);
  if (!reader.faults.empty()) return refuse(reader.faults, world);

  std::list<logbook::Entry> appended;
  const std::string against = append_all(taken, {entering, all, world, pen}, appended);
  if (!against.empty()) return refuse(against, world);

  report::Saved saved;
  saved.entries.assign(appended.begin(), appended.end());
  saved.day_was_left_out = reader.day_was_left_out;
  all.insert(all.end(), appended.begin(), appended.end());
  if (entering.key != nullptr) {
    const std::string doubt = against_signature(all, appended.back().id, world);
    if (!doubt.empty()) return refuse(doubt, world);
  }
  put_derived(all, saved.entries, world.today, pen);
  pen.commit();
  world.has_saved = true;
  if (book.began_a_new_writer()) {
    saved.notices.emplace_back(copy_notice);
  }
  if (!pen.changed_arrivals().empty()) {
    saved.notices.push_back(words::changed_arrivals_text(pen.changed_arrivals()));
  }
  return say_receipt(std::move(all), std::move(saved), typed, world);
}

}  // namespace command
