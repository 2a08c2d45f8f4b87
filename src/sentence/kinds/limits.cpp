// What the approved data allow: counting rules, limits, temperatures, the trend's settings.
#include "sentence/kinds/kinds.h"
#include "sentence/kinds/shared_words.h"
#include "sentence/sorts/amounts.h"
#include "sentence/sorts/things.h"

namespace sentence {

using logbook::CountedEvent;
using logbook::CountingRule;
using logbook::Each;
using logbook::Limit;
using logbook::LimitClass;
using logbook::LimitVerb;
using logbook::MixedLimit;
using logbook::OnCondition;

namespace {

constexpr Word counted_event_words[] = {word(CountedEvent::start, "start"),
                                        word(CountedEvent::flight, "flight"),
                                        word(CountedEvent::landing, "landing")};
constexpr Word verb_words[] = {word(LimitVerb::retires, "retires"),
                               word(LimitVerb::overhaul, "overhaul")};
constexpr Word class_words[] = {
    word(LimitClass::airworthiness_limitation, "airworthiness limitation"),
    word(LimitClass::life, "life"), word(LimitClass::overhaul, "overhaul"),
    word(LimitClass::shelf, "shelf"), word(LimitClass::service, "service")};
constexpr Word exceeding_words[] = {word(false, "at"), word(true, "when exceeding")};
constexpr Sort at_or_exceeding = words<bool>("at-or-exceeding", exceeding_words);
constexpr Word whole_life_words[] = {word(false, "reach 1"), word(true, "exceed 1")};
constexpr Sort reach_or_exceed = words<bool>("reach-or-exceed", whole_life_words);

}  // namespace

template <>
inline constexpr Sort sort_of<CountedEvent> = words<CountedEvent>("counted-event",
                                                                  counted_event_words);
template <>
inline constexpr Sort sort_of<LimitVerb> = words<LimitVerb>("limit-verb", verb_words);
template <>
inline constexpr Sort sort_of<LimitClass> = words<LimitClass>("limit-class", class_words);

namespace {

constexpr Option each_options[] = {option<&Each::weight, &Each::event>("{weight} each {event}")};

}  // namespace

template <>
inline constexpr Sort sort_of<Each> = choice<Each>("each", each_options);

namespace {

constexpr Clause rule_clauses[] = {
    needed_clause<&CountingRule::each>("{each}", "how much one event counts"),
    clause<&CountingRule::source>("source {source}", "where the rule stands"),
    clause<&CountingRule::also_since>("also for flights since {also_since}",
                                      "the day from which the past is counted again")};
constexpr Clause limit_clauses[] = {
    clause<&Limit::on_model>("on model {on_model}", "the only model on which it holds"),
    clause<&Limit::class_>("class {class_}", "which sort of limit it is"),
    clause<&Limit::source>("source {source}", "where the limit stands"),
    clause<&Limit::revision>("revision {revision}", "the revision of that source")};
constexpr Clause mixed_limit_clauses[] = {
    clause<&MixedLimit::on_model>("on model {on_model}", "the only model on which it holds"),
    clause<&MixedLimit::class_>("class {class_}", "which sort of limit it is"),
    clause<&MixedLimit::source>("source {source}", "where the limit stands"),
    clause<&MixedLimit::revision>("revision {revision}", "the revision of that source")};
constexpr Clause condition_clauses[] = {
    clause<&OnCondition::source>("source {source}", "where this stands")};

}  // namespace

constexpr Kind declarations::counting_rule = kind<CountingRule, &CountingRule::scope,
                                                  &CountingRule::counter>(
    "counting-rule", "{scope} counts {counter},", rule_clauses,
    {"how flights and starts become cycles, from this day",
     "2026-01-01 model TS-40 counts gas-generator cycles, 1 each start, 0.5 each flight, "
     "source \"manual 5-20\".\n"
     "2026-01-01 model TS-40 counts gas-generator cycles, 1 each start, source \"manual 5-20\", "
     "also for flights since 2025-01-01."});
constexpr Kind declarations::limit = kind<Limit, &Limit::scope, &Limit::verb,
                                          as<&Limit::when_exceeding, &at_or_exceeding>,
                                          &Limit::terms>(
    "limit", "{scope} {verb} {when_exceeding} {terms},", limit_clauses,
    {"when a part must be retired, or a thing overhauled",
     "2026-01-01 part number PN-4411 retires at 2200.0 h since new or 10 years since manufacture, "
     "class life, source \"limitations rev 4\".\n"
     "2026-01-01 model TS-40 overhaul at 3500.0 h since overhaul.\n"
     "2026-01-01 part number PN-4411 retires at 2200.0 h since new, on model \"Larkwing 5\".\n"
     "2026-01-01 part number PN-9 retires when exceeding 1.0 h since fitting.\n"
     "2026-01-01 part number PN-9 retires at the latest of 300.0 h since new and "
     "50.0 h after 2025-03-01, class airworthiness limitation.\n"
     "2026-01-01 part number SG-1 overhaul at 1000.0 h by engine-run meter since overhaul."});
constexpr Kind declarations::mixed_limit = kind<MixedLimit, &MixedLimit::scope, &MixedLimit::parts,
                                                as<&MixedLimit::when_exceeding, &reach_or_exceed>>(
    "mixed-limit", "{scope} retires when {parts +} {when_exceeding},", mixed_limit_clauses,
    {"a life that several counters use up together: the parts of it that they used are added",
     "2026-01-01 part number DX-1 retires when full cycles / 5000 + abbreviated cycles / 20000 "
     "reach 1, class life, source \"directive 7\".\n"
     "2026-01-01 part number DX-2 retires when landings / 8000 + lifts / 3000 exceed 1, "
     "on model \"Larkwing 5\"."});
constexpr Kind declarations::on_condition = kind<OnCondition, &OnCondition::scope>(
    "on-condition", "{scope} on condition,", condition_clauses,
    {"a thing without a limit, which is a statement too",
     "2026-01-01 part number PN-4411 on condition, source \"manual 5-10\"."});
}  // namespace sentence
