// sentence/values.h: reading and writing one value, pattern or clause by its table.
#pragma once

#include <span>
#include <string>

#include "sentence/cursor.h"
#include "sentence/table.h"

namespace sentence {

// Each returns false, with the cursor where it was, if the text is no such thing.
bool read_value(Cursor& cursor, const Sort& sort, void* value);
bool read_pattern(Cursor& cursor, const Option& option, void* owner);
// The head of a kind, with the span of each of its slots.
bool read_head(Cursor& cursor, const Kind& kind, void* owner);
// One clause up to its end; member is where the value of its one slot goes.
bool read_clause(Cursor& cursor, const Clause& clause, void* member);

void say_value(std::string& out, const Sort& sort, const void* value);
void say_pattern(std::string& out, const Pattern& pattern, std::span<const Slot> slots,
                 const void* owner);
// The clause for one item of its member; for lists, item is null and the whole member is said.
void say_clause(std::string& out, const Clause& clause, const void* owner, const void* item);

// True if the clause holds all items of its member as one list.
bool is_list(const Clause& clause);

}  // namespace sentence
