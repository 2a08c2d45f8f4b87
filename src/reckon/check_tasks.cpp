#include "reckon/check_tasks.h"

#include <algorithm>

#include "reckon/look_alike.h"
#include "reckon/rules_in_force.h"

namespace reckon {

namespace {

using logbook::Task;
using logbook::TaskEnds;

const Task& task_in(const Placed& placed) { return std::get<Task>(placed.said->fact); }

const std::vector<Placed>& named(const std::map<logbook::TaskName, std::vector<Placed>>& all,
                                 const logbook::TaskName& name) {
  static const std::vector<Placed> none;
  const auto found = all.find(name);
  return found == all.end() ? none : found->second;
}

struct Wanted {
  logbook::TaskClass class_ = logbook::TaskClass::task;
  const logbook::TaskName& name;
  std::vector<std::string> candidates;
};

Objection unknown_task(const Wanted& wanted) {
  Objection objection = doubt(CheckKind::no_such_task, "name");
  objection.names = nearest_three(wanted.name.text, wanted.candidates);
  objection.names.insert(objection.names.begin(), wanted.name.text);
  return objection;
}

}  // namespace

void TaskChecks::add(const Placed& placed) {
  if (const auto* task = std::get_if<Task>(&placed.said->fact)) {
    defined_[task->name].push_back(placed);
  } else if (const auto* ends = std::get_if<TaskEnds>(&placed.said->fact)) {
    ended_[ends->name].push_back(placed);
  }
}

void TaskChecks::check(const Placed& placed, const NameChecks& names,
                       Objections& objections) const {
  const logbook::Fact& fact = placed.said->fact;
  if (const auto* done = std::get_if<logbook::Done>(&fact)) check_known(*done, names, objections);
  if (const auto* due = std::get_if<logbook::NextDue>(&fact)) {
    check_known(*due, names, objections);
  }
  if (const auto* ends = std::get_if<TaskEnds>(&fact)) check_ends(*ends, objections);
  if (std::holds_alternative<Task>(fact)) check_defined(placed, objections);
}

namespace {

using Defined = std::map<logbook::TaskName, std::vector<Placed>>;

// The tasks of that class that are on the thing.
std::vector<std::string> tasks_on(const Defined& defined, const logbook::Thing& thing,
                                  logbook::TaskClass class_, const NameChecks& names) {
  std::vector<std::string> on_it;
  for (const auto& [name, tasks] : defined) {
    const bool is_on_it = std::any_of(tasks.begin(), tasks.end(), [&](const Placed& placed) {
      return is_same_class(task_in(placed).class_, class_) &&
             names.reaches(task_in(placed).scope, thing);
    });
    if (is_on_it) on_it.push_back(name.text);
  }
  return on_it;
}

void ask_unless_known(const Wanted& wanted, Objections& objections) {
  const auto& on_it = wanted.candidates;
  if (std::find(on_it.begin(), on_it.end(), wanted.name.text) != on_it.end()) return;
  objections.push_back(unknown_task(wanted));
}

}  // namespace

void TaskChecks::check_known(const logbook::Done& done, const NameChecks& names,
                             Objections& objections) const {
  ask_unless_known({done.class_, done.name, tasks_on(defined_, done.thing, done.class_, names)},
                   objections);
}

void TaskChecks::check_known(const logbook::NextDue& due, const NameChecks& names,
                             Objections& objections) const {
  ask_unless_known({due.class_, due.name, tasks_on(defined_, due.thing, due.class_, names)},
                   objections);
}

void TaskChecks::check_ends(const TaskEnds& ends, Objections& objections) const {
  std::vector<std::string> same_scope;
  for (const auto& [name, tasks] : defined_) {
    const bool is_on_it = std::any_of(tasks.begin(), tasks.end(), [&](const Placed& placed) {
      return task_in(placed).scope == ends.scope;
    });
    if (is_on_it) same_scope.push_back(name.text);
  }
  ask_unless_known({ends.class_, ends.name, same_scope}, objections);
}

// Without "instead of" a second declaration would stand beside the first.
void TaskChecks::check_defined(const Placed& placed, Objections& objections) const {
  const Task& task = task_in(placed);
  if (placed.said->instead_of) return;
  const auto is_alike = [&](const auto& other) {
    return other.scope == task.scope && is_same_class(other.class_, task.class_);
  };
  const std::vector<Placed>& ends = named(ended_, task.name);
  for (const Placed& other : named(defined_, task.name)) {
    if (is_same(other, placed) || other.written > placed.written) continue;
    if (!is_alike(task_in(other))) continue;
    const bool has_ended = std::any_of(ends.begin(), ends.end(), [&](const Placed& end) {
      return is_alike(std::get<TaskEnds>(end.said->fact)) && other < end;
    });
    if (has_ended) continue;
    objections.push_back(doubt(CheckKind::task_defined_twice, "name"));
    objections.back().entries = {other.id};
    objections.back().names = {task.name.text};
    return;
  }
}

}  // namespace reckon
