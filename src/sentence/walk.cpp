#include "sentence/walk.h"

#include "sentence/kinds/kinds.h"
#include "sentence/sorts/inner.h"

namespace sentence {
namespace {

void walk_slot(const Slot& slot, const void* owner, const Visit& visit);

void walk_value(const Sort& sort, const void* value, const Visit& visit) {
  visit(sort, value);
  if (&sort == &sort_of<logbook::InnerSaid>) {
    walk(**static_cast<const logbook::InnerSaid*>(value), visit);
  }
  for (const Option& option : sort.options) {
    if (!option.fits(value)) continue;
    for (const Slot& slot : option.slots) walk_slot(slot, value, visit);
    return;
  }
}

void walk_slot(const Slot& slot, const void* owner, const Visit& visit) {
  if (slot.sort == nullptr) return;
  const void* member = slot.look(owner);
  const std::size_t size = slot.member->size(member);
  for (std::size_t i = 0; i < size; ++i) {
    walk_value(*slot.sort, slot.member->item(member, i), visit);
  }
}

}  // namespace

void walk(const logbook::Said& said, const Visit& visit) {
  const Kind& kind = kind_of(said.fact);
  const void* fact = kind.look(said.fact);
  for (const Slot& slot : kind.head_slots) walk_slot(slot, fact, visit);
  for (const Clause& clause : kind.clauses) walk_slot(clause.slot, fact, visit);
  for (const Clause& clause : common_clauses()) {
    if (takes_common(kind, clause)) walk_slot(clause.slot, &said, visit);
  }
}

}  // namespace sentence
