// The record itself, its bases and its people.
#include "sentence/kinds/kinds.h"
#include "sentence/sorts/figures.h"
#include "sentence/sorts/names.h"
#include "sentence/sorts/times.h"

namespace sentence {

using logbook::BaseJoins;
using logbook::CountsWork;
using logbook::DayKind;
using logbook::KeyEnds;
using logbook::PersonEnds;
using logbook::PersonHolds;
using logbook::RecordBegins;
using logbook::WorkCounts;
using quantity::TenthsRule;

namespace {

constexpr Word day_kind_words[] = {word(DayKind::local_day, "local day"),
                                   word(DayKind::utc_day, "UTC day")};
constexpr Word tenths_words[] = {word(TenthsRule::half_up, "half up"),
                                 word(TenthsRule::half_down, "half down")};
// The longer words first: no word may hide a longer one that begins with it.
constexpr Word work_counts_words[] = {word(WorkCounts::when_recorded, "when recorded"),
                                      word(WorkCounts::when_signed_here, "when signed here"),
                                      word(WorkCounts::when_signed, "when signed")};

}  // namespace

template <>
inline constexpr Sort sort_of<DayKind> = words<DayKind>("day-kind", day_kind_words);
template <>
inline constexpr Sort sort_of<TenthsRule> = words<TenthsRule>("tenths-rule", tenths_words);
template <>
inline constexpr Sort sort_of<WorkCounts> = words<WorkCounts>("work-counts", work_counts_words);

namespace {

constexpr Clause record_clauses[] = {
    clause<&RecordBegins::language>("language {language}", "the version of the record language"),
    clause<&RecordBegins::deferrals>("deferrals by {deferrals}",
                                     "which midnight ends a day; local day if not said"),
    clause<&RecordBegins::tenths>("tenths {tenths}",
                                  "how minutes are shown as tenths; half up if not said"),
    clause<as<&RecordBegins::review_days, &days_sort>>(
        "reviews within {review_days}", "how old a review may be; 30 days if not said"),
    flag<&RecordBegins::for_tests>("for_tests", "for tests", "a record that no one relies on"),
    clause<&RecordBegins::clock>("clock {clock}", "the fixed time of a record for tests"),
    clause<&RecordBegins::seed>("seed {seed}", "the fixed chance of a record for tests")};
constexpr Clause base_clauses[] = {
    clause<&BaseJoins::zone>("days in {zone}", "the time zone of its days")};
constexpr Clause person_clauses[] = {
    clause<&PersonHolds::certificate>("certificate {certificate}", "the number of the certificate"),
    clause<&PersonHolds::kind>("kind {kind}", "what the certificate is for"),
    clause<&PersonHolds::keys>("key {keys}", "a key with which this person signs")};
constexpr Clause person_ends_clauses[] = {clause<&PersonEnds::because>("because {because}", "why")};
constexpr Clause key_ends_clauses[] = {clause<&KeyEnds::because>("because {because}", "why")};

}  // namespace

constexpr Kind declarations::record_begins = kind<RecordBegins, &RecordBegins::name>(
    "record-begins", "record {name} begins,", record_clauses,
    {"the first sentence of a record, with its settings",
     "2026-01-01 record \"Marrow Point\" begins, language 1, deferrals by local day, "
     "tenths half up.\n"
     "2026-01-01 record \"Marrow Point\" begins, language 1, reviews within 45 days, for tests, "
     "clock 2026-03-05T08:00:00Z, seed 7."});
constexpr Kind declarations::counts_work = kind<CountsWork, &CountsWork::record, &CountsWork::when>(
    "counts-work", "record {record} counts work {when},", {},
    {"from which moment work resets a life or a due point",
     "2026-01-01 record \"Marrow Point\" counts work when signed.\n"
     "2026-01-01 record \"Marrow Point\" counts work when signed here.\n"
     "2026-01-01 record \"Marrow Point\" counts work when recorded."});
constexpr Kind declarations::base_joins = kind<BaseJoins, &BaseJoins::name>(
    "base-joins", "base {name} joins,", base_clauses,
    {"a base that keeps its own book of this record",
     "2026-01-01 base \"North\" joins, days in \"America/Denver\"."});
constexpr Kind declarations::person_holds = kind<PersonHolds, &PersonHolds::name>(
    "person-holds", "person {name} holds", person_clauses,
    {"a certificate that a person holds",
     "2026-01-01 person \"B. Quill\" holds certificate \"A-1234\", kind \"mechanic\".\n"
     "2026-01-01 person \"B. Quill\" holds certificate \"A-1234\", kind \"mechanic\", "
     "key d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a."});
constexpr Kind declarations::person_ends = kind<PersonEnds, &PersonEnds::name>(
    "person-ends", "person {name} ends,", person_ends_clauses,
    {"a person who no longer takes part",
     "2026-05-01 person \"B. Quill\" ends.\n"
     "2026-05-01 person \"B. Quill\" ends, because \"moved away\"."});

constexpr Kind declarations::key_ends = kind<KeyEnds, &KeyEnds::name, &KeyEnds::key>(
    "key-ends", "person {name} key {key} ends,", key_ends_clauses,
    {"a key that no longer signs; what it signed before stays signed",
     "2026-05-01 person \"B. Quill\" "
     "key d75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a ends, "
     "because \"laptop lost\"."});

}  // namespace sentence
