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
  bool is_stated = true;  // false: nothing of this clock, because the thing had no hours at all
};

class Bases {
 public:
  Bases(const Standing& standing, const Timeline& timeline, const Fittings& fittings);

  // The base from which a total on the clock is reckoned at the mark: since new, or since overhaul.
  // Empty: nobody stated one.
  std::optional<Base> find(const logbook::Thing& thing, const Clock& clock, const Mark& at) const;
  std::optional<Base> since_overhaul(const logbook::Thing& thing, const Clock& clock,
                                     const Mark& at) const;
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
  std::optional<Base> pick(const logbook::Thing& thing, const Clock& clock, const Mark& at,
                           logbook::Basis since) const;

  std::map<logbook::Thing, std::vector<Source>> forward_;  // by mark
  std::map<logbook::Thing, Source> first_fitted_;
};

// What a list of amounts states on a clock, since new or since overhaul.
std::optional<Figure> stated_on(const std::vector<logbook::Had>& had, const Clock& clock,
                                logbook::Basis since);

}  // namespace reckon
