// reckon/check_fact.h: what every check is given: a fact in its place among all facts of the
// record.
#pragma once

#include <tuple>
#include <vector>

#include "reckon/objection.h"

namespace reckon {

using Objections = std::vector<Objection>;

// written: its place among all entries. A fact that is not in the record yet has no id and was
// written last.
struct Placed {
  const logbook::Said* said = nullptr;
  logbook::EntryId id;
  std::int64_t written = INT64_MAX;
};
inline bool operator<(const Placed& a, const Placed& b) {
  return std::tuple(a.said->day.count(), a.written) < std::tuple(b.said->day.count(), b.written);
}
inline bool is_same(const Placed& a, const Placed& b) { return a.id == b.id; }
inline bool is_new(const Placed& placed) { return placed.id == logbook::EntryId{}; }

// all: a new fact against everything on record. earlier: a fact that is itself on record, against
// what comes before it, so that each finding is told once, at the later entry.
enum class Against { all, earlier };

inline Objection doubt(CheckKind kind, std::string slot) {
  Objection objection;
  objection.kind = kind;
  objection.severity = Severity::doubtful;
  objection.slot = std::move(slot);
  return objection;
}
inline Objection refusal(CheckKind kind, std::string slot) {
  Objection objection = doubt(kind, std::move(slot));
  objection.severity = Severity::impossible;
  return objection;
}

inline Figure hours_figure(quantity::Hours hours) { return {quantity::service_hours(hours)}; }
inline Figure reading_figure(quantity::HourMeter reading) {
  return hours_figure(reading - quantity::HourMeter{});
}
inline Figure apart(const Figure& a, const Figure& b) { return a.compare(b) < 0 ? b - a : a - b; }
// Two figures of one unit, and how far they are apart.
inline Objection with_figures(Objection objection, const Figure& stated, const Figure& reckoned) {
  objection.stated = stated;
  objection.reckoned = reckoned;
  objection.difference = apart(stated, reckoned);
  return objection;
}

}  // namespace reckon
