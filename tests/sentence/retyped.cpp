#include "sentence/retyped.h"

#include <functional>
#include <regex>

#include "sentence/cursor.h"

namespace retyped {
namespace {

// Changes what stands outside quotes, piece by piece.
std::string outside_quotes(const std::string& text,
                           const std::function<std::string(const std::string&)>& change) {
  std::string result;
  std::string open;
  for (std::size_t at = 0; at < text.size();) {
    const auto end = sentence::end_of_quote(text, at);
    if (!end) {
      open += text[at++];
      continue;
    }
    result += change(open) + text.substr(at, *end - at);
    open.clear();
    at = *end;
  }
  return result + change(open);
}

std::string replaced(const std::string& text, const char* pattern, const char* by) {
  return outside_quotes(text, [&](const std::string& piece) {
    return std::regex_replace(piece, std::regex(pattern), by);
  });
}

std::string in_lower_case(const std::string& text) {
  return outside_quotes(text, [](const std::string& piece) {
    std::string result = piece;
    for (char& c : result) {
      if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
    }
    return result;
  });
}
std::string without_the_point(const std::string& text) { return text.substr(0, text.size() - 1); }
std::string without_blanks_after_commas(const std::string& text) {
  return replaced(text, ", ", ",");
}
std::string with_decimal_commas(const std::string& text) {
  return replaced(text, "([0-9])\\.([0-9])", "$1,$2");
}
std::string with_units_glued_on(const std::string& text) {
  return replaced(text, "([0-9]) (h|C|V|s|min|ft|%|lb/h|kg/h|psi|starts?|landings?)\\b", "$1$2");
}
std::string with_percent_glued_on(const std::string& text) { return replaced(text, " %", "%"); }
std::string with_short_words(const std::string& text) {
  return replaced(replaced(text, "landings?\\b", "ldgs"), "([0-9]) h\\b", "$1 hrs");
}
std::string with_singulars(const std::string& text) {
  return replaced(text, "(start|flight|landing|cycle|day|month|year)s\\b", "$1");
}
std::string with_plurals(const std::string& text) {
  return replaced(text, "\\b1 (start|flight|landing|cycle|day|month|year)\\b", "1 $1s");
}
std::string without_commas(const std::string& text) { return replaced(text, ", ", " "); }
// Texts that hold quotes themselves stay as they are: without the outer ones, theirs would take
// over.
std::string without_quotes(const std::string& text) {
  if (text.find("\\\"") != std::string::npos) return text;
  std::string result;
  for (const char c : text) {
    if (c != '"') result += c;
  }
  return result;
}
std::string with_smart_quotes(const std::string& text) {
  std::string result;
  for (std::size_t at = 0; at < text.size();) {
    const auto end = sentence::end_of_quote(text, at);
    if (!end) {
      result += text[at++];
      continue;
    }
    result += "\xE2\x80\x9C" + text.substr(at + 1, *end - at - 2) + "\xE2\x80\x9D";
    at = *end;
  }
  return result;
}
std::string with_more_blanks(const std::string& text) { return replaced(text, " ", "  \t "); }
std::string with_named_months(const std::string& text) {
  return replaced(text, "\\b([0-9]{4})-03-([0-9]{2})\\b", "$2 Mar $1");
}
// 1.5 h as 1:30, for the tenths whose minutes are short to write.
std::string with_minutes(const std::string& text) {
  return replaced(replaced(text, "\\b([0-9]+)\\.5 h\\b", "$1:30 h"), "\\b([0-9]+)\\.1 h\\b",
                  "$1:06");
}
std::string with_hours_and_minutes(const std::string& text) {
  return replaced(replaced(text, "\\b([0-9]+)\\.5 h\\b", "$1h30"), "\\b([0-9]+)\\.0 h\\b",
                  "$1 h 00 min");
}

}  // namespace

const std::vector<Way>& ways() {
  static const std::vector<Way> all = {{"in lower case", in_lower_case},
                                       {"without the point", without_the_point},
                                       {"without blanks after commas", without_blanks_after_commas},
                                       {"with decimal commas", with_decimal_commas},
                                       {"with units glued on", with_units_glued_on},
                                       {"with percent glued on", with_percent_glued_on},
                                       {"with short words", with_short_words},
                                       {"with singulars", with_singulars},
                                       {"with plurals", with_plurals},
                                       {"without commas", without_commas},
                                       {"without quotes", without_quotes},
                                       {"with smart quotes", with_smart_quotes},
                                       {"with more blanks", with_more_blanks},
                                       {"with named months", with_named_months},
                                       {"with minutes", with_minutes},
                                       {"with hours and minutes", with_hours_and_minutes}};
  return all;
}

}  // namespace retyped
