// sentence/sorts/names.h: how names, entry names and free text are read and written.
#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "sentence/declare.h"

namespace sentence {

// A name stands bare only with at least one letter and a digit or hyphen, in capitals, digits,
// - and /, at most most_bare characters. So no verb, number or day is ever a bare name.
bool can_stand_bare(std::string_view name);
inline constexpr std::size_t most_bare = 24;
// A day, a time or a number, whatever else it may be.
bool looks_like_a_figure(std::string_view name);

// Free text in quotes, with \" and \\.
void say_quoted(std::string& out, const std::string& text);
bool read_text(Cursor& cursor, std::string& text);
// A name that is never written bare. False if there is none or it may not be one.
bool read_quoted_name(Cursor& cursor, std::string& name);

bool read_registration(Cursor& cursor, logbook::Registration& name);
bool read_model(Cursor& cursor, logbook::ModelName& name);
bool read_serial(Cursor& cursor, logbook::Serial& name);
bool read_part_number(Cursor& cursor, logbook::PartNumber& name);
bool read_task(Cursor& cursor, logbook::TaskName& name);
bool read_place(Cursor& cursor, logbook::PlaceName& name);
bool read_meter(Cursor& cursor, logbook::MeterName& name);
bool read_person(Cursor& cursor, logbook::PersonName& name);
bool read_base(Cursor& cursor, logbook::BaseName& name);
bool read_record(Cursor& cursor, logbook::RecordName& name);
bool read_plain_serial(Cursor& cursor, logbook::Serial& name);
bool read_entry(Cursor& cursor, logbook::EntryName& name);
bool read_scan(Cursor& cursor, std::string& digest);
bool read_key(Cursor& cursor, logbook::PublicKey& key);

void say_name(std::string& out, const std::string& name);
void say_registration(std::string& out, const logbook::Registration& name);
void say_model(std::string& out, const logbook::ModelName& name);
void say_serial(std::string& out, const logbook::Serial& name);
void say_part_number(std::string& out, const logbook::PartNumber& name);
void say_task(std::string& out, const logbook::TaskName& name);
void say_place(std::string& out, const logbook::PlaceName& name);
void say_meter(std::string& out, const logbook::MeterName& name);
void say_person(std::string& out, const logbook::PersonName& name);
void say_base(std::string& out, const logbook::BaseName& name);
void say_record(std::string& out, const logbook::RecordName& name);
void say_plain_serial(std::string& out, const logbook::Serial& name);
void say_entry(std::string& out, const logbook::EntryName& name);
void say_scan(std::string& out, const std::string& digest);
void say_key(std::string& out, const logbook::PublicKey& key);

template <>
inline constexpr Sort sort_of<std::string> = Leaf<read_text, say_quoted>::sort("text",
                                                                               "\"manual 5-20\"",
                                                                               "quoted");
template <>
inline constexpr Sort sort_of<logbook::Registration> =
    Leaf<read_registration, say_registration>::sort("registration", "ZZ-KIT", "bare | quoted");
template <>
inline constexpr Sort sort_of<logbook::ModelName> =
    Leaf<read_model, say_model>::sort("model-name", "TS-40", "bare | quoted");
template <>
inline constexpr Sort sort_of<logbook::Serial> =
    Leaf<read_serial, say_serial>::sort("serial-number", "E-1001", "bare | quoted");
template <>
inline constexpr Sort sort_of<logbook::PartNumber> =
    Leaf<read_part_number, say_part_number>::sort("part-number", "PN-4411", "bare | quoted");
template <>
inline constexpr Sort sort_of<logbook::TaskName> =
    Leaf<read_task, say_task>::sort("task-name", "\"annual inspection\"", "bare | quoted");
template <>
inline constexpr Sort sort_of<logbook::PlaceName> =
    Leaf<read_place, say_place>::sort("place", "engine 1", "\"engine\" \"1\"…\"9\" | quoted");
template <>
inline constexpr Sort sort_of<logbook::MeterName> = Leaf<read_meter, say_meter>::sort(
    "meter", "collective",
    "\"collective\" | \"engine-run\" | \"oil-pressure\" | \"tach\" | quoted");
template <>
inline constexpr Sort sort_of<logbook::PersonName> =
    Leaf<read_person, say_person>::sort("person-name", "\"B. Quill\"", "quoted");
template <>
inline constexpr Sort sort_of<logbook::BaseName> = Leaf<read_base, say_base>::sort("base-name",
                                                                                   "\"North\"",
                                                                                   "quoted");
template <>
inline constexpr Sort sort_of<logbook::RecordName> =
    Leaf<read_record, say_record>::sort("record-name", "\"Marrow Point\"", "quoted");
template <>
inline constexpr Sort sort_of<logbook::EntryName> =
    Leaf<read_entry, say_entry>::sort("entry-name", "K7QXM-123", "base-letters \"-\" whole");

template <>
inline constexpr Sort sort_of<logbook::PublicKey> =
    Leaf<read_key, say_key>::sort("public-key", "64 hexadecimal digits", "64 hexdigit");

// After the word serial a number is no other figure, so it needs no quotes.
inline constexpr Sort plain_serial_sort = Leaf<read_plain_serial, say_plain_serial>::sort(
    "plain-serial", "5012", "bare | digits | quoted");
inline constexpr Sort scan_digest_sort =
    Leaf<read_scan, say_scan>::sort("scan-digits", "64 hexadecimal digits", "64 hexdigit");

}  // namespace sentence
