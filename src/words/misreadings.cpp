// What was wrong with a line that someone typed: what was read, what was wanted, what to write.
#include <algorithm>
#include <array>

#include "quantity/expect.h"
#include "text/unicode.h"
#include "text/visible.h"
#include "words/faults.h"
#include "words/grammar.h"
#include "words/words.h"

namespace words {

namespace {

using logbook::Fault;
using logbook::Misreading;

struct MisreadingWords {
  Fault fault;
  std::string_view wrong;
};

constexpr std::array misreading_words = {
    MisreadingWords{Fault::unknown_kind, "No sentence begins with \"{read}\"."},
    MisreadingWords{Fault::unknown_word, "\"{read}\" is not understood here."},
    MisreadingWords{Fault::missing, "Something is missing here."},
    MisreadingWords{Fault::said_twice, "\"{read}\" is said twice; say it once."},
    MisreadingWords{Fault::day_missing, "The day is missing; begin with it, like 2026-03-04."},
    MisreadingWords{Fault::bad_quote,
                    "A quotation mark has no partner; quote both ends of a name."},
    MisreadingWords{Fault::bad_name,
                    "\"{read}\" cannot stand as a name; write it in quotation marks."},
    MisreadingWords{Fault::bad_character,
                    "\"{read}\" holds a character that cannot be kept; leave it out."},
    MisreadingWords{Fault::too_long, "The line is too long; say it in 4096 bytes or less."},
    MisreadingWords{Fault::two_sentences,
                    "Two sentences stand in one line; write each on a line of its own."},
    MisreadingWords{Fault::not_a_number, "\"{read}\" is no number."},
    MisreadingWords{Fault::two_readings,
                    "\"{read}\" can mean {first} or {second}. Write {first} or {second}."},
    MisreadingWords{Fault::not_exact,
                    "\"{read}\" is finer than can be kept. Write {first} or {second}."},
    MisreadingWords{Fault::not_whole, "\"{read}\" is no whole number. Write {first} or {second}."},
    MisreadingWords{Fault::out_of_range, "\"{read}\" is out of range; check the figure."},
    MisreadingWords{Fault::fahrenheit, "\"{read} F\" is {first} C to tenths. Write degrees C."},
    MisreadingWords{Fault::no_such_day, "\"{read}\" is no day of the calendar; check it."},
    MisreadingWords{Fault::ambiguous_day,
                    "\"{read}\" can be read in two ways. Write {first} or {second}."},
    MisreadingWords{Fault::two_things,
                    "\"{read}\" can mean {first} or {second}. Write one of these."},
};

std::string_view wrong_of(Fault fault) {
  for (const MisreadingWords& each : misreading_words) {
    if (each.fault == fault) return each.wrong;
  }
  EXPECT(!"every fault has its sentence");
  return {};
}

// Sentences with two gaps for readings need both of them.
std::string_view sentence_for(const Misreading& wrong) {
  if (wrong.fault == Fault::two_readings && wrong.second.empty()) {
    return "\"{read}\" can be read in two ways. Write it so that only one is meant.";
  }
  if (wrong.fault == Fault::not_exact && wrong.second.empty()) {
    return "\"{read}\" is finer than can be kept. Write hundredths of an hour, or minutes.";
  }
  if (wrong.fault == Fault::fahrenheit && wrong.first.empty()) {
    return "\"{read} F\" is in degrees F. Write degrees C.";
  }
  if (wrong.fault == Fault::ambiguous_day && wrong.first.empty()) {
    return "\"{read}\" can be read in two ways. Write the day like 2026-03-04.";
  }
  if (wrong.fault == Fault::ambiguous_day && wrong.second.empty()) {
    return "\"{read}\" does not say which number is the month. Write {first}.";
  }
  if (wrong.fault == Fault::not_whole && wrong.first.empty()) {
    return "\"{read}\" is no whole number. Write a whole number.";
  }
  if (wrong.fault == Fault::not_whole && wrong.second.empty()) {
    return "\"{read}\" is not written as a whole number. Write {first}.";
  }
  if (wrong.fault == Fault::two_things && wrong.second.empty()) {
    return "\"{read}\" can mean more than one thing. Write its class and full name.";
  }
  return wrong_of(wrong.fault);
}

// A figure as people would write it: 1.230 is 1.23. Anything else stays as it is.
std::string shortest(std::string figure) {
  const auto point = figure.find('.');
  if (point == std::string::npos || figure.find_first_not_of("0123456789.-") != std::string::npos) {
    return figure;
  }
  while (figure.size() > point + 2 && figure.back() == '0') figure.pop_back();
  return figure;
}

std::string gap(const Misreading& wrong, std::string_view name) {
  if (name == "read") return text::visible_line(wrong.read);
  if (name == "first") return shortest(wrong.first);
  if (name == "second") return shortest(wrong.second);
  EXPECT(!"a gap has a known name");
  return {};
}

// Faults whose sentence says already what to write.
bool wants_a_hint(Fault fault) {
  return fault == Fault::unknown_kind || fault == Fault::unknown_word || fault == Fault::missing ||
         fault == Fault::not_a_number || fault == Fault::out_of_range;
}

constexpr std::size_t most_expected = 6;

std::string hint(const Misreading& wrong) {
  if (!wants_a_hint(wrong.fault)) return {};
  if (!wrong.nearest.empty()) return fill(" Did you mean \"{}\"?", {wrong.nearest});
  if (wrong.expected.empty()) return {};
  std::vector<std::string> few = wrong.expected;
  if (few.size() > most_expected) few.resize(most_expected);
  const bool is_cut = few.size() < wrong.expected.size();
  return fill(is_cut ? " Write for example {}." : " Write {}.", {listed(few, "or")});
}

std::string sentence_of(const Misreading& wrong) {
  return fill_named(sentence_for(wrong), [&](std::string_view name) { return gap(wrong, name); }) +
         hint(wrong);
}

// A part of the line with its marks: what is pointed at stands in columns from … to.
struct Excerpt {
  std::string line;
  std::size_t from = 0;
  std::size_t to = 0;
};

constexpr std::size_t before_the_marks = 40;
constexpr std::size_t widest_excerpt = 74;

// The clusters of the text as they are shown, up to so many columns; from the end if so said.
std::string shown_end(std::string_view words, std::size_t columns) {
  const std::string shown = text::visible_line(words);
  const auto clusters = text::clusters(shown);
  std::string end;
  std::size_t used = 0;
  for (auto it = clusters.rbegin(); it != clusters.rend(); ++it) {
    used += text::columns(*it);
    if (used > columns) return "…" + end;
    end.insert(0, *it);
  }
  return end;
}

std::string shown_start(std::string_view words, std::size_t columns) {
  const std::string shown = text::visible_line(words);
  std::string start;
  for (const std::string_view cluster : text::clusters(shown)) {
    if (text::columns(start) + text::columns(cluster) > columns) return start + "…";
    start += cluster;
  }
  return start;
}

Excerpt excerpt_of(std::string_view line, const Misreading& wrong) {
  const std::size_t from = std::min<std::size_t>(wrong.from, line.size());
  const std::size_t to = std::clamp<std::size_t>(wrong.to, from, line.size());
  Excerpt excerpt;
  excerpt.line = shown_end(line.substr(0, from), before_the_marks);
  excerpt.from = text::columns(excerpt.line);
  excerpt.line += shown_start(line.substr(from, to - from), widest_excerpt - excerpt.from);
  excerpt.to = std::max(text::columns(excerpt.line), excerpt.from + 1);
  const std::size_t used = text::columns(excerpt.line);
  const std::size_t room = used < widest_excerpt ? widest_excerpt - used : 0;
  excerpt.line += shown_start(line.substr(to), room);
  return excerpt;
}

std::string pointed_out(std::string_view line, const Misreading& wrong) {
  const Excerpt excerpt = excerpt_of(line, wrong);
  return "  " + excerpt.line + "\n  " + std::string(excerpt.from, ' ') +
         std::string(excerpt.to - excerpt.from, '^');
}

}  // namespace

std::string more_faults_text(std::size_t faults) {
  if (faults <= most_faults_told) return {};
  const auto more = static_cast<std::int64_t>(faults - most_faults_told);
  return fill("The line has {}.", {counted(more, "more fault", "more faults")});
}

std::string misreadings_text(std::string_view line, const std::vector<Misreading>& misreadings) {
  std::string text;
  const std::size_t told = std::min(misreadings.size(), most_faults_told);
  for (std::size_t i = 0; i < told; ++i) {
    if (!text.empty()) text += '\n';
    text += sentence_of(misreadings[i]) + "\n" + pointed_out(line, misreadings[i]);
  }
  const std::string more = more_faults_text(misreadings.size());
  return more.empty() ? text : text + "\n" + more;
}

}  // namespace words
