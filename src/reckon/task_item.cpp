#include "reckon/task_item.h"

#include <algorithm>

#include "reckon/item_about.h"
#include "reckon/limit_side.h"
#include "reckon/settle.h"
#include "reckon/subject_text.h"
#include "reckon/task_side.h"
#include "reckon/waiting.h"

namespace reckon {
namespace {

// Before it is done for the first time, a task with first terms is reckoned like a limit.
void count_first(const TaskCourse& course, Item& item) {
  item.combine = course.rule.task->first->combine;
  for (const logbook::Term& term : course.rule.task->first->terms) {
    item.sides.push_back(limit_side(course.subject, term));
  }
}

void count_every(const TaskCourse& course, Item& item) {
  for (const logbook::Term& term : course.rule.task->every) {
    item.sides.push_back(counts_from_done(term) ? task_side(course, term)
                                                : limit_side(course.subject, term));
  }
  for (Side& side : further_sides(course)) item.sides.push_back(std::move(side));
}

void note_events(const View& view, const std::vector<TaskEvent>& events, Item& item) {
  for (const TaskEvent& event : events) {
    if (event.done == nullptr) continue;
    item.last_done = event.fact->root;
    item.last_done_day = event.day();
    if (view.standing.has_signing) item.last_done_signed = event.fact->sign_state;
  }
  if (item.last_done) item.because.push_back(*item.last_done);
  if (!events.empty() && events.back().next_due != nullptr) {
    item.because.push_back(events.back().fact->root);
  }
}

Item named_item(const View& view, const TaskInForce& rule, const logbook::Thing& thing) {
  Item item = item_about(view, thing, *rule.fact);
  item.kind = Item::Kind::task;
  item.id = class_text(rule.task->class_) + ":" + rule.task->name.text + ":" + subject_text(thing);
  item.task = rule.task;
  item.source = rule.task->source.value_or("");
  return item;
}

void settle_or_leave_open(Item& item) {
  if (!item.sides.empty()) return settle(item);
  item.state = State::not_known;
  item.lack = Lack::last_done;
}

}  // namespace

std::optional<Item> task_item(const View& view, const TaskInForce& rule,
                              const logbook::Thing& thing) {
  const std::vector<TaskEvent> events = task_events(view, *rule.task, thing);
  const bool is_done = !events.empty() && events.back().done != nullptr;
  if (is_done && rule.task->every.empty()) return std::nullopt;
  Item item = named_item(view, rule, thing);
  const TaskCourse course{{view, thing, false}, rule, events};
  if (events.empty() && rule.task->first) {
    count_first(course, item);
  } else {
    count_every(course, item);
  }
  note_events(view, events, item);
  item.not_counted = waiting_for(view, item);
  settle_or_leave_open(item);
  return item;
}

std::vector<Item> task_items(const View& view, const logbook::Thing& thing) {
  std::vector<Item> items;
  for (const TaskInForce& rule : view.rules.tasks) {
    if (!reaches(view.histories, rule.task->scope, thing)) continue;
    std::optional<Item> item = task_item(view, rule, thing);
    if (!item) continue;
    // The same name may stand on an aircraft and on its model: both hold, told apart by entry.
    const bool is_twice = std::any_of(items.begin(), items.end(),
                                      [&](const Item& other) { return other.id == item->id; });
    if (is_twice) item->id += ":" + entry_text(item->entry);
    items.push_back(std::move(*item));
  }
  return items;
}

}  // namespace reckon
