#include "demo/shown.h"

#include <array>
#include <utility>
#include <vector>

#include "sentence/sentence.h"

namespace demo {

namespace {

using logbook::CounterKind;
using logbook::LimitClass;
using logbook::TaskClass;

template <class Value>
using Word = std::pair<Value, const char*>;

constexpr std::array<Word<CounterKind>, 14> counters = {{
    {CounterKind::starts, "starts"},
    {CounterKind::flights, "flights"},
    {CounterKind::landings, "landings"},
    {CounterKind::lifts, "lifts"},
    {CounterKind::transitions, "transitions"},
    {CounterKind::torque_events, "torque events"},
    {CounterKind::hoist_lifts, "hoist lifts"},
    {CounterKind::run_on_landings, "run-on landings"},
    {CounterKind::gas_generator_cycles, "gas-generator cycles"},
    {CounterKind::power_turbine_cycles, "power-turbine cycles"},
    {CounterKind::full_cycles, "full cycles"},
    {CounterKind::abbreviated_cycles, "abbreviated cycles"},
    {CounterKind::cycles, "cycles"},
    {CounterKind::own, "own"},
}};
constexpr std::array<Word<LimitClass>, 5> limit_classes = {{
    {LimitClass::airworthiness_limitation, "airworthiness limitation"},
    {LimitClass::life, "life"},
    {LimitClass::overhaul, "overhaul"},
    {LimitClass::shelf, "shelf"},
    {LimitClass::service, "service"},
}};
constexpr std::array<Word<TaskClass>, 5> task_classes = {{
    {TaskClass::task, "task"},
    {TaskClass::inspection, "inspection"},
    {TaskClass::service, "service"},
    {TaskClass::storage_step, "storage step"},
    {TaskClass::directive, "directive"},
}};

template <class Value, std::size_t size>
std::string word_for(Value value, const std::array<Word<Value>, size>& words) {
  for (const auto& [each, word] : words) {
    if (each == value) return word;
  }
  return "without a name in this test";
}

template <class Value, std::size_t size>
Names all_of(const std::array<Word<Value>, size>& words) {
  Names names;
  for (const auto& [each, word] : words) names.insert(word);
  return names;
}

Names counters_in(const logbook::Fact& fact) {
  Names names;
  if (const auto* flew = std::get_if<logbook::Flew>(&fact)) {
    for (const auto& at : flew->counts) names.insert(word_for(at.count.counter.kind, counters));
  }
  if (const auto* rule = std::get_if<logbook::CountingRule>(&fact)) {
    names.insert(word_for(rule->counter.kind, counters));
  }
  return names;
}

Names limit_class_in(const logbook::Fact& fact) {
  const auto* limit = std::get_if<logbook::Limit>(&fact);
  if (limit == nullptr || !limit->class_) return {};
  return {word_for(*limit->class_, limit_classes)};
}

Names task_class_in(const logbook::Fact& fact) {
  const auto* task = std::get_if<logbook::Task>(&fact);
  return task == nullptr ? Names() : Names{word_for(task->class_, task_classes)};
}

void insert_if(bool holds, const char* name, Names& names) {
  if (holds) names.insert(name);
}

Names policies_of(const logbook::Task& task) {
  const auto from = task.next_from.value_or(logbook::NextFrom::done);
  const bool comes_again = !task.every.empty();
  Names names;
  insert_if(comes_again && from == logbook::NextFrom::done, "next from done", names);
  insert_if(comes_again && from == logbook::NextFrom::due, "next from due", names);
  insert_if(task.excess_counts, "excess counts", names);
  insert_if(task.over_to_shop.has_value(), "over to the shop", names);
  insert_if(task.every.size() > 1, "whichever comes first", names);
  insert_if(task.first && comes_again, "first at", names);
  insert_if(task.first && !comes_again, "once", names);
  insert_if(task.first && task.first->combine == logbook::Combine::latest,
            "the latest of its terms", names);
  return names;
}

Names policies_of(const logbook::Limit& limit) {
  const auto& terms = limit.terms;
  const bool is_latest = terms.combine == logbook::Combine::latest;
  Names names;
  insert_if(!is_latest && terms.terms.size() > 1, "any of its terms", names);
  insert_if(is_latest, "the latest of its terms", names);
  insert_if(limit.when_exceeding, "when exceeding", names);
  insert_if(limit.on_model.has_value(), "on one model", names);
  return names;
}

Names policies_in(const logbook::Said& said) {
  Names names;
  if (const auto* task = std::get_if<logbook::Task>(&said.fact)) names = policies_of(*task);
  if (const auto* limit = std::get_if<logbook::Limit>(&said.fact)) names = policies_of(*limit);
  insert_if(std::holds_alternative<logbook::NextDue>(said.fact), "stated next due", names);
  insert_if(said.instead_of.has_value(), "instead of an entry", names);
  return names;
}

Names kinds() {
  Names names;
  for (const auto& kind : sentence::kinds()) names.insert(kind.name);
  return names;
}

}  // namespace

Names shown(const std::string& sort, const logbook::Said& said) {
  if (sort == "kind") return {std::string(sentence::kind_name(said.fact))};
  if (sort == "counter") return counters_in(said.fact);
  if (sort == "limit class") return limit_class_in(said.fact);
  if (sort == "task class") return task_class_in(said.fact);
  if (sort == "policy") return policies_in(said);
  return {};
}

Names wanted(const std::string& sort) {
  if (sort == "kind") return kinds();
  if (sort == "counter") return all_of(counters);
  if (sort == "limit class") return all_of(limit_classes);
  if (sort == "task class") return all_of(task_classes);
  if (sort == "policy") {
    return {"next from done",     "next from due", "excess counts",    "over to the shop",
            "first at",           "once",          "stated next due",  "whichever comes first",
            "when exceeding",     "on one model",  "any of its terms", "the latest of its terms",
            "instead of an entry"};
  }
  if (sort == "state") return {"ok", "soon", "due", "over", "not known"};
  return {};
}

}  // namespace demo
