#include "reckon/things.h"

#include <algorithm>
#include <type_traits>

namespace reckon {

namespace {

template <class... Makers>
struct Overloaded : Makers... {
  using Makers::operator()...;
};
template <class... Makers>
Overloaded(Makers...) -> Overloaded<Makers...>;

using Things = std::vector<logbook::Thing>;

Things in_scope(const logbook::Scope& scope) {
  return std::visit(
      [](const auto& one) -> Things {
        using One = std::decay_t<decltype(one)>;
        if constexpr (std::is_same_v<One, logbook::Model> ||
                      std::is_same_v<One, logbook::PartKind>) {
          return {};
        } else {
          return {logbook::Thing(one)};
        }
      },
      scope);
}

// Each kind names its things by one of these members; kinds about people and models have none.
template <class Kind>
Things named_in(const Kind& fact) {
  if constexpr (requires { fact.thing, fact.host; }) {
    return {fact.thing, fact.host};
  } else if constexpr (requires { fact.thing; }) {
    return {fact.thing};
  } else if constexpr (requires { fact.scope; }) {
    return in_scope(fact.scope);
  } else if constexpr (requires { fact.aircraft; }) {
    return {logbook::Thing(fact.aircraft)};
  } else if constexpr (requires { fact.engine_thing; }) {
    return {logbook::Thing(fact.engine_thing)};
  } else {
    return {};
  }
}

}  // namespace

std::vector<logbook::Thing> things_in(const logbook::Fact& fact) {
  Things things = std::visit(
      Overloaded{
          [](const logbook::EngineIs& is) -> Things { return {logbook::Thing(is.engine)}; },
          [](const logbook::PartIs& is) -> Things { return {logbook::Thing(is.part)}; },
          [](const logbook::Corrected& corrected) { return things_in((*corrected.instead).fact); },
          [](const auto& other) { return named_in(other); },
      },
      fact);
  std::sort(things.begin(), things.end());
  things.erase(std::unique(things.begin(), things.end()), things.end());
  return things;
}

}  // namespace reckon
