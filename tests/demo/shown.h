// demo/shown.h: the names under which the demo's table may show a sentence, by sort: its kind, its
// counters, its class, its policies.
#pragma once

#include <set>
#include <string>

#include "logbook/fact.h"

namespace demo {

using Names = std::set<std::string>;

// What the sentence shows of the sort ("counter": starts, landings); empty for sorts that only a
// running program can judge (state, story).
Names shown(const std::string& sort, const logbook::Said& said);

// Every name of the sort that the language knows, so that each needs a row.
Names wanted(const std::string& sort);

}  // namespace demo
