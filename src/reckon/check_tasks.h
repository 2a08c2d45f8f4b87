// reckon/check_tasks.h: whether a task that is done is one that is on record, and whether one is
// declared twice.
#pragma once

#include <map>
#include <string>
#include <vector>

#include "reckon/check_names.h"

namespace reckon {

class TaskChecks {
 public:
  void add(const Placed& placed);
  void check(const Placed& placed, const NameChecks& names, Objections& objections) const;

 private:
  void check_known(const logbook::Done& done, const NameChecks& names,
                   Objections& objections) const;
  void check_known(const logbook::NextDue& due, const NameChecks& names,
                   Objections& objections) const;
  void check_ends(const logbook::TaskEnds& ends, Objections& objections) const;
  void check_defined(const Placed& placed, Objections& objections) const;

  std::map<logbook::TaskName, std::vector<Placed>> defined_;  // each holds a Task
  std::map<logbook::TaskName, std::vector<Placed>> ended_;    // each holds a TaskEnds
};

}  // namespace reckon
