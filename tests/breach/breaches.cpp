#include "breach/breaches.h"

#include <array>

namespace breach {

namespace {

using enum Outcome;
constexpr Guards standing = Guards::stand;
constexpr Guards dropped = Guards::are_dropped_and_put_back;

constexpr std::string_view never_changed = "an entry is never changed";
// Two guards refuse the second coming of a key; for an own entry this one speaks first.
constexpr std::string_view follows = "an own entry follows the newest own entry";
constexpr std::string_view never_removed = "an entry is never removed";

// The clauses and settings are those of sqlite.org: lang_update, lang_delete, lang_replace,
// lang_conflict, lang_upsert, lang_altertable, lang_createtrigger, lang_attach, lang_vacuum,
// lang_with, pragma.
constexpr std::array all = {
    Breach{"UPDATE", standing, "UPDATE entry SET sentence = 'x' WHERE number = 19;", refused,
           never_changed},
    Breach{"UPDATE that changes nothing", standing, "UPDATE entry SET number = number;", refused,
           never_changed},
    Breach{"UPDATE OR IGNORE", standing, "UPDATE OR IGNORE entry SET sentence = 'x';", refused,
           never_changed},
    Breach{"UPDATE OR REPLACE onto another entry's key", standing,
           "UPDATE OR REPLACE entry SET number = 20, digest = (SELECT digest FROM entry WHERE "
           "number = 20) WHERE number = 19;",
           refused, never_changed},
    Breach{"UPDATE FROM", standing,
           "UPDATE entry SET sentence = o.sentence FROM entry AS o WHERE o.number = 1;", refused,
           never_changed},
    Breach{"UPDATE through a common table", standing,
           "WITH w(n) AS (SELECT 19) UPDATE entry SET written = 0 WHERE number IN w;", refused,
           never_changed},
    Breach{"DELETE of one entry", standing, "DELETE FROM entry WHERE number = 19;", refused,
           never_removed},
    Breach{"DELETE of all, which may skip rows' triggers", standing, "DELETE FROM entry;", refused,
           never_removed},
    Breach{"REPLACE", standing, "REPLACE INTO entry SELECT * FROM entry WHERE number = 19;",
           refused, follows},
    Breach{"REPLACE without recursive triggers", standing,
           "PRAGMA recursive_triggers = OFF; REPLACE INTO entry SELECT writer, number, digest, "
           "previous, written, language, about, knows, refers, signature, 'x' FROM entry "
           "WHERE number = 19;",
           refused, follows},
    Breach{"INSERT OR REPLACE", standing,
           "INSERT OR REPLACE INTO entry SELECT writer, number, digest, previous, 0, language, "
           "about, knows, refers, signature, sentence FROM entry WHERE number = 22;",
           refused, follows},
    Breach{"INSERT OR IGNORE", standing,
           "INSERT OR IGNORE INTO entry SELECT * FROM entry WHERE number = 19;", refused, follows},
    Breach{"UPSERT", standing,
           "INSERT INTO entry SELECT * FROM entry WHERE number = 19 "
           "ON CONFLICT DO UPDATE SET sentence = 'x';",
           refused, follows},
    Breach{"UPSERT without checks of constraints", standing,
           "PRAGMA ignore_check_constraints = ON; INSERT INTO entry SELECT * FROM entry "
           "WHERE number = 19 ON CONFLICT (writer, number, digest) DO UPDATE SET sentence = '';",
           refused, follows},
    Breach{"UPDATE without checks of constraints", standing,
           "PRAGMA ignore_check_constraints = ON; UPDATE entry SET sentence = '';", refused,
           never_changed},
    Breach{"INSERT through the view", standing,
           "INSERT INTO record_line SELECT * FROM record_line LIMIT 1;", refused,
           "cannot modify record_line because it is a view"},
    Breach{"an own entry out of number", standing,
           "INSERT INTO entry SELECT writer, 99, randomblob(32), digest, written, language, about, "
           "knows, refers, signature, sentence FROM entry WHERE number = 22;",
           refused, follows},
    Breach{"a second own entry of one number", standing,
           "INSERT INTO entry SELECT writer, number, randomblob(32), previous, written, language, "
           "about, knows, refers, signature, sentence FROM entry WHERE number = 22;",
           refused, follows},
    Breach{"an own entry that follows another one", standing,
           "INSERT INTO entry SELECT writer, 23, randomblob(32), previous, written, language, "
           "about, knows, refers, signature, sentence FROM entry WHERE number = 22;",
           refused, follows},
    Breach{"an entry without a number", standing,
           "INSERT INTO entry SELECT writer, 0, randomblob(32), previous, written, language, "
           "about, knows, refers, signature, sentence FROM entry WHERE number = 22;",
           refused, follows},
    Breach{"an own entry that is in its place and made up", standing,
           "INSERT INTO entry SELECT writer, 23, randomblob(32), digest, written, language, "
           "about, knows, refers, signature, sentence FROM entry WHERE number = 22;",
           found, "K-23"},
    Breach{"an entry of a writer that nobody knows", standing,
           "INSERT INTO entry SELECT 'Z' || substr(writer, 2), 1, randomblob(32), zeroblob(32), "
           "written, language, about, knows, refers, signature, sentence FROM entry "
           "WHERE number = 22;",
           found, "its digest does not follow from what it says"},
    Breach{"another record", standing, "UPDATE record SET id = '00000000000000000000000000';",
           refused, "the record of a book is never changed"},
    Breach{"no record", standing, "DELETE FROM record;", refused,
           "the record of a book is never removed"},
    Breach{"a second record", standing,
           "REPLACE INTO record VALUES (1, '00000000000000000000000000');", refused,
           "a book belongs to one record"},
    Breach{"an arrival taken away", standing, "DELETE FROM arrived WHERE place = 22;", refused,
           "an arrival is never removed"},
    Breach{"an arrival changed", standing, "UPDATE arrived SET day = 0;", refused,
           "an arrival is never changed"},
    Breach{"an arrival replaced", standing,
           "REPLACE INTO arrived SELECT place, command, 0, 0, writer, number, digest FROM arrived "
           "WHERE place = 22;",
           refused, "the arrival is there already"},
    Breach{"the writers taken away", standing, "DELETE FROM own_writer;", refused,
           "the writers of a book are never removed"},
    Breach{"the writers changed", standing, "UPDATE own_writer SET ordinal = 7;", refused,
           "the writers of a book are never changed"},
    Breach{"a column dropped", standing, "ALTER TABLE entry DROP COLUMN about;", refused,
           "error in view record_line"},
    Breach{"a column of a constraint dropped", standing, "ALTER TABLE entry DROP COLUMN sentence;",
           refused, "error in"},
    Breach{"a column of the key dropped", standing, "ALTER TABLE entry DROP COLUMN digest;",
           refused, "cannot drop PRIMARY KEY column"},
    Breach{"a guard dropped", standing, "DROP TRIGGER entry_is_never_changed;", found,
           "it lacks the trigger entry_is_never_changed"},
    Breach{"the table dropped", standing, "DROP TABLE entry;", found, "it has no table entry"},
    Breach{"the table renamed", standing, "ALTER TABLE entry RENAME TO old_entry;", found,
           "it has no table entry"},
    Breach{"a column renamed", standing, "ALTER TABLE entry RENAME COLUMN sentence TO words;",
           found, "no such column: "},
    Breach{"a column added", standing, "ALTER TABLE entry ADD COLUMN remark TEXT;", found,
           "the table entry is not as a book has it"},
    Breach{"a guard made blind in the schema", standing,
           "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET sql = "
           "replace(sql, 'BEGIN', 'WHEN 0 BEGIN') WHERE name = 'entry_is_never_changed';",
           found, "the trigger entry_is_never_changed is not as a book has it"},
    Breach{"a table put in another's place in the schema", standing,
           "PRAGMA writable_schema = ON; UPDATE sqlite_schema SET rootpage = "
           "(SELECT rootpage FROM sqlite_schema WHERE name = 'printed') WHERE name = 'arrived';",
           found, "file"},
    Breach{"a trigger that works against the guards", standing,
           "CREATE TRIGGER quiet BEFORE INSERT ON arrived BEGIN SELECT RAISE(IGNORE); END;", found,
           "it holds the trigger quiet, which no book has"},
    Breach{"a changed sentence", dropped,
           "UPDATE entry SET sentence = replace(sentence, '0.5 h', '0.1 h') WHERE number = 19;",
           found, "K-19"},
    Breach{"a changed time of writing", dropped,
           "UPDATE entry SET written = written + 1 WHERE number = 20;", found, "K-20"},
    Breach{"a changed digest", dropped,
           "UPDATE entry SET digest = randomblob(32) WHERE number = 20;", found, "K-21"},
    Breach{"an entry taken out", dropped, "DELETE FROM entry WHERE number = 20;", found, "K-21"},
    Breach{"an entry taken out with its arrival", dropped,
           "PRAGMA foreign_keys = OFF; DELETE FROM entry WHERE number = 20; "
           "DELETE FROM arrived WHERE number = 20;",
           found, "K-21"},
    Breach{"two entries that changed places", dropped,
           "UPDATE entry SET number = 99 WHERE number = 20; UPDATE entry SET number = 20 WHERE "
           "number = 21; UPDATE entry SET number = 21 WHERE number = 99;",
           found, "K-20"},
    Breach{"another record's name", dropped, "UPDATE record SET id = 'Z' || substr(id, 2);", found,
           "K-1"},
    Breach{"the last entry cut off", dropped, "DELETE FROM entry WHERE number = 22;", found,
           "K-22"},
    Breach{"arrivals that changed places", dropped,
           "UPDATE arrived SET place = 99 WHERE place = 2; UPDATE arrived SET place = 2 WHERE "
           "place = 3; UPDATE arrived SET place = 3 WHERE place = 99;",
           found, "K-2"},
    Breach{"an arrival without its entry", dropped,
           "INSERT INTO arrived SELECT 99, command, at, day, writer, 99, randomblob(32) FROM "
           "arrived WHERE place = 22;",
           found, "K-99"},
    Breach{"an arrival taken away, the guards put back", dropped,
           "DELETE FROM arrived WHERE place = 21;", found, "K-21"},
    Breach{"a running total", standing, "UPDATE running_total SET total = total + 1;", found,
           "The running totals of ZZ-KIT"},
    Breach{"a use row", standing, "DELETE FROM use WHERE entry = 20;", found,
           "The use rows of ZZ-KIT"},
    Breach{"a row of a list", standing, "DELETE FROM mention WHERE entry = 2;", found, "K-2"},
    Breach{"a reading", standing, "UPDATE reading SET temperature = 1;", found, "K-17"},
    Breach{"a start", standing, "DELETE FROM start_reading;", found, "K-18"},
    Breach{"a derived table dropped", standing, "DROP TABLE use;", found,
           "Fault in form: The tables of worked-out figures are of another version"},
    Breach{"a thing that no entry is about", standing,
           "INSERT INTO thing VALUES (999, 'aircraft:ZZ-NIL');", harmless,
           "nothing is listed under it"},
    Breach{"a series without use", standing,
           "INSERT INTO series VALUES (999, 'ZZ-NIL', '', 'hours');", harmless,
           "nothing is counted in it"},
    Breach{"a write-ahead log", standing, "PRAGMA journal_mode = WAL;", harmless,
           "the next command that writes takes it back"},
    Breach{"another page size", standing, "PRAGMA page_size = 8192; VACUUM;", harmless,
           "the rows are the same"},
    Breach{"VACUUM INTO a copy, and the copy edited", standing,
           "VACUUM INTO 'copy.db'; ATTACH 'copy.db' AS copy; DROP TRIGGER "
           "copy.entry_is_never_removed; DELETE FROM copy.entry;",
           harmless, "the book is not the copy, and a copy shows its own faults"},
    Breach{"a table of the same name that hides it", standing,
           "CREATE TEMP TABLE entry AS SELECT * FROM main.entry; DELETE FROM entry;", harmless,
           "it passes away with the connection that made it"},
    Breach{"a passing trigger that lets a removal end quietly", standing,
           "CREATE TEMP TRIGGER quiet BEFORE DELETE ON main.entry BEGIN SELECT RAISE(IGNORE); "
           "END; DELETE FROM entry;",
           harmless, "the row stays, and the trigger passes away"},
    Breach{"through an attached name", standing, "ATTACH 'the.book' AS b; DELETE FROM b.entry;",
           refused, never_removed},
    Breach{"a newer version", standing, "PRAGMA user_version = 999;", found,
           "Fault in version: It was written by a newer Timeworn"},
    Breach{"a newer version that hides a guard dropped", standing,
           "PRAGMA user_version = 2; DROP TRIGGER entry_is_never_changed;", found,
           "it lacks the trigger entry_is_never_changed"},
    Breach{"a newer version that hides a column added", standing,
           "PRAGMA user_version = 2; ALTER TABLE entry ADD COLUMN remark TEXT;", found,
           "the table entry is not as a book has it"},
    Breach{"a newer version that hides a changed sentence", dropped,
           "PRAGMA user_version = 2; UPDATE entry SET sentence = replace(sentence, '0.5 h', "
           "'0.1 h') WHERE number = 19;",
           found, "K-19"},
    Breach{"another form that hides a changed sentence", dropped,
           "DROP TABLE use; UPDATE entry SET sentence = replace(sentence, '0.5 h', '0.1 h') "
           "WHERE number = 19;",
           found, "K-19"},
    Breach{"another kind of file", standing, "PRAGMA application_id = 1;", found,
           "is no book of Timeworn"},
    Breach{"when an entry came", dropped, "UPDATE arrived SET at = at - 86400, day = day - 1;",
           found, "K-22"},
    Breach{"the last entry and all that was made of it", dropped,
           "PRAGMA foreign_keys = OFF; DELETE FROM use WHERE entry = 22; "
           "DELETE FROM mention WHERE entry = 22; DELETE FROM arrived WHERE number = 22; "
           "DELETE FROM entry WHERE number = 22;",
           found, "The running totals of ZZ-KIT"},
};

}  // namespace

std::span<const Breach> breaches() { return all; }

}  // namespace breach
