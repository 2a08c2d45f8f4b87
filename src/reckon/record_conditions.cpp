#include <algorithm>
#include <set>

#include "reckon/conditions.h"
#include "reckon/exceedances.h"

namespace reckon {
namespace {

using logbook::About;

constexpr const char* what_is_reviewed = "directives and limitations";

void add_review(const Asked& asked, const Book& book, std::vector<Missing>& missing) {
  Missing review;
  review.condition = Condition::reviewed;
  review.thing = asked.aircraft;
  for (const StandingFact& fact : asked.view.standing.facts) {
    const auto* reviewed = std::get_if<logbook::Reviewed>(&fact.said->fact);
    if (reviewed == nullptr || reviewed->aircraft != asked.aircraft) continue;
    if (reviewed->what == what_is_reviewed) review.day = fact.said->day;
  }
  const Day oldest = asked.view.as_of() - quantity::Days::of(book.review_days);
  if (!review.day || *review.day < oldest) missing.push_back(review);
}

// A question that names nothing may be about anything.
bool touches(const Asked& asked, const Question& question) {
  if (question.about.empty()) return true;
  return std::any_of(
      question.about.begin(), question.about.end(), [&](const logbook::Thing& thing) {
        return std::find(asked.aboard.begin(), asked.aboard.end(), thing) != asked.aboard.end();
      });
}

void add_questions(const Asked& asked, std::vector<Missing>& missing) {
  std::set<std::string> told;
  for (const auto* questions :
       {&asked.view.standing.questions, &asked.view.histories.questions()}) {
    for (const Question& question : *questions) {
      if (!touches(asked, question) || !told.insert(question.name).second) continue;
      Missing open;
      open.condition = Condition::questions;
      open.thing = asked.aircraft;
      open.question = question.name;
      open.entries = question.entries;
      missing.push_back(std::move(open));
    }
  }
}

std::vector<About> names_of(const logbook::Aircraft& aircraft) {
  return {{"aircraft", {aircraft.registration.text}}};
}
std::vector<About> names_of(const logbook::Engine& engine) {
  return {{"engine", {engine.model.text, engine.serial.text}}};
}
std::vector<About> names_of(const logbook::Part& part) {
  return {{"part", {part.number.text, part.serial.text}}, {"part number", {part.number.text}}};
}

std::vector<About> names_aboard(const Asked& asked) {
  std::vector<About> names;
  for (const logbook::Thing& thing : asked.aboard) {
    for (About& name : std::visit([](const auto& subject) { return names_of(subject); }, thing)) {
      names.push_back(std::move(name));
    }
    if (const auto model = asked.view.histories.model_of(thing)) {
      names.push_back({"model", {model->text}});
    }
  }
  return names;
}

// An entry that says only which entry it changes, or nothing at all, may be about anything.
bool says_what_it_is_about(const About& about) {
  return about.class_ != "entry" && about.class_ != "question";
}

bool may_touch(const logbook::Entry& entry, const std::vector<About>& names) {
  const std::vector<About>& about = entry.frame.about;
  if (std::none_of(about.begin(), about.end(), says_what_it_is_about)) return true;
  return std::any_of(about.begin(), about.end(), [&](const About& named) {
    return std::find(names.begin(), names.end(), named) != names.end();
  });
}

void add_unread(const Asked& asked, std::vector<Missing>& missing) {
  const std::vector<About> names = names_aboard(asked);
  Missing unread;
  unread.condition = Condition::unread;
  unread.thing = asked.aircraft;
  for (const logbook::Entry* entry : asked.view.standing.unread) {
    if (may_touch(*entry, names)) unread.entries.push_back(entry->id);
  }
  if (!unread.entries.empty()) missing.push_back(std::move(unread));
}

void add_exceedances(const Asked& asked, std::vector<Missing>& missing) {
  const View& view = asked.view;
  for (const Exceedance& open : open_exceedances(view.histories, view.standing, asked.aircraft)) {
    Missing look;
    look.condition = Condition::looked_into;
    look.thing = open.engine ? logbook::Thing(*open.engine) : logbook::Thing(asked.aircraft);
    look.entries = {open.newest};
    look.day = open.day;
    missing.push_back(std::move(look));
  }
}

}  // namespace

std::vector<Missing> missing_of_record(const Asked& asked, const Book& book) {
  std::vector<Missing> missing;
  add_review(asked, book, missing);
  add_questions(asked, missing);
  add_unread(asked, missing);
  if (!book.all_bases_heard) {
    Missing bases;
    bases.condition = Condition::bases_heard;
    bases.thing = asked.aircraft;
    missing.push_back(bases);
  }
  add_exceedances(asked, missing);
  return missing;
}

}  // namespace reckon
