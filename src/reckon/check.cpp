#include "reckon/check.h"

#include <algorithm>

#include "reckon/aboard.h"
#include "reckon/check_bounds.h"
#include "reckon/check_chain.h"
#include "reckon/check_gauges.h"
#include "reckon/check_had.h"
#include "reckon/check_scene.h"
#include "reckon/check_signed.h"
#include "reckon/check_work.h"
#include "reckon/work.h"

namespace reckon {

namespace {

using logbook::Entry;
using logbook::Said;

constexpr Day last_day_of_all = Day::of(1'000'000);

bool is_amendment(const logbook::Fact& fact) {
  return std::holds_alternative<logbook::Corrected>(fact) ||
         std::holds_alternative<logbook::Struck>(fact);
}

// What is held against single entries on record.
// in_place_of: what it corrects; null for a new fact.
void check_against_entries(const Said& said, const Standing& standing,
                           const StandingFact* in_place_of, Objections& objections) {
  check_replacement(said, standing, objections);
  check_looked_into(said, standing, objections);
  check_chart(said, standing, in_place_of, objections);
  if (in_place_of == nullptr) {
    check_signing(said, standing, objections);
  } else {
    check_corrected_signing(said, *in_place_of, objections);
  }
}

bool names_entries(const Said& said) {
  return said.instead_of || is_about_signing(said.fact) ||
         std::holds_alternative<logbook::LookedInto>(said.fact) ||
         std::holds_alternative<logbook::ChartRow>(said.fact);
}

void check_future(const Said& said, Day today, Objections& objections) {
  if (said.day <= today) return;
  objections.push_back(refusal(CheckKind::in_the_future, "day"));
  objections.back().day = said.day;
  objections.back().difference = Figure(said.day - today);
}

}  // namespace

struct Checker::Inside {
  // The entries as they were given and added, in one row; made anew only when totals or chains are
  // asked for after something was added.
  struct Ground {
    std::vector<Entry> own;
    Standing standing;
  };

  const std::vector<Entry>& given;
  Day today;
  std::vector<const Entry*> added;
  std::size_t added_in_ground = 0;
  std::shared_ptr<Ground> ground;
  std::shared_ptr<Ground> ground_of_scene;  // its facts are kept in the scene
  std::shared_ptr<Ground> ground_of_totals;
  std::unique_ptr<CheckScene> scene;

  Inside(const std::vector<Entry>& entries, Day day) : given(entries), today(day) {}

  const Standing& newest() {
    if (ground != nullptr && added_in_ground == added.size()) return ground->standing;
    ground = std::make_shared<Ground>();
    added_in_ground = added.size();
    if (added.empty()) {
      ground->standing = standing(given, last_day_of_all);
    } else {
      ground->own = given;
      for (const Entry* entry : added) ground->own.push_back(*entry);
      ground->standing = standing(ground->own, last_day_of_all);
    }
    return ground->standing;
  }

  CheckScene& current() {
    if (scene != nullptr) return *scene;
    scene = std::make_unique<CheckScene>(newest(), today);
    ground_of_scene = ground_of_totals = ground;
    return *scene;
  }

  Objections check_plain(const Said& said);
  Objections check_corrected(const logbook::Corrected& corrected);
};

Objections Checker::Inside::check_plain(const Said& said) {
  Objections objections;
  check_future(said, today, objections);
  check_bounds(said.fact, objections);
  check_gauges(said.fact, objections);
  if (names_entries(said)) check_against_entries(said, newest(), nullptr, objections);
  const Placed placed{&said, {}, INT64_MAX};
  CheckScene& here = current();
  if (!here.has_newest_totals() && here.needs_totals(placed)) {
    here.take_totals_from(newest());
    ground_of_totals = ground;
  }
  here.check(placed, objections);
  return objections;
}

// The corrected record as it would stand: without the old value, with the new one in its place.
Objections Checker::Inside::check_corrected(const logbook::Corrected& corrected) {
  Objections objections;
  const Standing& now = newest();
  const StandingFact* fact = check_correction(corrected, now, objections);
  if (fact == nullptr || !objections.empty()) return objections;
  const Said& instead = *corrected.instead;
  check_future(instead, today, objections);
  check_bounds(instead.fact, objections);
  check_gauges(instead.fact, objections);
  check_against_entries(instead, now, fact, objections);
  CheckScene without(now, today, fact->root);
  without.check({&instead, {}, fact->written}, objections);
  return objections;
}

Checker::Checker(const std::vector<Entry>& entries, Day today)
    : inside_(std::make_unique<Inside>(entries, today)) {}
Checker::Checker(Checker&&) noexcept = default;
Checker::~Checker() = default;

std::vector<Objection> Checker::objections(const Said& said) {
  if (!is_amendment(said.fact)) return inside_->check_plain(said);
  Objections objections;
  check_future(said, inside_->today, objections);
  if (const auto* struck = std::get_if<logbook::Struck>(&said.fact)) {
    check_strike(*struck, inside_->newest(), objections);
    return objections;
  }
  const Objections more = inside_->check_corrected(std::get<logbook::Corrected>(said.fact));
  objections.insert(objections.end(), more.begin(), more.end());
  return objections;
}

// A correction or strike changes what stands before it, so that all is arranged anew.
void Checker::add(const Entry& entry) {
  Inside& inside = *inside_;
  inside.added.push_back(&entry);
  if (inside.scene == nullptr) return;
  if (!entry.said) return;
  if (is_amendment(entry.said->fact)) {
    inside.scene.reset();
  } else {
    inside.scene->add({&*entry.said, entry.id, inside.scene->next_written()});
  }
}

namespace {

struct Looking {
  const Standing& standing;
  const CheckIndex& index;
  const Histories& histories;
  Day as_of;
};

Objections found_at(const StandingFact& fact, const Looking& looking) {
  Objections objections;
  const Placed at = placed(fact);
  check_future(*fact.said, looking.as_of, objections);
  looking.index.check(at, Against::earlier, objections);
  if (fact.said->day > looking.as_of || !states_totals(fact.said->fact)) return objections;
  if (std::holds_alternative<logbook::BringsForward>(fact.said->fact)) {
    check_forward(at, looking.histories, objections);
    return objections;
  }
  const logbook::Thing subject = subject_of_work(fact.said->fact);
  const auto aircraft =
      aircraft_at(looking.histories, subject, looking.histories.mark_of(fact.root));
  check_work(at, {looking.histories, aircraft ? looking.index.uses_of(*aircraft) : nullptr},
             objections);
  return objections;
}

}  // namespace

std::vector<RecordFinding> check_record(const std::vector<Entry>& entries, Day as_of) {
  const Standing all = standing(entries, last_day_of_all);
  const Standing past = standing(entries, as_of);
  const CheckIndex index = index_of(all);
  const Histories histories(past, as_of, Ambiguous::late);
  const Looking looking{all, index, histories, as_of};
  std::vector<RecordFinding> findings;
  for (const StandingFact& fact : all.facts) {
    for (Objection& objection : found_at(fact, looking)) {
      findings.push_back({fact.chain.back(), std::move(objection)});
    }
  }
  return findings;
}

}  // namespace reckon
