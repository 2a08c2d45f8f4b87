#include "cases/rows.h"

#include <array>
#include <cmath>

#include "cases/pieces.h"

namespace cases {

namespace {

using nlohmann::json;

struct Member {
  std::string_view word;
  const char* name;
};

constexpr std::array members = {
    Member{"left", "left"},   Member{"used", "used"},
    Member{"limit", "limit"}, Member{"due airframe", "due_at_airframe"},
    Member{"due", "due_at"},  Member{"needed", "needed"},
};

std::string text_of(const json& row, const char* name) {
  const auto found = row.find(name);
  return found != row.end() && found->is_string() ? found->get<std::string>() : std::string();
}

bool is_day(std::string_view text) { return text.size() == 10 && text[4] == '-' && text[7] == '-'; }

// The words behind a clause's first word(s), if it begins with them.
std::optional<std::string> behind(std::string_view clause, std::string_view word) {
  if (!clause.starts_with(word)) return std::nullopt;
  const std::string_view rest = clause.substr(word.size());
  if (rest.empty() || rest.front() != ' ') return std::nullopt;
  return std::string(trimmed(rest));
}

std::string differs(const std::string& clause, const std::string& got) {
  return "expected " + clause + ", got " + got;
}

std::string against_figure(const std::string& clause, const Member& member, std::string wanted,
                           const json& row) {
  const json& value = row.contains(member.name) ? row.at(member.name) : json();
  const std::string got = value.dump() + " " + text_of(row, "unit");
  if (wanted == "not known") return value.is_null() ? "" : differs(clause, got);
  if (const auto at_most = behind(wanted, "at most")) {
    if (!row.value("left_is_at_most", false)) return differs(clause, got + ", not \"at most\"");
    wanted = *at_most;
  }
  const auto figure = read_figure(wanted);
  if (!figure) return "\"" + wanted + "\" is no figure";
  const auto amount = amount_of(value, figure->unit);
  return amount == figure->amount ? "" : differs(clause, got);
}

std::string against_text(const std::string& clause, const std::string& wanted,
                         const std::string& got) {
  return wanted == got ? "" : differs(clause, got.empty() ? "nothing" : got);
}

std::string against_clause(const std::string& clause, const json& row) {
  if (clause == "governs" || clause == "not governs") {
    const bool wanted = clause == "governs";
    return row.value("governs", !wanted) == wanted ? "" : differs(clause, "the opposite");
  }
  if (const auto wanted = behind(clause, "state")) {
    return against_text(clause, *wanted, text_of(row, "state"));
  }
  if (const auto wanted = behind(clause, "expected")) {
    return against_text(clause, *wanted == "none" ? "" : *wanted, text_of(row, "expected_day"));
  }
  if (const auto wanted = behind(clause, "source")) {
    return against_text(clause, unquoted(*wanted), text_of(row, "source"));
  }
  if (const auto wanted = behind(clause, "due"); wanted && is_day(*wanted)) {
    return against_text(clause, *wanted, text_of(row, "due_day"));
  }
  for (const Member& member : members) {
    if (const auto wanted = behind(clause, member.word)) {
      return against_figure(clause, member, *wanted, row);
    }
  }
  return "\"" + clause + "\" is no expectation";
}

// The unit that a clause speaks of, which tells the sides of an item apart.
std::string unit_of(const std::vector<std::string>& pieces) {
  for (std::size_t i = 1; i < pieces.size(); ++i) {
    if (const auto unit = behind(pieces[i], "unit")) return unit_key(*unit);
    for (const Member& member : members) {
      auto wanted = behind(pieces[i], member.word);
      if (!wanted) continue;
      if (is_day(*wanted)) return "days";
      const auto figure = read_figure(behind(*wanted, "at most").value_or(*wanted));
      if (figure && std::string_view(member.name) != "due_at_airframe") return figure->unit;
    }
  }
  return {};
}

std::vector<json> rows_of(const std::string& name, const std::string& unit, const json& rows) {
  std::vector<json> found;
  for (const json& row : rows) {
    const bool is_named = holds(lower(text_of(row, "item")), lower(name)) ||
                          holds(lower(text_of(row, "about")), lower(name));
    if (is_named && (unit.empty() || text_of(row, "unit") == unit)) found.push_back(row);
  }
  return found;
}

// "item due 3 h; item due 12 days" of what there is.
std::string names_of(const json& rows) {
  std::string names;
  for (const json& row : rows) {
    names += (names.empty() ? "" : "; ") + text_of(row, "item") + " [" + text_of(row, "unit") + "]";
  }
  return names.empty() ? "an empty list" : names;
}

bool has_grade(const json& row, const std::string& grade) {
  return text_of(row, "sureness") == grade;
}

}  // namespace

std::optional<std::int64_t> amount_of(const json& figure, const std::string& unit) {
  if (!figure.is_number()) return std::nullopt;
  const bool is_whole = unit == "days" || unit == "h" || unit.starts_with("h ");
  if (is_whole) return figure.get<std::int64_t>();
  return std::llround(figure.get<double>() * 1000.0);
}

std::string against_rows(const std::vector<std::string>& pieces, const json& rows) {
  const std::string name = unquoted(pieces.front());
  const bool is_absent = pieces.size() == 2 && pieces[1] == "not listed";
  const auto found = rows_of(name, unit_of(pieces), rows);
  if (is_absent) return found.empty() ? "" : "expected no such row, got " + names_of(found);
  if (found.empty()) return "no row \"" + name + "\" in that unit; got " + names_of(rows);
  if (found.size() > 1) return "several rows answer to it: " + names_of(found);
  std::string wrong;
  for (std::size_t i = 1; i < pieces.size(); ++i) {
    if (pieces[i].starts_with("unit ")) continue;
    const std::string one = against_clause(pieces[i], found.front());
    if (!one.empty()) wrong += (wrong.empty() ? "" : "; ") + one;
  }
  return wrong;
}

std::string against_totals(const std::string& expectation, const json& totals) {
  std::string wanted = expectation;
  const std::string behind_overhaul = " since overhaul";
  const bool is_overhaul = wanted.ends_with(behind_overhaul);
  if (is_overhaul) wanted.resize(wanted.size() - behind_overhaul.size());
  std::string grade = "exact";
  if (const auto rest = behind(wanted, "at least")) {
    grade = "at least";
    wanted = *rest;
  } else if (const auto unknown = behind(wanted, "unknown")) {
    grade = "unknown";
    wanted = "0 " + *unknown;
  }
  const auto figure = read_figure(wanted);
  if (!figure) return "\"" + wanted + "\" is no figure";
  for (const json& row : totals) {
    if (text_of(row, "unit") != figure->unit) continue;
    if ((text_of(row, "since") == "overhaul") != is_overhaul) continue;
    const auto amount = amount_of(row.value("amount", json()), figure->unit);
    const bool is_it = has_grade(row, grade) && (grade == "unknown" || amount == figure->amount);
    return is_it ? "" : differs("total " + expectation, row.dump());
  }
  return differs("total " + expectation, "no such total in " + totals.dump());
}

}  // namespace cases
