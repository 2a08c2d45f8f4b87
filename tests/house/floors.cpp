#include "house/floors.h"

#include <algorithm>
#include <array>
#include <map>
#include <set>
#include <string>

#include "house/scanned.h"

namespace house {

namespace {

using Names = std::set<std::string, std::less<>>;

// For each floor the ones it may see besides itself.
const std::map<std::string, Names, std::less<>>& floors() {
  static const std::map<std::string, Names, std::less<>> table = {
      {"quantity", {}},
      {"text", {}},
      {"seal", {}},
      {"document", {"text"}},
      {"logbook", {"quantity"}},
      {"sentence", {"logbook", "quantity", "text"}},
      {"reckon", {"logbook", "quantity"}},
      {"store", {"sentence", "seal", "logbook", "quantity"}},
      {"words", {"reckon", "logbook", "quantity", "text"}},
      {"report", {"words", "reckon", "logbook", "quantity", "document"}},
      {"intake", {"store", "sentence", "logbook", "quantity"}},
      {"exchange", {"store", "sentence", "logbook", "quantity"}},
      {"command",
       {"report", "intake", "exchange", "words", "store", "reckon", "sentence", "logbook",
        "document", "seal", "text", "quantity"}},
      {"main", {"command", "document", "exchange", "words", "store", "logbook", "quantity"}},
  };
  return table;
}

// Where a foreign library may be included: one file of src, or a folder when it ends with a slash.
struct Door {
  std::string_view library;  // what the include begins with
  std::string_view place;
};

constexpr std::array doors = {
    Door{"sqlite3.h", "src/store/sqlite.cpp"},
    Door{"CLI/", "src/command/command_line.cpp"},
    Door{"editline/", "src/command/prompt.cpp"},
    Door{"histedit.h", "src/command/prompt.cpp"},
    Door{"sodium", "src/seal/"},
    Door{"utf8proc.h", "src/text/"},
    Door{"date/", "src/quantity/calendar.cpp"},
    Door{"boost/math/", "src/reckon/trend/"},
    Door{"boost/test/", "tests/"},
    Door{"nlohmann/", "src/document/"},
    Door{"cairo", "src/document/paper.cpp"},
    Door{"pango/", "src/document/paper.cpp"},
    Door{"libpq-fe.h", "src/exchange/hub.cpp"},
};

bool is_at(std::string_view path, std::string_view place) {
  return place.ends_with('/') ? path.starts_with(place) : path == place;
}

constexpr std::array<std::string_view, 7> worldly = {"fstream", "iostream", "filesystem", "ctime",
                                                     "time.h",  "unistd.h", "sys/"};

const Names& pure_floors() {
  static const Names names = {"quantity", "text",   "seal",  "document", "logbook",
                              "sentence", "reckon", "words", "report"};
  return names;
}

std::string unit_of(const std::string& path) { return path.substr(0, path.find_last_of('.')); }

using Arrows = std::map<std::string, Names>;

Arrows arrows_of(const std::vector<Source>& sources) {
  Arrows arrows;
  for (const auto& source : sources) {
    if (!is_code(source.path)) continue;
    for (const auto& include : includes_of(source.text)) {
      const auto root = is_under(source.path, "src") ? std::string("src/") : std::string("tests/");
      const auto target = unit_of(root + include.path);
      if (include.is_quoted && target != unit_of(source.path)) {
        arrows[unit_of(source.path)].insert(target);
      }
    }
  }
  return arrows;
}

// All units that can be reached from one by following arrows.
Names reach_of(const std::string& unit, const Arrows& arrows) {
  Names reached;
  std::vector<std::string> open = {unit};
  while (!open.empty()) {
    const auto found = arrows.find(open.back());
    open.pop_back();
    if (found == arrows.end()) continue;
    for (const auto& next : found->second) {
      if (reached.insert(next).second) open.push_back(next);
    }
  }
  return reached;
}

// Boost.Math has one door, whichever file of the trend that is.
Findings check_single_doors(const std::vector<Source>& sources, std::string_view library) {
  Names users;
  for (const auto& source : sources) {
    if (!is_under(source.path, "src")) continue;
    const auto includes = includes_of(source.text);
    const bool uses = std::any_of(includes.begin(), includes.end(), [&](const Include& include) {
      return include.path.starts_with(library);
    });
    if (uses) users.insert(source.path);
  }
  if (users.size() < 2) return {};
  return {{*users.rbegin(), 0,
           std::string(library) + " has a second door; the first is " + *users.begin()}};
}

}  // namespace

Findings check_floors(const Source& source) {
  Findings findings;
  const auto floor = floor_of(source.path);
  if (floor.empty() || !is_code(source.path)) return findings;
  const auto row = floors().find(floor);
  if (row == floors().end()) return {{source.path, 0, "src/" + floor + " is no floor we know"}};
  for (const auto& include : includes_of(source.text)) {
    if (!include.is_quoted) continue;
    const auto target = floor_of("src/" + include.path);
    if (target == floor || row->second.contains(target)) continue;
    findings.push_back({source.path, include.line, floor + " may not include " + include.path});
  }
  return findings;
}

Findings check_doors(const Source& source) {
  Findings findings;
  if (!is_under(source.path, "src") || !is_code(source.path)) return findings;
  for (const auto& include : includes_of(source.text)) {
    for (const auto& door : doors) {
      if (!include.path.starts_with(door.library) || is_at(source.path, door.place)) continue;
      findings.push_back({source.path, include.line,
                          include.path + " is included only in " + std::string(door.place)});
    }
  }
  return findings;
}

Findings check_purity(const Source& source) {
  Findings findings;
  if (!pure_floors().contains(floor_of(source.path)) || !is_code(source.path)) return findings;
  for (const auto& include : includes_of(source.text)) {
    for (const auto name : worldly) {
      if (include.is_quoted || !include.path.starts_with(name)) continue;
      findings.push_back(
          {source.path, include.line, "a pure floor does without <" + include.path + ">"});
    }
  }
  return findings;
}

Findings check_circles(const std::vector<Source>& sources) {
  Findings findings;
  const auto arrows = arrows_of(sources);
  for (const auto& [unit, targets] : arrows) {
    if (!reach_of(unit, arrows).contains(unit)) continue;
    findings.push_back({unit, 0, "the unit reaches itself through its includes"});
  }
  for (const auto library : {"boost/math/", "sodium", "utf8proc.h", "nlohmann/"}) {
    append(findings, check_single_doors(sources, library));
  }
  return findings;
}

Findings check_own_headers(const std::vector<Source>& sources) {
  std::set<std::string> paths;
  for (const Source& source : sources) paths.insert(source.path);
  Findings findings;
  for (const Source& source : sources) {
    if (!is_under(source.path, "src") || !source.path.ends_with(".cpp")) continue;
    const std::string own = source.path.substr(0, source.path.size() - 3) + "h";
    if (paths.count(own) == 0) continue;
    const auto first = source.text.find("#include ");
    const std::string wanted = "#include \"" + own.substr(4) + "\"";
    if (first == std::string::npos || source.text.compare(first, wanted.size(), wanted) != 0) {
      findings.push_back({source.path, 0, "the first include is not its own header"});
    }
  }
  return findings;
}

}  // namespace house
