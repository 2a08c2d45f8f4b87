// Answers histories from standard input with the program's own floors, sentence and reckon, so that
// compare.py can hold them against the other engine. history.py says how a history is written.
//
//   history 4711
//   2026-02-11 total engine TS-40 E-1|h|new = exact 15563880000
//   2026-02-11 side KKKKK-7|part PN-1 D-1|0 = left 3600000 at most|ok|15563880000
//   end
//
// Figures are thousandths of a second or of a count; calendar sides are in days.
#include <exception>
#include <iostream>
#include <map>
#include <string>
#include <unordered_map>

#include "reckon/apart.h"
#include "reckon/due.h"
#include "reckon/histories.h"
#include "reckon/lives.h"
#include "sentence/frame.h"
#include "sentence/sentence.h"

namespace {

using logbook::EntryId;
using logbook::Thing;
using reckon::Histories;

logbook::Said said_in(const std::string& text) {
  static std::unordered_map<std::string, logbook::Said> memo;  // half of a history comes again
  const auto met = memo.find(text);
  if (met != memo.end()) return met->second;
  const sentence::Read read = sentence::read(text, {});
  if (!read.said) throw std::runtime_error("cannot read: " + text);
  if (sentence::say(*read.said) != text) throw std::runtime_error("not canonical: " + text);
  if (memo.size() > 50'000) memo.clear();
  return memo.emplace(text, *read.said).first->second;
}

// The writer whose name is this letter five times.
logbook::WriterId writer_of(char letter) {
  const std::string letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
  const std::size_t value = letters.find(letter);
  if (value == std::string::npos) throw std::runtime_error("a base is one of " + letters);
  logbook::WriterId id;
  for (std::size_t bit = 0; bit < 25; ++bit) {
    const auto is_set = static_cast<unsigned>(value >> (4 - bit % 5) & 1U);
    id.bytes.at(bit / 8) |= static_cast<std::uint8_t>(is_set << (7 - bit % 8));
  }
  return id;
}

class Book {
 public:
  void write_as(char base, bool hears) {
    base_ = base;
    std::vector<logbook::Knows>& heard = heard_[base];
    if (!hears) return;
    heard.clear();
    for (const auto& [of, number] : numbers_) {
      if (of != base && number > 0) heard.push_back({writer_of(of), number, {}});
    }
  }
  void say(const std::string& text) {
    logbook::Entry entry;
    entry.id.writer = writer_of(base_);
    entry.id.number = ++numbers_[base_];
    entry.id.digest[0] = static_cast<std::uint8_t>(base_);
    entry.id.digest[1] = static_cast<std::uint8_t>(entry.id.number % 256);
    entry.frame.writer = entry.id.writer;
    entry.frame.number = entry.id.number;
    entry.frame.knows = std::exchange(heard_[base_], {});
    entry.said = said_in(text);
    for (const logbook::EntryName& name : sentence::named_entries(*entry.said)) {
      entry.frame.refers.push_back(ids_.at(name));
    }
    entry.sentence = text;
    ids_[{sentence::short_writer(entry.id.writer), entry.id.number}] = entry.id;
    entries_.push_back(std::move(entry));
  }
  const std::vector<logbook::Entry>& entries() const { return entries_; }

 private:
  std::vector<logbook::Entry> entries_;
  std::map<logbook::EntryName, EntryId> ids_;
  std::map<char, std::int64_t> numbers_;
  std::map<char, std::vector<logbook::Knows>> heard_;  // until the base's next entry
  char base_ = 'K';
};

// "h", "h by collective meter", "starts", "\"beacon minutes\"".
reckon::Clock clock_of(const std::string& text) {
  const std::string amount = text.starts_with("h") && !text.starts_with("ho") ? "2.0 " : "2 ";
  const auto said =
      said_in("2026-01-01 part number PN-1 retires at " + amount + text + " since new.");
  const auto& term = std::get<logbook::Limit>(said.fact).terms.terms.front();
  if (const auto* hours = std::get_if<logbook::ClockHours>(&term.amount)) {
    return reckon::HoursClock{hours->meter};
  }
  return std::get<logbook::Count>(term.amount).counter;
}

struct Name {
  std::string operator()(const logbook::Aircraft& one) const {
    return "aircraft " + one.registration.text;
  }
  std::string operator()(const logbook::Engine& one) const {
    return "engine " + one.model.text + ' ' + one.serial.text;
  }
  std::string operator()(const logbook::Part& one) const {
    return "part " + one.number.text + ' ' + one.serial.text;
  }
};
std::string text(const Thing& thing) { return std::visit(Name{}, thing); }

std::string text(const reckon::Figure& figure) {
  switch (figure.sureness()) {
    case reckon::Sureness::exact:
      return "exact " + std::to_string(figure.raw());
    case reckon::Sureness::by_default:
      return "default " + std::to_string(figure.raw());
    case reckon::Sureness::at_least:
      return "at least " + std::to_string(figure.raw());
    case reckon::Sureness::unknown:
      break;
  }
  return "unknown";
}

std::string text(reckon::State state) {
  switch (state) {
    case reckon::State::ok:
      return "ok";
    case reckon::State::soon:
      return "soon";
    case reckon::State::due:
      return "due";
    case reckon::State::over:
      return "over";
    case reckon::State::not_known:
      break;
  }
  return "not known";
}

std::string text(const reckon::Side& side) {
  const std::string state = '|' + text(side.state) + '|';
  if (!side.left) return "left unknown" + state + '-';
  std::string due = "-";
  if (side.last_legal) due = say(*side.last_legal);
  if (side.due_at_airframe) due = std::to_string(side.due_at_airframe->raw());
  return "left " + std::to_string(side.left->raw()) + (side.left_is_at_most ? " at most" : "") +
         state + due;
}

class Asked {
 public:
  Asked(const Book& book, quantity::Day day)
      : book_(book),
        standing_(reckon::standing(book.entries(), day)),
        histories_(standing_, day, reckon::Ambiguous::early),
        day_(say(day)) {}

  void answer(const std::map<std::string, reckon::Clock>& clocks) const {
    for (const Thing& thing : histories_.things()) {
      for (const auto& [name, clock] : clocks) totals(thing, name, clock);
      const auto stay = histories_.stay_now(thing);
      line("where " + text(thing), stay ? text(stay->host) + '|' + stay->place.text : "-");
    }
    for (const reckon::Item& item : items()) {
      if (item.kind == reckon::Item::Kind::limit) limit(item);
    }
    for (const auto& questions : {standing_.questions, histories_.questions()}) {
      for (const auto& question : questions) line("question " + question.class_, "asked");
    }
  }

 private:
  void line(const std::string& key, const std::string& value) const {
    std::cout << day_ << ' ' << key << " = " << value << '\n';
  }
  void totals(const Thing& thing, const std::string& name, const reckon::Clock& clock) const {
    const std::string key = "total " + text(thing) + '|' + name + '|';
    const reckon::Mark now = histories_.now();
    line(key + "new", text(histories_.total(thing, clock, now).figure));
    line(key + "overhaul", text(histories_.since_overhaul(thing, clock, now).figure));
    line(key + "fitting", text(histories_.since_fitting(thing, clock, now).figure));
  }
  void limit(const reckon::Item& item) const {
    const std::string name = say_entry(item.entry) + '|' + text(item.thing);
    line("item " + name, text(item.state));
    int number = 0;
    for (const reckon::Side& side : item.sides) {
      line("side " + name + '|' + std::to_string(number++), text(side));
    }
  }
  std::vector<reckon::Item> in_both_orders(const reckon::Standing& standing,
                                           const Histories& early) const {
    auto items = lives(early, standing);
    if (!early.has_ambiguous_order()) return items;
    const Histories late(standing, early.as_of(), reckon::Ambiguous::late);
    return harsher(std::move(items), lives(late, standing));
  }
  std::vector<reckon::Item> items() const {
    std::vector<std::vector<reckon::Item>> by_way{in_both_orders(standing_, histories_)};
    const reckon::WaysToDecide ways = reckon::ways_to_decide(standing_.made_apart);
    for (const reckon::Decided& way : ways.others) {
      const reckon::Standing other = reckon::standing(book_.entries(), histories_.as_of(), way);
      by_way.push_back(
          in_both_orders(other, Histories(other, histories_.as_of(), reckon::Ambiguous::early)));
    }
    return with_least_left(std::move(by_way), ways.are_all);
  }
  static std::string say_entry(const EntryId& id) {
    return sentence::short_writer(id.writer) + '-' + std::to_string(id.number);
  }

  const Book& book_;
  reckon::Standing standing_;
  Histories histories_;
  std::string day_;
};

class Answers {
 public:
  void take(const std::string& line) {
    const std::size_t blank = line.find(' ');
    const std::string word = line.substr(0, blank);
    const std::string rest = blank == std::string::npos ? "" : line.substr(blank + 1);
    if (word == "history") {
      book_ = {};
      clocks_.clear();
      std::cout << "history " << rest.substr(0, rest.find(' ')) << '\n';
    } else if (word == "base") {
      book_.write_as(rest.front(), rest.ends_with(" hears"));
    } else if (word == "clock") {
      clocks_[rest] = clock_of(rest);
    } else if (word == "ask") {
      Asked(book_, said_in(rest + " aircraft A-1 flew 1.0 h.").day).answer(clocks_);
    } else if (word == "end") {
      std::cout << "end" << std::endl;
    } else {
      book_.say(line);
    }
  }

 private:
  Book book_;
  std::map<std::string, reckon::Clock> clocks_;
};

}  // namespace

int main() {
  try {
    Answers answers;
    for (std::string line; std::getline(std::cin, line);) answers.take(line);
    return 0;
  } catch (const std::exception& error) {
    std::cout << std::flush;
    std::cerr << "life_answers: " << error.what() << '\n';
    return 70;
  }
}
