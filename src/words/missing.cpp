// What a yes lacks, and a canonical sentence that would supply it, with the names at hand. Figures
// in the sentences are examples.
#include "words/dues.h"
#include "words/figures.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/readiness.h"
#include "words/words.h"

namespace words {

namespace {

using logbook::Aircraft;
using logbook::Basis;
using logbook::Engine;
using logbook::Part;
using logbook::Thing;
using reckon::Lack;
using reckon::Missing;

Thing thing_of(const Missing& missing, const Aircraft& aircraft) {
  return missing.thing.value_or(Thing(aircraft));
}

// A side as lack_text takes it, from what is missing.
reckon::Side side_of(const Missing& missing) {
  reckon::Side side;
  side.lack = missing.lack;
  side.since = missing.since;
  side.is_calendar = !missing.clock;
  if (missing.clock) side.clock = *missing.clock;
  return side;
}

std::string entries_text(const std::vector<logbook::EntryId>& entries) {
  std::vector<std::string> names;
  for (const auto& entry : entries) names.push_back(entry_name(entry));
  return listed(names, "and");
}

std::string totals_example(const Thing& thing) {
  const std::string name = thing_name(thing);
  if (std::holds_alternative<Aircraft>(thing)) {
    return fill("{} brings forward airframe 4321.6 h, 5608 landings, basis \"signed log 3\".",
                {name});
  }
  if (std::holds_alternative<Part>(thing)) return fill("{} brings forward 1820.4 h.", {name});
  return fill("{} brings forward 1820.4 h, 2101 starts, 320.4 h since overhaul.", {name});
}

MissingWords totals_words(const Thing& thing) {
  return {fill("The totals of {} are not on record.", {thing_name(thing)}), totals_example(thing)};
}

MissingWords places_words(const Missing& missing, const Thing& host) {
  const std::string name = thing_name(host);
  if (!missing.place) {
    return {fill("No engine of {} is on record.", {name}),
            fill("engine TS-40 E-1001 fitted to {} engine 1.", {name})};
  }
  const std::string place = written_place(*missing.place);
  const bool is_engine = missing.place->text.starts_with("engine ");
  return {fill("The place {} of {} is empty.", {place, name}),
          fill(is_engine ? "engine TS-40 E-1001 fitted to {} {}."
                         : "part PN-4411 B-88 fitted to {} {}.",
               {name, place})};
}

std::string done_example(const Missing& missing, const Thing& thing) {
  return fill("{} done on {}, airframe 4323.3 h, by \"B. Quill\".",
              {written_task(missing.task_class, *missing.task), thing_name(thing)});
}

MissingWords programme_words(const Missing& missing, const Thing& thing) {
  if (!missing.task) {
    return {fill("No inspection programme is on record for {}.", {short_name(thing)}),
            fill("inspection \"annual inspection\" on {} every 12 calendar months.",
                 {thing_name(thing)})};
  }
  const std::string task = written_task(missing.task_class, *missing.task);
  if (missing.lack == Lack::last_done || missing.lack == Lack::nothing) {
    return {fill("No last done of {} on {} is on record.", {task, short_name(thing)}),
            done_example(missing, thing)};
  }
  const bool is_cured_by_done =
      missing.lack == Lack::total_at_done || missing.lack == Lack::due_point;
  return {fill("What is left of {} is not known: {}.", {task, lack_text(side_of(missing))}),
          is_cured_by_done ? done_example(missing, thing) : std::string()};
}

std::string limit_example(const Thing& thing) {
  if (const auto* part = std::get_if<Part>(&thing)) {
    return fill("part number {} retires at 2200.0 h since new, source \"limitations rev 4\".",
                {written_name(part->number.text)});
  }
  return fill("{} overhaul at 3500.0 h since overhaul, source \"manual 5-10\".",
              {thing_name(thing)});
}

MissingWords limits_words(const Thing& thing) {
  return {fill("No limit is on record for {}.", {thing_name(thing)}), limit_example(thing)};
}

// made 2018-05-01, with the words that its kind needs before it.
struct DayExample {
  std::string_view clause;
  std::string operator()(const Aircraft& it) const {
    return fill("{} is model \"Larkwing 5\", {}.", {thing_name(it), clause});
  }
  std::string operator()(const Engine& it) const {
    return fill("{} is {}.", {thing_name(it), clause});
  }
  std::string operator()(const Part& it) const {
    return fill("{} is \"main rotor blade\", {}.", {thing_name(it), clause});
  }
};

std::string basis_day_example(const Missing& missing, const Thing& thing) {
  switch (missing.since.value_or(Basis::done)) {
    case Basis::new_:
    case Basis::manufacture:
      return std::visit(DayExample{"made 2018-05-01"}, thing);
    case Basis::release:
      return std::visit(DayExample{"released 2018-06-10"}, thing);
    case Basis::first_certificate:
      return std::visit(DayExample{"first certificate 2019-04-02"}, thing);
    case Basis::overhaul:
      return fill("{} overhauled, 1822.1 h since new.", {thing_name(thing)});
    case Basis::fitting:
    case Basis::done:
      return {};
  }
  return {};
}

std::string use_example(const Missing& missing, const Thing& thing) {
  const std::string name = thing_name(thing);
  const bool is_since_overhaul = missing.since == Basis::overhaul;
  const bool is_count = missing.clock && std::holds_alternative<logbook::Counter>(*missing.clock);
  if (!is_count && !is_since_overhaul) return totals_example(thing);
  const std::string amount =
      is_count ? fill("2101 {}", {clock_name(*missing.clock)}) : std::string("320.4 h");
  return fill(is_since_overhaul ? "{} brings forward {} since overhaul." : "{} brings forward {}.",
              {name, amount});
}

// Of a part the part number says it, so that it is said once for all of them.
std::string sharing_example(const Thing& thing) {
  const auto* part = std::get_if<Part>(&thing);
  const std::string scope = part != nullptr
                                ? fill("part number {}", {written_name(part->number.text)})
                                : thing_name(thing);
  return fill("{} shares lives, shorter limit stays, source \"limitations rev 4\".", {scope});
}

MissingWords unknown_words(const Missing& missing, const Thing& thing) {
  MissingWords words;
  const std::string subject = thing_name(thing);
  const std::string of = missing.task ? fill("{} on {}", {missing.task->text, subject}) : subject;
  words.what = fill("What is left of {} is not known: {}.", {of, lack_text(side_of(missing))});
  if (missing.lack == Lack::basis_day) words.example = basis_day_example(missing, thing);
  // What is missing since it was last done lies in flights; nothing brought forward makes it good.
  const bool is_made_good = missing.lack == Lack::total_at_least && missing.since != Basis::done;
  if (missing.lack == Lack::total || is_made_good) words.example = use_example(missing, thing);
  if (missing.lack == Lack::terms) words.example = limit_example(thing);
  if (missing.lack == Lack::model && !missing.entries.empty()) {
    words.example =
        fill("entry {} struck because \"wrong model\".", {entry_name(missing.entries.front())});
  }
  if (missing.lack == Lack::shared_lives) words.example = sharing_example(thing);
  return words;
}

MissingWords reviewed_words(const Missing& missing, const Aircraft& aircraft) {
  const std::string example =
      fill("{} reviewed \"directives and limitations\", revision \"2026-02\", by \"M. Tansley\".",
           {thing_name(aircraft)});
  const std::string name = short_name(aircraft);
  if (!missing.day) {
    return {fill("No review of directives and limitations is on record for {}.", {name}), example};
  }
  return {
      fill("Directives of {} were last reviewed on {}.", {name, quantity::say_long(*missing.day)}),
      example};
}

MissingWords question_words(const Missing& missing) {
  if (missing.entries.empty()) return {fill("Question {} is open.", {missing.question}), {}};
  return {fill("Question {} about {} is open.", {missing.question, entries_text(missing.entries)}),
          fill("entry {} struck because \"entered twice\".", {entry_name(missing.entries.back())})};
}

MissingWords looked_into_words(const Missing& missing, const Thing& thing) {
  return {fill("{} passed a limit, or may have, on {} ({}).",
               {capital(thing_name(thing)), quantity::say_long(*missing.day),
                entries_text(missing.entries)}),
          fill("entry {} looked into, \"inspected, nothing found\", by \"M. Tansley\".",
               {entry_name(missing.entries.front())})};
}

}  // namespace

std::string_view condition_key(reckon::Condition condition) {
  switch (condition) {
    case reckon::Condition::totals:
      return "totals";
    case reckon::Condition::places:
      return "places";
    case reckon::Condition::programme:
      return "programme";
    case reckon::Condition::limits:
      return "limits";
    case reckon::Condition::unknown_read:
      return "unknown";
    case reckon::Condition::reviewed:
      return "reviewed";
    case reckon::Condition::questions:
      return "questions";
    case reckon::Condition::unread:
      return "unread";
    case reckon::Condition::bases_heard:
      return "bases heard";
    case reckon::Condition::looked_into:
      return "looked into";
  }
  return {};
}

MissingWords missing_words(const Missing& missing, const Aircraft& aircraft) {
  const Thing thing = thing_of(missing, aircraft);
  switch (missing.condition) {
    case reckon::Condition::totals:
      return totals_words(thing);
    case reckon::Condition::places:
      return places_words(missing, thing);
    case reckon::Condition::programme:
      return programme_words(missing, thing);
    case reckon::Condition::limits:
      return limits_words(thing);
    case reckon::Condition::unknown_read:
      return unknown_words(missing, thing);
    case reckon::Condition::reviewed:
      return reviewed_words(missing, aircraft);
    case reckon::Condition::questions:
      return question_words(missing);
    case reckon::Condition::unread:
      return {fill("This version cannot read {}, so a newer one is needed.",
                   {entries_text(missing.entries)}),
              {}};
    case reckon::Condition::bases_heard:
      return {"Not every base has been heard since the last flight.", {}};
    case reckon::Condition::looked_into:
      return looked_into_words(missing, thing);
  }
  return {};
}

}  // namespace words
