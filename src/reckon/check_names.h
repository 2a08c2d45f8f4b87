// reckon/check_names.h: which aircraft, engines, parts, places and tasks are on record, so that a
// mistyped name is found before anything is counted for it.
#pragma once

#include <map>
#include <optional>
#include <set>
#include <string>
#include <vector>

#include "reckon/check_fact.h"

namespace reckon {

// "aircraft ZZ-KIT", "engine TS-40 E-1001", "part PN-4411 B-88": names in objections.
std::string thing_text(const logbook::Thing& thing);

class NameChecks {
 public:
  void add(const Placed& placed);
  void check(const Placed& placed, Against against, Objections& objections) const;

  bool knows(const logbook::Thing& thing) const { return things_.count(thing) != 0; }
  bool is_twin(const logbook::Aircraft& aircraft) const;
  std::optional<logbook::ModelName> model_of(const logbook::Thing& thing) const;
  // Whether a rule laid upon scope reaches the thing.
  bool reaches(const logbook::Scope& scope, const logbook::Thing& thing) const;

 private:
  // A thing where it first came on record, and what is said of its making.
  struct Known {
    Placed first;
    std::optional<Placed> made_in;
    std::optional<Day> made;
    std::optional<Day> released;
    std::optional<Placed> first_fitted;
  };
  std::set<logbook::PlaceName> places_of(const logbook::Aircraft& aircraft) const;
  std::vector<std::string> same_class(const logbook::Thing& thing) const;
  void take_making(const Placed& placed);
  void take_first_fitted(const Placed& placed);

  void check_known(const Placed& placed, Objections& objections) const;
  void check_places(const Placed& placed, Objections& objections) const;
  void check_look_alike(const Placed& placed, Against against, Objections& objections) const;
  void check_making(const Placed& placed, Against against, Objections& objections) const;
  void check_made_before(const Placed& placed, const logbook::Thing& thing,
                         Objections& objections) const;

  std::map<logbook::Thing, Known> things_;
  std::map<std::string, std::vector<logbook::Thing>> folded_;
  std::map<logbook::Aircraft, logbook::ModelName> models_;
  std::map<logbook::Scope, std::set<logbook::PlaceName>> places_;
};

}  // namespace reckon
