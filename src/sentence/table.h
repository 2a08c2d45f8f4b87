// sentence/table.h: the tables that the language consists of. Sorts say how one type is read and
// written, slots lead to a member of a struct, clauses and kinds are made of patterns and slots.
// The reader, the writer and the describer walk these tables; declare.h makes their rows.
#pragma once

#include <cstddef>
#include <cstdint>
#include <span>
#include <string>
#include <string_view>

#include "logbook/fact.h"
#include "sentence/pattern.h"

namespace sentence {

class Cursor;
struct Clause;
struct Sort;

// Said by the member's type: T, std::optional<T>, std::vector<T>, bool.
enum class Presence : std::uint8_t { required, optional, repeated, flag };

// What can be done with a member without knowing its type. Members are passed by address.
struct Member {
  Presence presence;
  std::size_t (*size)(const void* member);
  const void* (*item)(const void* member, std::size_t index);
  void* (*add)(void* member);  // the place for one more item
  void (*drop)(void* member);  // takes the item last added away again
  // Of repeated clauses with a key, else null. Their order is that of the key.
  bool (*before)(const void* item, const void* other);
};

struct Slot {
  const Member* member;
  const Sort* sort;  // null for flags
  void* (*at)(void* owner);
  const void* (*look)(const void* owner);
  // Reads one clause into a value of its own and hands it to the owner only if the whole clause was
  // read. False if the text is no such clause.
  bool (*take)(Cursor& cursor, const Clause& clause, void* owner);
  // True if the item last added has the key of an earlier one.
  bool (*is_twice)(const void* owner);
  // Puts repeated items into their order.
  void (*settle)(void* owner);
  // Replaces what the other owner says (all, or the items with the same key).
  void (*amend)(void* owner, const void* other);
};

enum class Shape : std::uint8_t { leaf, words, choice };

// One word of a closed list; value is that of the enumerator.
struct Word {
  std::int64_t value;
  std::string_view text;
};

// One way to write a value: fits says whether it is the way for this value, preset makes an empty
// value into one that it fits.
struct Option {
  Pattern pattern;
  std::span<const Slot> slots;
  bool (*fits)(const void* value);
  void (*preset)(void* value);
};

struct Sort {
  Shape shape = Shape::leaf;
  std::string_view name;     // in the printed grammar
  std::string_view example;  // of leaves: a canonical text
  void (*reset)(void* value) = nullptr;

  // Leaves. read may leave anything in value when it returns false.
  bool (*read)(Cursor& cursor, void* value) = nullptr;
  void (*say)(std::string& out, const void* value) = nullptr;
  std::string_view grammar;
  // Words.
  std::span<const Word> words;
  std::int64_t (*number_of)(const void* value) = nullptr;
  void (*set_number)(void* value, std::int64_t number) = nullptr;
  // Choices; a phrase is a choice of one.
  std::span<const Option> options;
  // What people may type if the book is known; tried last.
  bool (*read_short)(Cursor& cursor, void* value) = nullptr;
};

struct Clause {
  std::string_view name;  // of the member: the span's slot, the key of answers
  Pattern pattern;
  Slot slot;
  std::string_view purpose;
  bool is_needed;  // at least once
};

enum class Common : std::uint8_t { all, without_by, none };

struct Kind {
  std::string_view name;
  Pattern head;
  std::span<const Slot> head_slots;
  std::span<const Clause> clauses;
  std::string_view purpose;
  std::string_view example;            // canonical lines, parted by line feeds
  std::size_t index;                   // in logbook::Fact
  void* (*make)(logbook::Fact& fact);  // an empty fact of this kind
  void* (*at)(logbook::Fact& fact);    // the fact itself, which must be of this kind
  const void* (*look)(const logbook::Fact& fact);
  Common common = Common::all;
  bool needs_a_clause = false;  // at least one of its own
};

}  // namespace sentence
