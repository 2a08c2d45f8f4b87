// tests/reckon/told.h: a book reckoned at the end of a day, with totals as short texts.
#pragma once

#include <string>

#include "reckon/histories.h"
#include "support/entries.h"

namespace told {

struct Told {
  Told(const support::Book& book, const std::string& day,
       reckon::Ambiguous policy = reckon::Ambiguous::early)
      : standing(reckon::standing(book.entries(), support::day(day))),
        histories(standing, support::day(day), policy) {}
  Told(const Told&) = delete;
  Told& operator=(const Told&) = delete;

  // "4323.3", "at least 12", "unknown".
  std::string hours(const logbook::Thing& thing) const;
  std::string hours_at(const logbook::Thing& thing, const logbook::EntryId& entry) const;
  std::string count(const logbook::Thing& thing, logbook::CounterKind kind) const;
  std::string overhaul(const logbook::Thing& thing) const;
  std::string fitting(const logbook::Thing& thing) const;
  std::string fitting(const logbook::Thing& thing, logbook::CounterKind kind) const;
  // The airframe statement of an entry: "4300.0, now 4300.5", "4300.0", "4300.0 against 4299.0".
  std::string statement(const logbook::EntryId& entry) const;

  reckon::Standing standing;
  reckon::Histories histories;
};

std::string text(const reckon::Figure& figure);

}  // namespace told
