#include "report/people_list.h"

#include <algorithm>

#include "report/pieces.h"
#include "words/grammar.h"
#include "words/signings.h"
#include "words/words.h"

namespace report {

namespace {

using document::Align;
using document::Json;
using document::Table;
using logbook::PublicKey;
using reckon::Ended;
using reckon::Holding;
using reckon::KeyHeld;

bool is_here(const KeyHeld& held, const std::vector<PublicKey>& here) {
  return std::find(here.begin(), here.end(), held.key) != here.end();
}

std::string since_text(std::string_view sentence, const Ended& ended) {
  return words::fill(sentence, {quantity::say_long(ended.day), words::entry_name(ended.entry)});
}

constexpr std::string_view key_ended = "ended {} ({})";
constexpr std::string_view takes_no_part = "takes no part since {} ({})";

// The earlier of both ends is what stops the key.
std::string key_state(const Holding& holding, const KeyHeld& held,
                      const std::vector<PublicKey>& here) {
  if (held.ended && (!holding.ended || held.ended->day <= holding.ended->day)) {
    return since_text(key_ended, *held.ended);
  }
  if (holding.ended) return since_text(takes_no_part, *holding.ended);
  return is_here(held, here) ? "on this machine" : "on another machine";
}

std::string holding_state(const Holding& holding) {
  return holding.ended ? since_text(takes_no_part, *holding.ended) : std::string("no key");
}

void add_rows(const Holding& holding, const std::vector<PublicKey>& here, Table& table) {
  const std::string certificate = words::certificate_text(holding.certificate, holding.kind);
  const auto row = [&](std::string key, std::string state) {
    table.rows.push_back({words_cell(holding.name.text), words_cell(certificate),
                          day_cell(holding.since), words_cell(std::move(key)),
                          words_cell(std::move(state)),
                          words_cell(words::entry_name(holding.entry))});
  };
  for (const KeyHeld& held : holding.keys) {
    row(words::fingerprint(held.key), key_state(holding, held, here));
  }
  if (holding.keys.empty()) row("", holding_state(holding));
}

Json ended_json(const std::optional<Ended>& ended) {
  if (!ended) return {};
  Json object = Json::object();
  object.set("day", quantity::say(ended->day));
  return object.set("entry", words::entry_name(ended->entry));
}

Json holding_json(const Holding& holding, const std::vector<PublicKey>& here) {
  Json keys = Json::array();
  for (const KeyHeld& held : holding.keys) {
    Json object = Json::object();
    object.set("key", held.key.text).set("shown", words::fingerprint(held.key));
    object.set("on_this_machine", is_here(held, here));
    keys.add(object.set("ended", ended_json(held.ended)));
  }
  Json object = Json::object();
  object.set("person", holding.name.text).set("certificate", holding.certificate);
  object.set("kind", holding.kind.value_or("")).set("since", quantity::say(holding.since));
  object.set("entry", words::entry_name(holding.entry)).set("keys", std::move(keys));
  return object.set("ended", ended_json(holding.ended));
}

}  // namespace

Answer people_list(const std::vector<Holding>& holdings, const std::vector<PublicKey>& here,
                   const Sheet& sheet) {
  std::vector<Holding> sorted = holdings;
  std::stable_sort(sorted.begin(), sorted.end(),
                   [](const Holding& a, const Holding& b) { return a.name < b.name; });
  Table table{"people",
              {{"person", "Person", Align::left},
               {"certificate", "Holds", Align::left},
               {"since", "Since", Align::left},
               {"key", "Key", Align::left},
               {"state", "State", Align::left},
               {"entry", "Entry", Align::left}},
              {},
              "Nobody is on record. Say for example: person \"B. Quill\" holds certificate "
              "\"A-1234\", kind \"mechanic\"."};
  Json array = Json::array();
  for (const Holding& holding : sorted) {
    add_rows(holding, here, table);
    array.add(holding_json(holding, here));
  }
  Answer answer;
  answer.document.title = "People and their keys";
  answer.document.head = {as_of_line(sheet)};
  answer.document.blocks.emplace_back(std::move(table));
  add_foot(answer.document, sheet);
  answer.json = json_head(sheet);
  answer.json.set("people", std::move(array));
  return answer;
}

}  // namespace report
