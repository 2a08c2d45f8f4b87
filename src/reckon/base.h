// reckon/base.h: what a thing had when it came on record: brought forward, or stated at its first
// fitting. What is stated later is a statement about the flights.
#pragma once

#include <map>
#include <optional>
#include <string>
#include <vector>

#include "reckon/fittings.h"

namespace reckon {

// A figure that a thing had at a mark. A total is reckoned from it.
struct Base {
  Mark mark;
  Figure figure;
  TermKind kind = TermKind::brought_forward;
  logbook::EntryId entry;
  std::string source;
  std::int64_t written = 0;  // its entry's place among all entries
  bool is_stated = true;     // false: nothing of this clock, because the thing had no hours at all
};

class Bases {
 public:
  Bases(const Standing& standing, const Timeline& timeline, const Fittings& fittings);

  // All that states what the thing had on the clock, since new or since overhaul, up to the mark;
  // oldest first. Which of them rules is for totals to tell.
  std::vector<Base> stated(const logbook::Thing& thing, const Clock& clock, const Mark& at,
                           logbook::Basis since) const;
  // Where the thing was brought forward or came on record by a fitting, oldest first.
  std::vector<Mark> beginnings(const logbook::Thing& thing) const;
  std::optional<Day> brought_forward_day(const logbook::Thing& thing) const;

 private:
  struct Source {
    Mark mark;
    const StandingFact* fact = nullptr;
    const logbook::BringsForward* forward = nullptr;
    const logbook::Fitted* fitted = nullptr;
  };
  static std::optional<Base> base_in(const Source& source, const Clock& clock,
                                     logbook::Basis since);

  std::map<logbook::Thing, std::vector<Source>> sources_;  // by mark
};

// What a list of amounts states on a clock, since new or since overhaul.
std::optional<Figure> stated_on(const std::vector<logbook::Had>& had, const Clock& clock,
                                logbook::Basis since);

}  // namespace reckon
