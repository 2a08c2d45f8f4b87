#include "reckon/shared_lives.h"

#include <algorithm>
#include <set>
#include <tuple>
#include <utility>

#include "reckon/models_on.h"
#include "reckon/policies.h"
#include "reckon/settle.h"
#include "reckon/side.h"
#include "reckon/use.h"

namespace reckon {
namespace {

const std::optional<logbook::ModelName>& model_of_limit(const Item& item) {
  return item.limit != nullptr ? item.limit->on_model : item.mixed->on_model;
}

// Each of its sides is a limit of its own: the first to run out governs.
bool has_sides_of_their_own(const Item& item) {
  return item.limit != nullptr && item.combine == logbook::Combine::first;
}

// Limits of one measure say so much on one clock since one basis, and can be told by size.
using Measure =
    std::tuple<bool, Clock, std::optional<logbook::Basis>, std::optional<Day>, logbook::LimitVerb>;
Measure measure_of(const Item& item, const Side& side) {
  return {side.is_calendar, side.is_calendar ? service_clock : side.clock, side.since, side.after,
          item.limit->verb};
}

// Use with the models on which it was made; not known for what it had before this record.
struct UseOnModels {
  Term term;
  ModelsOn on;
};

ModelsOn models_inside(const View& view, const logbook::Thing& thing,
                       const std::vector<logbook::Thing>& hosts) {
  std::vector<logbook::Thing> way{thing};
  way.insert(way.end(), hosts.begin(), hosts.end());
  return models_on(view.histories, way);
}

std::vector<UseOnModels> uses_of(const View& view, const logbook::Thing& thing, const Total& used) {
  std::vector<UseOnModels> uses;
  std::int64_t sum = 0;
  for (const Term& term : used.because) {
    if (term.subtract) break;
    sum += term.figure.raw();
    const bool is_nothing = term.figure.raw() == 0 && term.figure.sureness() == Sureness::exact;
    if (!is_nothing) uses.push_back({term, models_inside(view, thing, term.hosts)});
  }
  if (sum == used.figure.raw()) return uses;
  Term all;
  all.kind = TermKind::stated;
  all.figure = used.figure;
  return {{all, models_inside(view, thing, {})}};
}

bool is_smaller(const Figure& a, const Figure& b) { return a.compare(b) < 0; }

class Sharer {
 public:
  Sharer(const View& view, const logbook::Thing& thing, std::vector<Item>& items)
      : view_(view),
        thing_(thing),
        here_(models_now_or_last(view.histories, thing)),
        ever_(models_ever_on(view.histories, thing)),
        all_(items),
        items_(items) {}

  void share();

 private:
  bool holds_now(const Item& item) const;
  bool came_under(const Item& item) const;
  bool may_have_used_there(const Item& item) const;
  bool says_no_more_than_now(const Item& item) const;
  std::set<Measure> shared_measures() const;
  // The limits of a measure that hold on the models, for certain or by what is not known.
  std::vector<Figure> limits_on(const Measure& measure, const ModelsOn& on) const;
  std::vector<Figure> certain_limits_on(const Measure& measure, const ModelsOn& on) const;
  std::vector<Figure> limits_that(const Measure& measure, const ModelsOn& on,
                                  bool is_certain) const;
  std::optional<Figure> smallest(const Measure& measure, const ModelsOn& on) const;
  Figure whole_for(const Measure& measure, const UseOnModels& use) const;
  bool differs_from_now(const Item& item, const Side& side) const;
  bool may_take_away(const Item& item) const;
  bool is_policy_needed() const;
  bool is_shared(const Item& item) const;

  void keep_one_of_each_measure();
  void keep_one_of(const Measure& measure);
  bool rules_over(const std::pair<Item*, Side*>& a, const std::pair<Item*, Side*>& b) const;
  void divide(Item& item) const;
  void divide(const Item& item, Side& side) const;
  void judge(Item& item) const;

