#include "report/pieces.h"

#include <algorithm>
#include <set>
#include <utility>

#include "words/dues.h"
#include "words/words.h"

namespace report {

using document::Cell;
using document::State;

namespace {

document::Json sentences_json(const std::vector<std::string>& sentences) {
  document::Json array = document::Json::array();
  for (const std::string& sentence : sentences) array.add(sentence);
  return array;
}

}  // namespace

std::string as_of_line(const Sheet& sheet) {
  const std::string day = "As of " + quantity::say_long(sheet.as_of);
  if (sheet.horizon.empty()) return day + ".";
  return day + ", counting news up to " + words::horizon_text(sheet.horizon) + ".";
}

void say(std::string sentence, document::Document& page) {
  if (!sentence.empty()) page.blocks.emplace_back(document::Paragraph{std::move(sentence)});
}

void add_foot(document::Document& page, const Sheet& sheet) {
  for (const std::string& sentence : sheet.left_out) {
    page.blocks.emplace_back(document::Note{sentence});
  }
  for (const std::string& sentence : sheet.notices) {
    page.blocks.emplace_back(document::Note{sentence});
  }
  page.blocks.emplace_back(document::Paragraph{std::string(words::caution())});
}

document::Json json_head(const Sheet& sheet) {
  document::Json head = document::Json::object();
  head.set("as_of", quantity::say(sheet.as_of));
  head.set("horizon", words::horizon_text(sheet.horizon));
  if (!sheet.left_out.empty()) head.set("left_out", sentences_json(sheet.left_out));
  if (!sheet.notices.empty()) head.set("notices", sentences_json(sheet.notices));
  return head;
}

State state_of(reckon::State state) {
  switch (state) {
    case reckon::State::ok:
      return State::ok;
    case reckon::State::soon:
      return State::soon;
    case reckon::State::due:
      return State::due;
    case reckon::State::over:
      return State::over;
    case reckon::State::not_known:
      return State::not_known;
  }
  return State::not_known;
}

std::string state_word(reckon::State state) { return std::string(document::word(state_of(state))); }

bool wants_attention(reckon::State state) {
  return state == reckon::State::over || state == reckon::State::due ||
         state == reckon::State::not_known;
}

void add_attention(const std::vector<reckon::Item>& items, document::Document& page) {
  std::set<std::string> told;
  for (const reckon::Item& item : items) {
    if (!wants_attention(item.state)) continue;
    const std::string sentence = words::attention_text(item);
    if (told.insert(sentence).second) say(sentence, page);
  }
}

bool wants_attention(const std::vector<reckon::Item>& items) {
  return std::any_of(items.begin(), items.end(),
                     [](const reckon::Item& item) { return wants_attention(item.state); });
}

Cell words_cell(std::string shown) { return {std::move(shown), "", "", State::none}; }

Cell state_cell(reckon::State state) { return {"", "", "", state_of(state)}; }

Cell day_cell(std::optional<quantity::Day> day) {
  if (!day) return words_cell("");
  return {quantity::say_long(*day), quantity::say(*day), "", State::none};
}

}  // namespace report
