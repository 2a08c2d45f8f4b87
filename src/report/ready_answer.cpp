#include "report/ready_answer.h"

#include <algorithm>
#include <set>

#include "report/pieces.h"
#include "words/dues.h"
#include "words/figures.h"
#include "words/grammar.h"
#include "words/names.h"
#include "words/readiness.h"
#include "words/words.h"

namespace report {

namespace {

using document::Json;
using document::Paragraph;
using reckon::Item;
using reckon::Obstacle;
using reckon::Ready;

constexpr std::size_t most_next = 5;

void add_missing(const Ready& ready, const Asked& asked, document::Document& page) {
  const bool is_headline = ready.answer == reckon::Answer::not_known;
  bool is_first = is_headline;
  std::set<std::string> told;
  for (const auto& missing : ready.missing) {
    const words::MissingWords lack = words::missing_words(missing, asked.aircraft);
    if (!told.insert(lack.what).second) continue;  // of another limit
    if (!is_first) say((is_headline ? "Also: " : "Not known: ") + lack.what, page);
    if (!lack.example.empty()) say("Say for example: " + lack.example, page);
    is_first = false;
  }
}

// The first line tells the first obstacle, unless its name had to be cut.
bool is_told(const Obstacle& obstacle, const document::Document& page) {
  const std::string name = words::item_name(obstacle.item);
  return page.title.find(name) != std::string::npos ||
         page.title.find(words::capital(name)) != std::string::npos;
}

void add_obstacles(const Ready& ready, document::Document& page) {
  for (const Obstacle& obstacle : ready.obstacles) {
    const bool is_first = &obstacle == &ready.obstacles.front();
    if (is_first && is_told(obstacle, page)) continue;
    say(words::obstacle_text(obstacle), page);
  }
}

bool falls_due(const Item& item) {
  return item.kind != Item::Kind::on_condition && item.state != reckon::State::not_known;
}

// The first few; how many more there are is said, so that nothing is left out silently.
std::string then_text(const Ready& ready, const logbook::Aircraft& aircraft) {
  std::string text;
  std::size_t told = 0;
  std::int64_t more = 0;
  for (const Item& item : ready.next) {
    if (!falls_due(item)) continue;
    if (told == most_next) {
      ++more;
      continue;
    }
    text += (told == 0 ? "Then: " : "; ") + words::next_text(item);
    ++told;
  }
  if (more == 0) return told == 0 ? text : text + ".";
  return words::fill(
      "{}; {}: timeworn due {} lists all.",
      {text, words::counted(more, "more item", "more items"), words::short_name(aircraft)});
}

// The first line says how much may be flown already if it says anything of it.
void add_allowed(const Ready& ready, document::Document& page) {
  if (page.title.find("You can fly") == std::string::npos) say(words::allowed_text(ready), page);
}

Json allowed_json(const Ready& ready) {
  Json allowed = Json::object();
  if (ready.allowed_hours) {
    allowed.set("hours", quantity::floor_to_seconds(*ready.allowed_hours).count());
    allowed.set("shown", words::hours_left(*ready.allowed_hours));
  } else {
    allowed.set("hours", Json()).set("shown", Json());
  }
  return allowed.set("until", day_json(ready.allowed_until));
}

Json obstacle_json(const Obstacle& obstacle) {
  const reckon::Side& side = obstacle.item.sides.at(static_cast<std::size_t>(obstacle.side));
  Json object = Json::object();
  object.set("id", obstacle.item.id).set("about", words::thing_name(obstacle.item.thing));
  object.set("item", words::item_name(obstacle.item)).set("state", state_word(side.state));
  object.set("unit", words::unit_key(side));
  object.set("left", figure_json(obstacle.left, Toward::down));
  object.set("needed", figure_json(obstacle.needed, Toward::up));
  object.set("due_day", day_json(side.last_legal))
      .set("passed_already", obstacle.is_passed_already);
  return object.set("sentence", words::obstacle_text(obstacle));
}

Json missing_json(const Ready& ready, const logbook::Aircraft& aircraft) {
  Json array = Json::array();
  for (const auto& missing : ready.missing) {
    const words::MissingWords lack = words::missing_words(missing, aircraft);
    Json object = Json::object();
    object.set("condition", words::condition_key(missing.condition)).set("what", lack.what);
    object.set("say", lack.example.empty() ? Json() : Json(lack.example));
    array.add(std::move(object));
  }
  return array;
}

Json ready_json(const Asked& asked, const Ready& ready, const Sheet& sheet) {
  Json json = json_head(sheet);
  json.set("counted_to", day_json(ready.last_flight));
  json.set("about", words::thing_name(asked.aircraft));
  json.set("answer", words::answer_word(ready.answer));
  json.set("first", words::first_line(ready, asked.trip, asked.aircraft));
  json.set("allowed", allowed_json(ready));
  Json obstacles = Json::array();
  for (const Obstacle& obstacle : ready.obstacles) obstacles.add(obstacle_json(obstacle));
  json.set("obstacles", std::move(obstacles));
  json.set("missing", missing_json(ready, asked.aircraft));
  Json engines = Json::array();
  for (const std::string& sentence : asked.engines) engines.add(sentence);
  json.set("engines", std::move(engines));
  return json.set("next", items_json(ready.next));
}

}  // namespace

Answer ready_answer(const reckon::Histories&, const Asked& asked, const Ready& ready,
                    const Sheet& sheet) {
  Answer answer;
  document::Document& page = answer.document;
  page.title = words::first_line(ready, asked.trip, asked.aircraft);
  if (ready.answer == reckon::Answer::not_known) add_missing(ready, asked, page);
  add_obstacles(ready, page);
  add_allowed(ready, page);
  if (ready.answer != reckon::Answer::not_known) add_missing(ready, asked, page);
  say(then_text(ready, asked.aircraft), page);
  for (const std::string& sentence : asked.engines) say(sentence, page);
  say(words::trip_text(asked.trip), page);
  say(words::counted_to_text(ready.last_flight, asked.today) + " " + as_of_line(sheet), page);
  for (std::string& sentence : words::freshness_texts(ready, asked.today)) {
    say(std::move(sentence), page);
  }
  add_foot(page, sheet);
  answer.json = ready_json(asked, ready, sheet);
  answer.needs_attention = ready.answer != reckon::Answer::yes;
  return answer;
}

}  // namespace report