  const View& view_;
  const logbook::Thing& thing_;
  const ModelsOn here_;
  const ModelsOn ever_;
  const std::vector<Item> all_;  // as they were given
  std::vector<Item>& items_;
  std::set<Measure> shared_;
  Policy policy_;
  bool is_mildest_ = false;  // no policy rules: what is over even so is over
};

// On a model that nobody knows, every limit may be the one that holds.
bool Sharer::holds_now(const Item& item) const {
  const auto& model = model_of_limit(item);
  return !model || may_be_on(view_.histories, here_, *model);
}

bool Sharer::may_have_used_there(const Item& item) const {
  const auto has_use_there = [&](const Total& used) {
    const auto uses = uses_of(view_, thing_, used);
    return std::any_of(uses.begin(), uses.end(), [&](const UseOnModels& use) {
      return may_be_on(view_.histories, use.on, *model_of_limit(item));
    });
  };
  const auto is_calendar = [](const Side& side) { return side.is_calendar; };
  if (std::all_of(item.sides.begin(), item.sides.end(), is_calendar)) {
    return has_use_there(view_.histories.total(thing_, service_clock, view_.now()));
  }
  return std::any_of(item.sides.begin(), item.sides.end(), [&](const Side& side) {
    return !side.is_calendar && has_use_there(side.used);
  });
}

bool Sharer::came_under(const Item& item) const {
  const auto& model = model_of_limit(item);
  if (std::holds_alternative<logbook::Aircraft>(thing_)) return holds_now(item);
  return holds_now(item) || may_be_on(view_.histories, ever_, *model) || may_have_used_there(item);
}

// A limit of another model that holds in the same words on the model it is on now.
bool Sharer::says_no_more_than_now(const Item& item) const {
  if (holds_now(item) || !has_sides_of_their_own(item)) return false;
  const auto holds_as_well = [&](const Side& side) {
    return std::any_of(all_.begin(), all_.end(), [&](const Item& other) {
      const auto is_same = [&](const Side& same) {
        return measure_of(other, same) == measure_of(item, side) && same.limit == side.limit &&
               same.period == side.period;
      };
      return has_sides_of_their_own(other) && holds_now(other) &&
             other.when_exceeding == item.when_exceeding &&
             std::any_of(other.sides.begin(), other.sides.end(), is_same);
    });
  };
  return std::all_of(item.sides.begin(), item.sides.end(), holds_as_well);
}

std::set<Measure> Sharer::shared_measures() const {
  std::set<Measure> measures;
  for (const Item& item : all_) {
    if (!has_sides_of_their_own(item) || !model_of_limit(item)) continue;
    for (const Side& side : item.sides) measures.insert(measure_of(item, side));
  }
  return measures;
}

std::vector<Figure> Sharer::limits_that(const Measure& measure, const ModelsOn& on,
                                        bool is_certain) const {
  std::vector<Figure> limits;
  for (const Item& item : all_) {
    const auto& model = model_of_limit(item);
    if (!has_sides_of_their_own(item)) continue;
    const auto holds = [&] {
      return is_certain ? is_on(on, *model) : may_be_on(view_.histories, on, *model);
    };
    if (model && !holds()) continue;
    for (const Side& side : item.sides) {
      if (side.limit && measure_of(item, side) == measure) limits.push_back(*side.limit);
    }
  }
  return limits;
}

std::vector<Figure> Sharer::limits_on(const Measure& measure, const ModelsOn& on) const {
  return limits_that(measure, on, false);
}

std::vector<Figure> Sharer::certain_limits_on(const Measure& measure, const ModelsOn& on) const {
  return limits_that(measure, on, true);
}

std::optional<Figure> Sharer::smallest(const Measure& measure, const ModelsOn& on) const {
  const std::vector<Figure> limits = limits_on(measure, on);
  if (limits.empty()) return std::nullopt;
  return *std::min_element(limits.begin(), limits.end(), is_smaller);
}

// Use on a model without a limit may have been made under any. Only where the mildest of all
// readings is asked for, use that may have been made on any model counts against the largest limit.
Figure Sharer::whole_for(const Measure& measure, const UseOnModels& use) const {
  std::vector<Figure> limits = limits_on(measure, use.on);
  if (limits.empty()) limits = limits_on(measure, {});
  if (is_mildest_ && certain_limits_on(measure, use.on).empty()) {
    return *std::max_element(limits.begin(), limits.end(), is_smaller);
  }
  return *std::min_element(limits.begin(), limits.end(), is_smaller);
}

bool Sharer::differs_from_now(const Item& item, const Side& side) const {
  const Measure measure = measure_of(item, side);
  if (side.is_calendar || !side.limit || !shared_.contains(measure)) return false;
  const Figure now = smallest(measure, here_).value_or(*side.limit);
  const auto uses = uses_of(view_, thing_, side.used);
  return std::any_of(uses.begin(), uses.end(), [&](const UseOnModels& use) {
    return whole_for(measure, use).compare(now) != 0;
  });
}

// Whether a limit of another model could leave it less than those that hold now.
bool Sharer::may_take_away(const Item& item) const {
  if (holds_now(item)) return false;
  if (!has_sides_of_their_own(item)) return true;
  return std::any_of(item.sides.begin(), item.sides.end(), [&](const Side& side) {
    const auto now = smallest(measure_of(item, side), here_);
    if (!side.limit || !now) return true;
    const auto order = side.limit->compare(*now);
    return order < 0 || (order == 0 && !item.when_exceeding);
  });
}

// Not if nothing it ever came under is shorter than what holds now, and all its use was made under
// the limits of now. An aircraft is of one model for good.
bool Sharer::is_policy_needed() const {
  if (std::holds_alternative<logbook::Aircraft>(thing_)) return false;
  return std::any_of(items_.begin(), items_.end(), [&](const Item& item) {
    if (may_take_away(item)) return true;
    return has_sides_of_their_own(item) &&
           std::any_of(item.sides.begin(), item.sides.end(),
                       [&](const Side& side) { return differs_from_now(item, side); });
  });
}

bool Sharer::is_shared(const Item& item) const {
  if (!has_sides_of_their_own(item)) return model_of_limit(item).has_value();
  return std::any_of(item.sides.begin(), item.sides.end(),
                     [&](const Side& side) { return shared_.contains(measure_of(item, side)); });
}

// By the calendar, and where the shorter limit stays, the least of all; else the least of those
// that hold now.
bool Sharer::rules_over(const std::pair<Item*, Side*>& a, const std::pair<Item*, Side*>& b) const {
  const bool is_least_of_all = a.second->is_calendar || policy_.sharing == Sharing::shorter_stays;
  const bool a_holds = holds_now(*a.first);
  const bool b_holds = holds_now(*b.first);
  if (!is_least_of_all && a_holds != b_holds) return a_holds;
  const std::int64_t a_limit = a.second->limit->raw();
  const std::int64_t b_limit = b.second->limit->raw();
  if (a_limit != b_limit) return a_limit < b_limit;
  return std::tuple(a.first->when_exceeding, !a_holds) <
         std::tuple(b.first->when_exceeding, !b_holds);
}

void Sharer::keep_one_of(const Measure& measure) {
  std::vector<std::pair<Item*, Side*>> sides;
  for (Item& item : items_) {
    if (!has_sides_of_their_own(item)) continue;
    for (Side& side : item.sides) {
      if (measure_of(item, side) != measure) continue;
      if (!side.limit) return;  // a calendar that counts from a day nobody knows: none can be told
      sides.emplace_back(&item, &side);
    }
  }
  if (sides.size() < 2) return;
  const auto kept = *std::min_element(
      sides.begin(), sides.end(), [&](const auto& a, const auto& b) { return rules_over(a, b); });
  for (Item& item : items_) {
    if (!has_sides_of_their_own(item)) continue;
    std::vector<Side> left;
    for (Side& side : item.sides) {
      const bool is_other = measure_of(item, side) == measure && &side != kept.second;
      if (!is_other) left.push_back(side);
    }
    item.sides = std::move(left);
  }
}

void Sharer::keep_one_of_each_measure() {
  for (const Measure& measure : shared_) keep_one_of(measure);
  std::erase_if(items_,
                [](const Item& item) { return item.sides.empty() && item.lack != Lack::terms; });
}

void Sharer::divide(const Item& item, Side& side) const {
  if (!differs_from_now(item, side) || !side.left || side.limit->raw() <= 0) return;
  const Measure measure = measure_of(item, side);
  std::vector<UsedOf> used;
  for (const UseOnModels& use : uses_of(view_, thing_, side.used)) {
    const Figure whole = whole_for(measure, use);
    side.parts.push_back({use.term, whole});
    used.push_back(
        {std::max<std::int64_t>(use.term.figure.raw(), 0), std::max<std::int64_t>(whole.raw(), 1)});
  }
  side.life_used = LifeUsed(used);
  const std::int64_t left = in_whole_units(side.life_used->left_of(side.limit->raw()), side.clock);
  set_left({view_, thing_, item.when_exceeding}, side,
           figure_on(side.clock, {left, Sureness::exact}), side.used.figure.sureness());
}

void Sharer::divide(Item& item) const {
  if (!has_sides_of_their_own(item)) return;
  for (Side& side : item.sides) divide(item, side);
}

void leave_open(Item& item, Lack lack) {
  for (Side& side : item.sides) set_lack(side, lack);
  item.state = State::not_known;
  item.lack = lack;
  item.expected.reset();
}

void Sharer::judge(Item& item) const {
  if (has_sides_of_their_own(item) && !item.sides.empty()) settle(item);
  if (!is_mildest_) item.sharing = policy_.sharing;
  item.because.insert(item.because.end(), policy_.said.begin(), policy_.said.end());
  const bool is_over = item.state == State::over && has_sides_of_their_own(item);
  if (policy_.sharing == Sharing::shorter_stays || is_over) return;
  if (policy_.sharing == Sharing::not_stated) return leave_open(item, Lack::shared_lives);
  if (policy_.sharing == Sharing::disputed) return leave_open(item, Lack::two_policies);
  if (!has_sides_of_their_own(item)) leave_open(item, Lack::not_shareable);
}

void Sharer::share() {
  std::erase_if(items_, [&](const Item& item) { return !came_under(item); });
  std::erase_if(items_, [&](const Item& item) { return says_no_more_than_now(item); });
  shared_ = shared_measures();
  if (!is_policy_needed()) {
    std::erase_if(items_, [&](const Item& item) { return !holds_now(item); });
    return;
  }
  policy_ = policy_for(view_, thing_);
  is_mildest_ = policy_.sharing == Sharing::not_stated || policy_.sharing == Sharing::disputed;
  keep_one_of_each_measure();
  for (Item& item : items_) {
    if (!is_shared(item)) continue;
    if (policy_.sharing != Sharing::shorter_stays) divide(item);
    judge(item);
  }
}

// Where a policy is stated, a model of which nothing is on record is one that the thing came from;
// else it may be a slip of the finger, and what it rules is open.
std::vector<Item> take_those_of_no_model(const View& view, const logbook::Thing& thing,
                                         std::vector<Item>& items) {
  const auto is_of_no_model = [&](const Item& item) {
    const auto& model = model_of_limit(item);
    if (!model) return false;
    const Bearers bearers = view.histories.bearers_of(*model);
    return !bearers.engines && !bearers.aircraft;
  };
  const auto first_of_them = std::stable_partition(
      items.begin(), items.end(), [&](const Item& item) { return !is_of_no_model(item); });
  if (first_of_them == items.end()) return {};
  if (policy_for(view, thing).sharing != Sharing::not_stated) return {};
  std::vector<Item> taken(first_of_them, items.end());
  items.erase(first_of_them, items.end());
  for (Item& item : taken) leave_open(item, Lack::model);
  return taken;
}

}  // namespace

void share_lives(const View& view, const logbook::Thing& thing, std::vector<Item>& items) {
  std::vector<Item> of_no_model = take_those_of_no_model(view, thing, items);
  const bool is_on_a_model = std::any_of(items.begin(), items.end(), [](const Item& item) {
    return model_of_limit(item).has_value();
  });
  if (is_on_a_model) Sharer(view, thing, items).share();
  for (Item& item : of_no_model) items.push_back(std::move(item));
}

}  // namespace reckon
