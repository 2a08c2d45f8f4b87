#include "cases/answer.h"

#include <charconv>

#include "cases/figures.h"
#include "cases/pieces.h"
#include "cases/rows.h"

namespace cases {

namespace {

using nlohmann::json;

// The part of the answer by a name; an empty one if there is none.
json part_of(const Answer& answer, const char* name) {
  if (!answer.json.is_object() || !answer.json.contains(name)) return json();
  return answer.json.at(name);
}

std::string differs(const std::string& wanted, const std::string& got) {
  return wanted == got ? "" : "expected " + wanted + ", got " + got;
}

std::string shown(const json& value) {
  return value.is_string() ? value.get<std::string>() : value.dump();
}

std::string against_allowed(const std::string& wanted, const Answer& answer) {
  const json allowed = part_of(answer, "allowed");
  if (!allowed.is_object()) return "the answer says nothing of what is allowed";
  if (wanted.starts_with("until ")) {
    return differs(wanted.substr(6), shown(allowed.value("until", json())));
  }
  if (wanted == "not known") return differs("null", allowed.value("hours", json()).dump());
  const auto figure = read_figure(wanted);
  if (!figure) return "\"" + wanted + "\" is no figure";
  const auto amount = amount_of(allowed.value("hours", json()), figure->unit);
  return amount == figure->amount ? "" : "expected " + wanted + " allowed, got " + allowed.dump();
}

std::string against_missing(const std::string& wanted, const Answer& answer) {
  const json missing = part_of(answer, "missing");
  if (!missing.is_array()) return "the answer says nothing of what is missing";
  if (wanted == "nothing") return missing.empty() ? "" : "expected nothing, got " + missing.dump();
  for (const json& one : missing) {
    if (one.value("condition", "") == unquoted(wanted)) return {};
  }
  return "expected " + wanted + " among what is missing, got " + missing.dump();
}

// `trends.0.grade "no trend can be told yet"`: a path of members and places, then the value.
std::string against_path(const std::string& expectation, const Answer& answer) {
  const auto blank = expectation.find(' ');
  const std::string wanted =
      unquoted(std::string_view(expectation).substr(std::min(blank, expectation.size())));
  json at = answer.json;
  for (const std::string& step : pieces_of(expectation.substr(0, blank), ".")) {
    std::size_t place = 0;
    const auto end = step.data() + step.size();
    const bool is_place = std::from_chars(step.data(), end, place).ptr == end;
    if (is_place && at.is_array() && place < at.size()) {
      json inner = at.at(place);
      at = std::move(inner);
    } else if (at.is_object() && at.contains(step)) {
      json inner = at.at(step);
      at = std::move(inner);
    } else {
      return "there is no " + step + " in " + at.dump();
    }
  }
  return differs(wanted, shown(at));
}

std::string against_words(const std::string& wanted, const Answer& answer, bool is_there) {
  const std::string words = unquoted(wanted);
  if (holds(answer.text, words) == is_there) return {};
  return (is_there ? "these words do not occur: " : "these words occur: ") + words + "\n" +
         answer.text;
}

std::string against_first(const std::string& wanted, const Answer& answer) {
  const json items = part_of(answer, "items");
  if (!items.is_array() || items.empty()) return "the list is empty";
  const std::string got = items.at(0).value("item", "");
  return holds(lower(got), lower(unquoted(wanted))) ? ""
                                                    : "expected first " + wanted + ", got " + got;
}

std::string against_row(const std::string& expectation, const char* list, const Answer& answer) {
  const json rows = part_of(answer, list);
  if (!rows.is_array()) return std::string("the answer has no ") + list;
  const auto blank = expectation.find(' ');
  return against_rows(pieces_of(std::string_view(expectation).substr(blank), " | "), rows);
}

}  // namespace

std::string against(const std::string& expectation, const Answer& answer) {
  const auto blank = expectation.find(' ');
  const std::string word = expectation.substr(0, blank);
  const std::string rest(blank == std::string::npos
                             ? std::string_view()
                             : trimmed(std::string_view(expectation).substr(blank)));
  if (word == "exit") return differs("exit " + rest, "exit " + std::to_string(answer.exit));
  if (word == "answer") return differs(rest, shown(part_of(answer, "answer")));
  if (word == "allowed") return against_allowed(rest, answer);
  if (word == "missing") return against_missing(rest, answer);
  if (word == "item") return against_row(expectation, "items", answer);
  if (word == "next") return against_row(expectation, "next", answer);
  if (word == "obstacle") return against_row(expectation, "obstacles", answer);
  if (word == "total") return against_totals(rest, part_of(answer, "totals"));
  if (word == "first") return against_first(rest, answer);
  if (word == "json") return against_path(rest, answer);
  if (word == "words" || word == "because") return against_words(rest, answer, true);
  if (expectation.starts_with("no words ")) {
    return against_words(expectation.substr(9), answer, false);
  }
  return "\"" + expectation + "\" is no expectation";
}

}  // namespace cases
