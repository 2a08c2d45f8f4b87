#include "reckon/work.h"

#include <type_traits>

#include "quantity/expect.h"

namespace reckon {

namespace {

template <class Kind>
constexpr bool is_any_of() {
  return false;
}
template <class Kind, class First, class... Others>
constexpr bool is_any_of() {
  return std::is_same_v<Kind, First> || is_any_of<Kind, Others...>();
}

template <class Kind>
constexpr bool moves_lives =
    is_any_of<Kind, logbook::Done, logbook::Fitted, logbook::Removed, logbook::Overhauled>();
template <class Kind>
constexpr bool is_work =
    moves_lives<Kind> ||
    is_any_of<Kind, logbook::EngineEvent, logbook::MeterChanged, logbook::MeterLost,
              logbook::Started, logbook::Reading, logbook::Exceeded>();

template <class Kind>
WorkStated stated_in(const Kind& fact) {
  WorkStated stated;
  if constexpr (requires { fact.airframe; }) stated.airframe = fact.airframe;
  if constexpr (requires { fact.engine; }) stated.engine = fact.engine;
  if constexpr (std::is_same_v<Kind, logbook::MeterChanged>) {
    stated.meter = logbook::MeterReading{fact.meter, fact.out};
  } else if constexpr (std::is_same_v<Kind, logbook::MeterLost>) {
    stated.meter = logbook::MeterReading{fact.meter, fact.at};
  } else if constexpr (requires { fact.meter; }) {
    stated.meter = fact.meter;
  }
  if constexpr (requires { fact.before_the_first_flight; }) {
    stated.is_before_first = fact.before_the_first_flight;
    stated.is_after_last = fact.after_the_last_flight;
  }
  stated.moves_lives = moves_lives<Kind>;
  return stated;
}

// Fitting and removal stand in the history of the host.
template <class Kind>
std::optional<logbook::Thing> subject_in(const Kind& fact) {
  if constexpr (is_any_of<Kind, logbook::Fitted, logbook::Removed>()) {
    return fact.host;
  } else if constexpr (is_any_of<Kind, logbook::Done, logbook::NextDue, logbook::Overhauled>()) {
    return fact.thing;
  } else if constexpr (std::is_same_v<Kind, logbook::EngineEvent>) {
    return logbook::Thing(fact.engine_thing);
  } else if constexpr (is_work<Kind>) {
    return logbook::Thing(fact.aircraft);
  } else {
    return std::nullopt;
  }
}

}  // namespace

std::optional<WorkStated> work_in(const logbook::Fact& fact) {
  return std::visit(
      [](const auto& one) -> std::optional<WorkStated> {
        using Kind = std::decay_t<decltype(one)>;
        if constexpr (is_work<Kind>) {
          return stated_in(one);
        } else {
          return std::nullopt;
        }
      },
      fact);
}

logbook::Thing subject_of_work(const logbook::Fact& fact) {
  const auto subject = std::visit([](const auto& one) { return subject_in(one); }, fact);
  EXPECT(subject.has_value());
  return *subject;
}

}  // namespace reckon
