#include "house/words.h"

#include <algorithm>
#include <array>
#include <cctype>
#include <string>

#include "house/scanned.h"

namespace house {

namespace {

enum class Where {
  texts,    // every string literal of src and every document
  readers,  // literals of the floors that speak to people, documents for users
  sources,  // every string literal of src
};

struct Banned {
  std::string_view word;
  std::string_view instead;
  Where where = Where::texts;
};

constexpr std::array banned = {
    Banned{"remaining", "left", Where::texts},
    Banned{"hub", "head office", Where::readers},
    Banned{"writer", "base, or who entered it", Where::readers},
    Banned{"digest", "chain, or the entry's number", Where::readers},
    Banned{"airworthy", "what the record says; a licensed person decides", Where::sources},
};

// Split in two so that this file does not hold what it looks for.
constexpr std::array leftovers = {
    Banned{"TO"
           "DO",
           "an issue"},
    Banned{"FIX"
           "ME",
           "the repair"},
    Banned{"XX"
           "X",
           "the repair"},
    Banned{"HA"
           "CK",
           "a sentence that says why"},
    Banned{"st"
           "ub",
           "the thing itself, or nothing"},
    Banned{"/wo"
           "rk/",
           "a path from the root of the tree"},
    Banned{"/tmp"
           "/tw",
           "a scratch folder that the test makes"},
    Banned{"/ro"
           "ot/",
           "a path from the root of the tree"},
    Banned{"/ho"
           "me/",
           "a path from the root of the tree"},
};

std::string lower(std::string_view text) {
  std::string result(text);
  std::transform(result.begin(), result.end(), result.begin(),
                 [](unsigned char c) { return static_cast<char>(std::tolower(c)); });
  return result;
}

// The text with everything between double quotes blanked; an escaped quote is a quote.
std::string without_quoted(std::string_view text) {
  std::string result(text);
  auto open = result.find('"');
  while (open != std::string::npos) {
    const auto end = result.find('"', open + 1);
    if (end == std::string::npos) break;
    std::fill(result.begin() + static_cast<std::ptrdiff_t>(open),
              result.begin() + static_cast<std::ptrdiff_t>(end), ' ');
    open = result.find('"', end + 1);
  }
  return result;
}

std::string instead_of(const Banned& entry) {
  return "we do not say \"" + std::string(entry.word) + "\"; say " + std::string(entry.instead);
}

bool speaks_to_people(std::string_view path) {
  static constexpr std::array<std::string_view, 6> floors = {"sentence", "words",  "report",
                                                             "command",  "intake", "document"};
  return std::find(floors.begin(), floors.end(), floor_of(path)) != floors.end();
}

bool is_document(std::string_view path) {
  return path.ends_with(".md") &&
         (path == "README.md" || path == "DEVELOPERS.md" || is_under(path, "docs") ||
          is_under(path, "reports") || is_under(path, "demo_db"));
}

// Documents on the record itself, for those who look inside, name its parts by their names.
bool is_for_insiders(std::string_view path) {
  return path == "DEVELOPERS.md" || path == "docs/record.md" || path == "docs/trust.md" ||
         is_under(path, "docs/decisions");
}

bool applies(const Banned& entry, std::string_view path) {
  if (is_under(path, "src")) return entry.where != Where::readers || speaks_to_people(path);
  if (!is_document(path) || entry.where == Where::sources) return false;
  return entry.where == Where::texts || !is_for_insiders(path);
}

Findings check_text(const Source& source, std::string_view text, std::size_t first_line) {
  Findings findings;
  const auto plain = lower(without_quoted(text));
  for (const auto& entry : banned) {
    if (!applies(entry, source.path)) continue;
    for (auto at = find_word(plain, entry.word); at != std::string::npos;
         at = find_word(plain, entry.word, at + 1)) {
      findings.push_back({source.path, first_line + line_at(plain, at) - 1, instead_of(entry)});
    }
  }
  return findings;
}

// A book's text may hold a shell comment or a path of a machine only as data, and tests make none.
std::size_t find_leftover(std::string_view line, const Banned& entry) {
  if (entry.word.front() == '/') return line.find(entry.word);
  return find_word(line, entry.word);
}

}  // namespace

Findings check_leftovers(const Source& source) {
  Findings findings;
  const auto lines = lines_of(source.text);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    for (const auto& entry : leftovers) {
      if (find_leftover(lines[i], entry) == std::string_view::npos) continue;
      findings.push_back({source.path, i + 1, instead_of(entry)});
    }
  }
  return findings;
}

Findings check_words(const Source& source) {
  Findings findings;
  if (is_document(source.path)) {
    const auto lines = lines_of(source.text);
    for (std::size_t i = 0; i < lines.size(); ++i) {
      append(findings, check_text(source, lines[i], i + 1));
    }
  }
  if (!is_under(source.path, "src") || !is_code(source.path)) return findings;
  for (const auto& literal : scan(source.text).literals) {
    append(findings, check_text(source, literal.text, literal.line));
  }
  return findings;
}

}  // namespace house
