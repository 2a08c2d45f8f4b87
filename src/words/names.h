// words/names.h: things, tasks, places and scopes by the names that people and sentences use.
#pragma once

#include <string>
#include <string_view>

#include "logbook/fact_rules.h"
#include "logbook/names.h"
#include "reckon/lives.h"

namespace words {

// A name as sentences write it: bare (ZZ-KIT) where it may stand so, else in quotes ("Larkwing 5").
std::string written_name(std::string_view name);
// engine 1 … engine 9 bare, other places in quotes.
std::string written_place(const logbook::PlaceName& place);
// In quotes, with quotes and backslashes inside escaped.
std::string in_quotes(std::string_view words);

// "ZZ-KIT" for an aircraft, else as thing_name.
std::string short_name(const logbook::Thing& thing);
// "model TS-40", "part number PN-4411", else as thing_name.
std::string scope_name(const logbook::Scope& scope);
// task, inspection, service, storage step, directive.
std::string_view class_name(logbook::TaskClass class_);
// inspection "annual inspection", directive D-26-04: as sentences write it.
std::string written_task(logbook::TaskClass class_, const logbook::TaskName& name);

// "directive D-26-04", "100-hour inspection", "life of part PN-4411 B-88", "overhaul of engine
// TS-40 E-1001"; a task on something aboard says on what.
std::string item_name(const reckon::Item& item);
// "engine 1 of ZZ-KIT", "on no aircraft".
std::string where_text(const reckon::Item& item);
// "since new", "since overhaul", "since the fitting" …
std::string_view basis_text(logbook::Basis basis);
// "manual 5-20" in quotes, or "no source on record".
std::string source_text(std::string_view source);

}  // namespace words
