// How a fact becomes its canonical sentence.
#include <algorithm>

#include "sentence/kinds/kinds.h"
#include "sentence/sorts/times.h"
#include "sentence/values.h"

namespace sentence {
namespace {

// Puts what parts a clause from what stands before it.
class Parted {
 public:
  Parted(std::string& out, const Kind& kind)
      : out_(out), needs_comma_(kind.head.has_comma_after()) {}
  std::string& next() {
    out_ += needs_comma_ ? ", " : " ";
    needs_comma_ = true;
    return out_;
  }

 private:
  std::string& out_;
  bool needs_comma_;
};

std::vector<const void*> items_in_order(const Slot& slot, const void* owner) {
  const void* member = slot.look(owner);
  std::vector<const void*> items;
  const std::size_t size = slot.member->size(member);
  for (std::size_t i = 0; i < size; ++i) items.push_back(slot.member->item(member, i));
  if (slot.member->before != nullptr) {
    std::sort(items.begin(), items.end(), slot.member->before);
  }
  return items;
}

void say_clauses(Parted& parted, const Clause& clause, const void* owner) {
  const std::vector<const void*> items = items_in_order(clause.slot, owner);
  if (items.empty()) return;
  if (is_list(clause)) return say_clause(parted.next(), clause, owner, nullptr);
  for (const void* item : items) say_clause(parted.next(), clause, owner, item);
}

void say_fact(std::string& out, const logbook::Said& said) {
  const Kind& kind = kind_of(said.fact);
  const void* fact = kind.look(said.fact);
  say_pattern(out, kind.head, kind.head_slots, fact);
  Parted parted(out, kind);
  for (const Clause& clause : kind.clauses) say_clauses(parted, clause, fact);
  for (const Clause& clause : common_clauses()) {
    if (takes_common(kind, clause)) say_clauses(parted, clause, &said);
  }
}

}  // namespace

std::string say(const logbook::Said& said) {
  std::string out;
  say_day(out, said.day);
  out += ' ';
  if (said.time) {
    say_clock_time(out, *said.time);
    out += ' ';
  }
  say_fact(out, said);
  out += '.';
  return out;
}

std::string_view kind_name(const logbook::Fact& fact) { return kind_of(fact).name; }

}  // namespace sentence
