// reckon/task_item.h: the next due point of a task on one thing, as an item.
#pragma once

#include <optional>
#include <vector>

#include "reckon/view.h"

namespace reckon {

// Empty when the task was to be done once and has been.
std::optional<Item> task_item(const View& view, const TaskInForce& rule,
                              const logbook::Thing& thing);

// Of every task in force that reaches the thing.
std::vector<Item> task_items(const View& view, const logbook::Thing& thing);

}  // namespace reckon
