// sentence/sorts/things.h: what sentences are about: aircraft, engines, parts, models, tasks. The
// canonical form carries the class; the bare name of one known thing is taken too.
#pragma once

#include "sentence/sorts/names.h"

namespace sentence {

bool read_short_aircraft(Cursor& cursor, void* aircraft);
bool read_short_engine(Cursor& cursor, void* engine);
bool read_short_part(Cursor& cursor, void* part);
bool read_short_thing(Cursor& cursor, void* thing);
bool read_short_scope(Cursor& cursor, void* scope);
// The class of the known task whose name stands at the cursor; the name is left there.
bool read_short_task_class(Cursor& cursor, void* task_class);

constexpr Sort with_short(Sort sort, bool (*reads)(Cursor&, void*)) {
  sort.read_short = reads;
  return sort;
}

inline constexpr Option aircraft_options[] = {
    option<&logbook::Aircraft::registration>("aircraft {registration}")};
template <>
inline constexpr Sort sort_of<logbook::Aircraft> =
    with_short(choice<logbook::Aircraft>("aircraft", aircraft_options), read_short_aircraft);

inline constexpr Option engine_options[] = {
    option<&logbook::Engine::model, &logbook::Engine::serial>("engine {model} {serial}")};
template <>
inline constexpr Sort sort_of<logbook::Engine> =
    with_short(choice<logbook::Engine>("engine", engine_options), read_short_engine);

inline constexpr Option part_options[] = {
    option<&logbook::Part::number, &logbook::Part::serial>("part {number} {serial}")};
template <>
inline constexpr Sort sort_of<logbook::Part> =
    with_short(choice<logbook::Part>("part", part_options), read_short_part);

inline constexpr Option model_options[] = {option<&logbook::Model::name>("model {name}")};
template <>
inline constexpr Sort sort_of<logbook::Model> = choice<logbook::Model>("model", model_options);

inline constexpr Option part_kind_options[] = {
    option<&logbook::PartKind::number>("part number {number}")};
template <>
inline constexpr Sort sort_of<logbook::PartKind> = choice<logbook::PartKind>("part-kind",
                                                                             part_kind_options);

inline constexpr Option thing_options[] = {
    alternative<logbook::Thing, logbook::Aircraft>("{aircraft}"),
    alternative<logbook::Thing, logbook::Engine>("{engine}"),
    alternative<logbook::Thing, logbook::Part>("{part}")};
template <>
inline constexpr Sort sort_of<logbook::Thing> =
    with_short(choice<logbook::Thing>("thing", thing_options), read_short_thing);

inline constexpr Option scope_options[] = {
    alternative<logbook::Scope, logbook::Aircraft>("{aircraft}"),
    alternative<logbook::Scope, logbook::Engine>("{engine}"),
    alternative<logbook::Scope, logbook::PartKind>("{part-kind}"),
    alternative<logbook::Scope, logbook::Part>("{part}"),
    alternative<logbook::Scope, logbook::Model>("{model}")};
template <>
inline constexpr Sort sort_of<logbook::Scope> =
    with_short(choice<logbook::Scope>("scope", scope_options), read_short_scope);

inline constexpr Word task_class_words[] = {word(logbook::TaskClass::task, "task"),
                                            word(logbook::TaskClass::inspection, "inspection"),
                                            word(logbook::TaskClass::service, "service"),
                                            word(logbook::TaskClass::storage_step, "storage step"),
                                            word(logbook::TaskClass::directive, "directive")};
template <>
inline constexpr Sort sort_of<logbook::TaskClass> =
    with_short(words<logbook::TaskClass>("task-class", task_class_words), read_short_task_class);

}  // namespace sentence
