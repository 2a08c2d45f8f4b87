#include "command/enter.h"

#include <algorithm>
#include <istream>
#include <list>
#include <ostream>
#include <set>

#include "command/book_view.h"
#include "command/derive.h"
#include "reckon/check.h"
#include "report/receipt.h"
#include "store/book.h"
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
  said.although.push_back(std::move(doubt));
  std::sort(said.although.begin(), said.although.end());
}

bool is_accepted(const reckon::Objection& objection, const Said& said) {
  if (objection.severity == reckon::Severity::impossible) return false;
  const std::string doubt = words::doubt_text(objection);
  const auto& although = carrier(said).although;
  return std::any_of(although.begin(), although.end(),
                     [&](const logbook::AcceptedDoubt& accepted) {
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
  *world.err << words::objection_text(objection)
             << "\nIf it is right, say why (or press Enter to save nothing): " << std::flush;
  std::string reason;
  std::getline(*world.in, reason);
  return reason;
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
  for (const reckon::Objection& objection : taken.objections) {
    text += taken.line.where + words::objection_text(objection) + "\n";
    if (objection.severity == reckon::Severity::impossible) continue;
    text += "If it is right, say the sentence again with: although \"" +
            words::doubt_text(objection) + "\" because \"…\".\n";
  }
  return text;
}

ExitCode refuse(const std::string& reasons, World& world) {
  *world.err << "Not saved. " << reasons;
  return refused;
}

// The state after the entries, for the receipt.
ExitCode say_receipt(std::vector<logbook::Entry> all, report::Saved saved, const Typed& typed,
                     World& world) {
  saved.today = world.today;
  const auto view = view_of(std::move(all), world.today, world.today);
  say_answer(report::receipt(view->histories(), view->standing, saved, view->sheet()), typed, world);
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
    meant.day_was_left_out = true;
  }
  meant.read = sentence::read(line.text, reading);
  return meant;
}

ExitCode enter(const Entering& entering, const Typed& typed, World& world) {
  store::Book book = store::Book::open(world.book_path, store::Access::write,
                                       {world.now, world.state_folder, std::nullopt});
  store::Pen pen(book);
  const std::vector<logbook::Entry> before = pen.entries();
  take_the_record_clock(before, world);
  Reader reader{entering, before, world, known_names(before), false, {}};
  std::vector<Taken> taken;
  for (const Line& line : entering.lines) read_line(line, reader, taken);
  if (!reader.faults.empty()) return refuse(reader.faults, world);

  reckon::Checker checker(before, world.today);
  std::list<logbook::Entry> appended;  // stay where they are while the checker lives
  std::string against;
  for (Taken& one : taken) {
    one.objections = checker.objections(one.said);
    leave_out_accepted(one);
    accept_doubts(one, entering, world);
    against += objections_text(one);
    if (!against.empty()) continue;
    appended.push_back(pen.append(one.said));
    checker.add(appended.back());
  }
  if (!against.empty()) return refuse(against, world);

  std::vector<logbook::Entry> all = before;
  all.insert(all.end(), appended.begin(), appended.end());
  put_derived(all, {appended.begin(), appended.end()}, world.today, pen);
  pen.commit();
  report::Saved saved;
  saved.entries.assign(appended.begin(), appended.end());
  saved.day_was_left_out = reader.day_was_left_out;
  if (book.began_a_new_writer()) {
    saved.notices.emplace_back(
        "This book is a copy or was restored: from here on it has a writer of its own.");
  }
  return say_receipt(std::move(all), std::move(saved), typed, world);
}

}  // namespace command
