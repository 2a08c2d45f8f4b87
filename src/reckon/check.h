// reckon/check.h: may this fact follow this record? All objections at once, as data; and the same
// checks over the whole record. What already happened past a limit is always taken.
#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "reckon/histories.h"
#include "reckon/objection.h"

namespace reckon {

// Checks facts one after another against a record that grows with them. Every objection is given,
// also one that the sentence accepts by although: words knows a doubt's text, and the command floor
// leaves accepted ones out. A flight costs no walk through the whole record.
class Checker {
 public:
  // today: the day in the book's place. The entries must outlive the checker.
  Checker(const std::vector<logbook::Entry>& entries, Day today);
  Checker(Checker&&) noexcept;
  ~Checker();
  std::vector<Objection> objections(const logbook::Said& said);
  // The fact was appended; the entry must stay where it is while the checker lives.
  void add(const logbook::Entry& entry);

 private:
  struct Inside;
  std::unique_ptr<Inside> inside_;
};

// Over the whole record: what would be said about each standing entry in its place.
struct RecordFinding {
  logbook::EntryId entry;
  Objection objection;
};
std::vector<RecordFinding> check_record(const std::vector<logbook::Entry>& entries, Day as_of);

}  // namespace reckon
