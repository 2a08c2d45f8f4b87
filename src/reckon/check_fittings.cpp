#include "reckon/check_fittings.h"

#include <algorithm>

#include "reckon/check_names.h"

namespace reckon {

namespace {

using logbook::Fitted;
using logbook::Removed;
using logbook::Thing;

// The engine that a use or a reading believes to be in its place.
struct Believed {
  logbook::Aircraft aircraft;
  logbook::PlaceName place;
  std::optional<logbook::Serial> serial;
};
struct BelievedIn {
  std::optional<Believed> operator()(const logbook::Ran& fact) const { return of(fact); }
  std::optional<Believed> operator()(const logbook::Tried& fact) const { return of(fact); }
  std::optional<Believed> operator()(const logbook::Started& fact) const { return of(fact); }
  std::optional<Believed> operator()(const logbook::Reading& fact) const { return of(fact); }
  std::optional<Believed> operator()(const logbook::Exceeded& fact) const { return of(fact); }
  template <class Other>
  std::optional<Believed> operator()(const Other&) const {
    return std::nullopt;
  }

 private:
  template <class Kind>
  static std::optional<Believed> of(const Kind& fact) {
    return Believed{fact.aircraft, fact.place, fact.serial};
  }
};

std::string where_text(const Thing& host, const logbook::PlaceName& place) {
  return place.text + " of " + thing_text(host);
}

}  // namespace

std::optional<FittingChecks::Move> FittingChecks::move_in(const Placed& placed) {
  if (const auto* fitted = std::get_if<Fitted>(&placed.said->fact)) {
    return Move{placed, fitted->thing, fitted->host, fitted->place, true};
  }
  if (const auto* removed = std::get_if<Removed>(&placed.said->fact)) {
    return Move{placed, removed->thing, removed->host, removed->place, false};
  }
  return std::nullopt;
}

void FittingChecks::add(const Placed& placed) {
  const std::optional<Move> move = move_in(placed);
  if (!move) return;
  const auto insert = [&](Moves& moves) {
    const auto is_later = [](const Move& a, const Move& b) { return a.fact < b.fact; };
    moves.insert(std::upper_bound(moves.begin(), moves.end(), *move, is_later), *move);
  };
  insert(by_thing_[move->thing]);
  insert(by_place_[{move->host, move->place}]);
}

const FittingChecks::Move* FittingChecks::last_before(const Moves& moves, const Placed& placed) {
  const Move* last = nullptr;
  for (const Move& move : moves) {
    if (!(move.fact < placed)) break;
    last = &move;
  }
  return last;
}

// Whether the thing of a move is moved again before another one.
bool FittingChecks::is_moved_between(const Move& move, const Move& other) const {
  const auto found = by_thing_.find(move.thing);
  const Move* next = found == by_thing_.end() ? nullptr : next_after(found->second, move.fact);
  return next != nullptr && next->fact < other.fact;
}

// Where the thing is just before the fact; null: it is off.
const FittingChecks::Move* FittingChecks::fitting_of(const Thing& thing, const Placed& at) const {
  const auto found = by_thing_.find(thing);
  if (found == by_thing_.end()) return nullptr;
  const Move* last = last_before(found->second, at);
  return last != nullptr && last->is_fitting ? last : nullptr;
}

// What was fitted there and has not been fitted elsewhere since.
const FittingChecks::Move* FittingChecks::occupant_of(const Where& where, const Placed& at) const {
  const auto found = by_place_.find(where);
  if (found == by_place_.end()) return nullptr;
  const Move* last = last_before(found->second, at);
  if (last == nullptr || !last->is_fitting) return nullptr;
  const Move* newest = fitting_of(last->thing, at);
  return newest != nullptr && is_same(newest->fact, last->fact) ? last : nullptr;
}

const FittingChecks::Move* FittingChecks::next_after(const Moves& moves, const Placed& placed) {
  const auto next = std::find_if(moves.begin(), moves.end(),
                                 [&](const Move& move) { return placed < move.fact; });
  return next == moves.end() ? nullptr : &*next;
}

void FittingChecks::check(const Placed& placed, Against against, Objections& objections) const {
  check_serial(placed, objections);
  const std::optional<Move> move = move_in(placed);
  if (!move) return;
  if (move->is_fitting) {
    check_fitted(*move, objections);
  } else {
    check_removed(*move, objections);
  }
  if (against == Against::earlier) return;  // told at the later one
  check_next_of_thing(*move, objections);
  check_next_in_place(*move, objections);
}

// Whether the host is the thing itself, or inside it.
bool FittingChecks::is_inside(const Thing& host, const Move& move) const {
  constexpr int deepest = 16;
  const Thing* at = &host;
  for (int depth = 0; depth < deepest; ++depth) {
    if (*at == move.thing) return true;
    const Move* fitting = fitting_of(*at, move.fact);
    if (fitting == nullptr) return false;
    at = &fitting->host;
  }
  return true;
}

std::optional<logbook::Aircraft> FittingChecks::aircraft_of(const Move& move) const {
  constexpr int deepest = 16;
  const Thing* at = &move.host;
  for (int depth = 0; depth < deepest; ++depth) {
    if (const auto* aircraft = std::get_if<logbook::Aircraft>(at)) return *aircraft;
    const Move* fitting = fitting_of(*at, move.fact);
    if (fitting == nullptr) return std::nullopt;
    at = &fitting->host;
  }
  return std::nullopt;
}

std::vector<FittingChecks::Move> FittingChecks::moves_on(const logbook::Aircraft& aircraft,
                                                         Day from, Day until) const {
  Moves moves;
  for (const auto& [thing, its] : by_thing_) {
    std::copy_if(its.begin(), its.end(), std::back_inserter(moves), [&](const Move& move) {
      const Day day = move.fact.said->day;
      return from <= day && day < until && aircraft_of(move) == aircraft;
    });
  }
  std::sort(moves.begin(), moves.end(),
            [](const Move& a, const Move& b) { return a.fact < b.fact; });
  return moves;
}

void FittingChecks::check_fitted(const Move& move, Objections& objections) const {
  if (const Move* elsewhere = fitting_of(move.thing, move.fact)) {
    objections.push_back(refusal(CheckKind::serial_elsewhere, "thing"));
    objections.back().names = {thing_text(move.thing), thing_text(elsewhere->host),
                               elsewhere->place.text};
    objections.back().entries = {elsewhere->fact.id};
    objections.back().day = elsewhere->fact.said->day;
  } else if (is_inside(move.host, move)) {
    objections.push_back(refusal(CheckKind::serial_elsewhere, "host"));
    objections.back().names = {thing_text(move.thing), thing_text(move.host), move.place.text};
  }
  const Move* there = occupant_of({move.host, move.place}, move.fact);
  if (there == nullptr || there->thing == move.thing) return;
  objections.push_back(refusal(CheckKind::place_taken, "place"));
  objections.back().names = {thing_text(there->thing), thing_text(move.host), move.place.text};
  objections.back().entries = {there->fact.id};
  objections.back().day = there->fact.said->day;
}

void FittingChecks::check_removed(const Move& move, Objections& objections) const {
  const Move* fitting = fitting_of(move.thing, move.fact);
  const bool is_there =
      fitting != nullptr && fitting->host == move.host && fitting->place == move.place;
  if (is_there) return;
  objections.push_back(
      refusal(CheckKind::not_fitted_there, fitting != nullptr ? "place" : "thing"));
  objections.back().names = {thing_text(move.thing), where_text(move.host, move.place)};
  if (fitting == nullptr) return;
  objections.back().names.push_back(where_text(fitting->host, fitting->place));
  objections.back().entries = {fitting->fact.id};
}

namespace {

Objection moved_later(const FittingChecks::Move& next, std::string slot) {
  Objection objection = doubt(CheckKind::moved_later, std::move(slot));
  objection.names = {thing_text(next.thing), where_text(next.host, next.place)};
  objection.entries = {next.fact.id};
  objection.day = next.fact.said->day;
  return objection;
}

}  // namespace

// What is entered late may leave the next move of the thing without what it rested on.
void FittingChecks::check_next_of_thing(const Move& move, Objections& objections) const {
  const auto found = by_thing_.find(move.thing);
  const Move* next = found == by_thing_.end() ? nullptr : next_after(found->second, move.fact);
  if (next == nullptr) return;
  const bool is_there = next->host == move.host && next->place == move.place;
  const bool follows = move.is_fitting ? !next->is_fitting && is_there : next->is_fitting;
  if (follows) return;
  objections.push_back(moved_later(*next, next->is_fitting ? "thing" : "removed"));
}

void FittingChecks::check_next_in_place(const Move& move, Objections& objections) const {
  if (!move.is_fitting) return;
  const auto found = by_place_.find({move.host, move.place});
  const Move* next = found == by_place_.end() ? nullptr : next_after(found->second, move.fact);
  const bool is_taken = next != nullptr && next->is_fitting && next->thing != move.thing;
  if (!is_taken || is_moved_between(move, *next)) return;
  objections.push_back(moved_later(*next, "place"));
}

void FittingChecks::check_serial(const Placed& placed, Objections& objections) const {
  const auto believed = std::visit(BelievedIn{}, placed.said->fact);
  if (!believed || !believed->serial) return;
  const Move* there = occupant_of({believed->aircraft, believed->place}, placed);
  if (there == nullptr) return;
  const auto* engine = std::get_if<logbook::Engine>(&there->thing);
  if (engine == nullptr || engine->serial == *believed->serial) return;
  objections.push_back(doubt(CheckKind::not_fitted_there, "serial"));
  objections.back().names = {believed->serial->text, thing_text(there->thing),
                             where_text(believed->aircraft, believed->place)};
  objections.back().entries = {there->fact.id};
}

}  // namespace reckon
