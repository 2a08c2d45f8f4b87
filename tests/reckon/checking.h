// reckon/checking.h: a fact said to a small book, and what the checker objects.
#pragma once

#include <algorithm>
#include <ostream>
#include <string>
#include <utility>
#include <vector>

#include "reckon/check.h"
#include "reckon/entry_named.h"
#include "support/entries.h"

namespace reckon {

// Boost prints what was found where a test fails.
inline std::ostream& operator<<(std::ostream& out, CheckKind kind) {
  return out << "check kind " << static_cast<int>(kind);
}

}  // namespace reckon

namespace checking {

using Kinds = std::vector<reckon::CheckKind>;
using reckon::CheckKind;
using reckon::Severity;

inline logbook::Said said(const std::string& day, logbook::Fact fact) {
  logbook::Said said;
  said.day = support::day(day);
  said.fact = std::move(fact);
  return said;
}

inline logbook::EntryName name_of(const logbook::EntryId& id) {
  logbook::EntryName name{"", id.number};
  for (const char letter : std::string("0123456789ABCDEFGHJKMNPQRSTVWXYZ")) {
    logbook::EntryName tried{std::string(1, letter), id.number};
    if (reckon::is_named(tried, id)) name = tried;
  }
  return name;
}
inline logbook::Said corrected(const logbook::EntryId& id, logbook::Said instead) {
  const std::string day = quantity::say(instead.day);
  return said(day, logbook::Corrected{name_of(id), "typed wrongly",
                                      logbook::InnerSaid(std::move(instead))});
}
inline logbook::Said struck(const logbook::EntryId& id) {
  return said("2025-03-01", logbook::Struck{name_of(id), "entered twice"});
}

inline Kinds kinds_of(const std::vector<reckon::Objection>& objections) {
  Kinds kinds;
  for (const reckon::Objection& objection : objections) kinds.push_back(objection.kind);
  std::sort(kinds.begin(), kinds.end());
  return kinds;
}

// A book whose today is 10 March 2025, with aircraft ZZ-KIT on record.
class Record : public support::Book {
 public:
  const logbook::Aircraft kit = support::aircraft("ZZ-KIT");
  const logbook::Aircraft mob = support::aircraft("ZZ-MOB");

  // ZZ-KIT brought forward with a total and the collective meter's reading.
  void begin(const std::string& airframe, const std::string& reading,
             const std::string& day = "2025-03-01") {
    auto forward = support::forward(kit, airframe);
    if (!reading.empty()) forward.meters = {{{"collective"}, support::meter(reading)}};
    say(day, forward);
  }
  std::vector<reckon::Objection> objections(const logbook::Said& said) const {
    return reckon::Checker(entries(), today).objections(said);
  }
  std::vector<reckon::Objection> objections(const std::string& day, logbook::Fact fact) const {
    return objections(said(day, std::move(fact)));
  }
  Kinds kinds(const std::string& day, logbook::Fact fact) const {
    return kinds_of(objections(day, std::move(fact)));
  }
  Kinds kinds(const logbook::Said& said) const { return kinds_of(objections(said)); }
  // The one objection; a test without it ends there.
  reckon::Objection only(const std::string& day, logbook::Fact fact) const {
    return objections(day, std::move(fact)).at(0);
  }

  quantity::Day today = support::day("2025-03-10");

 private:
  static logbook::Said said(const std::string& day, logbook::Fact fact) {
    return checking::said(day, std::move(fact));
  }
};

inline std::vector<logbook::MeterRun> collective(const std::string& from, const std::string& to) {
  return {support::run("collective", from, to)};
}
inline reckon::Figure hours(const std::string& text) { return {support::service(text)}; }

}  // namespace checking

#define CHECK_KINDS(found, ...)                                                                 \
  do {                                                                                          \
    const checking::Kinds kinds_found = found;                                                  \
    const checking::Kinds kinds_wanted = {__VA_ARGS__};                                         \
    BOOST_CHECK_EQUAL_COLLECTIONS(kinds_found.begin(), kinds_found.end(), kinds_wanted.begin(), \
                                  kinds_wanted.end());                                          \
  } while (false)
