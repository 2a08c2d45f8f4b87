// sentence/declare.h: what declarations are made with. Members are named once; whether a clause is
// required, optional, repeated or a flag follows from the member's type.
#pragma once

#include <algorithm>
#include <array>
#include <optional>
#include <type_traits>
#include <utility>
#include <variant>
#include <vector>

#include "sentence/keys.h"
#include "sentence/table.h"
#include "sentence/values.h"

namespace sentence {

template <class Type>
struct NoSort {
  static_assert(sizeof(Type) == 0, "this type has no sort: say in sorts/ how it is read and said");
  static constexpr Sort sort{};
};
// How a type is read and written: specialised for each type in sorts/.
template <class Type>
inline constexpr Sort sort_of = NoSort<Type>::sort;

// A member with another sort than its type's.
template <auto Pointer, const Sort* sort>
struct As {};
template <auto Pointer, const Sort* sort>
inline constexpr As<Pointer, sort> as{};

namespace declared {

template <class Type>
struct Items {
  using Item = Type;
  static constexpr Presence presence = Presence::required;
};
template <class Type>
struct Items<std::optional<Type>> {
  using Item = Type;
  static constexpr Presence presence = Presence::optional;
};
template <class Type>
struct Items<std::vector<Type>> {
  using Item = Type;
  static constexpr Presence presence = Presence::repeated;
};

template <class Type>
Type& at(void* address) {
  return *static_cast<Type*>(address);
}
template <class Type>
const Type& look(const void* address) {
  return *static_cast<const Type*>(address);
}

template <class Type>
bool comes_before(const void* item, const void* other) {
  return key(look<Type>(item)) < key(look<Type>(other));
}

template <class Type>
constexpr Member member() {
  using Item = typename Items<Type>::Item;
  if constexpr (Items<Type>::presence == Presence::optional) {
    return {Presence::optional,
            [](const void* m) -> std::size_t { return look<Type>(m).has_value() ? 1 : 0; },
            [](const void* m, std::size_t) -> const void* { return &*look<Type>(m); },
            [](void* m) -> void* { return &at<Type>(m).emplace(); },
            [](void* m) { at<Type>(m).reset(); },
            nullptr};
  } else if constexpr (Items<Type>::presence == Presence::repeated) {
    Member result{Presence::repeated,
                  [](const void* m) { return look<Type>(m).size(); },
                  [](const void* m, std::size_t i) -> const void* { return &look<Type>(m)[i]; },
                  [](void* m) -> void* { return &at<Type>(m).emplace_back(); },
                  [](void* m) { at<Type>(m).pop_back(); },
                  nullptr};
    if constexpr (HasKey<Item>) result.before = comes_before<Item>;
    return result;
  } else {
    return {Presence::required,
            [](const void*) -> std::size_t { return 1; },
            [](const void* m, std::size_t) { return m; },
            [](void* m) { return m; },
            [](void*) {},
            nullptr};
  }
}
template <class Type>
inline constexpr Member member_of = member<Type>();

constexpr Member flag() {
  return {Presence::flag,
          [](const void* m) -> std::size_t { return look<bool>(m) ? 1 : 0; },
          [](const void* m, std::size_t) { return m; },
          [](void* m) { return m; },
          [](void*) {},
          nullptr};
}
inline constexpr Member flag_member = flag();

template <auto Pointer>
struct Pointed;
template <class OwnerType, class MemberType, MemberType OwnerType::*Pointer>
struct Pointed<Pointer> {
  using Owner = OwnerType;
  using Type = MemberType;
  using Item = typename Items<Type>::Item;
  static Type& of(void* owner) { return at<Owner>(owner).*Pointer; }
  static const Type& of(const void* owner) { return look<Owner>(owner).*Pointer; }
};

template <auto Pointer>
bool take(Cursor& cursor, const Clause& clause, void* owner) {
  using Type = typename Pointed<Pointer>::Type;
  Type value{};
  if (!read_clause(cursor, clause, &value)) return false;
  Type& member = Pointed<Pointer>::of(owner);
  if constexpr (Items<Type>::presence == Presence::repeated) {
    for (auto& item : value) member.push_back(std::move(item));
  } else {
    member = std::move(value);
  }
  return true;
}
template <auto Pointer>
bool take_flag(Cursor& cursor, const Clause& clause, void* owner) {
  bool value = false;
  if (!read_clause(cursor, clause, &value)) return false;
  Pointed<Pointer>::of(owner) = true;
  return true;
}

template <auto Pointer>
bool is_twice(const void* owner) {
  if constexpr (HasKey<typename Pointed<Pointer>::Item>) {
    const auto& items = Pointed<Pointer>::of(owner);
    if constexpr (requires { items.back(); }) {
      const auto has_key = [&](const auto& item) { return key(item) == key(items.back()); };
      return std::count_if(items.begin(), items.end(), has_key) > 1;
    }
  }
  return false;
}

template <auto Pointer>
void settle(void* owner) {
  if constexpr (HasKey<typename Pointed<Pointer>::Item>) {
    auto& items = Pointed<Pointer>::of(owner);
    if constexpr (requires { items.begin(); }) {
      std::sort(items.begin(), items.end(),
                [](const auto& a, const auto& b) { return key(a) < key(b); });
    }
  }
}

// Items with a key replace the one with the same key; everything else replaces all.
template <auto Pointer>
void amend(void* owner, const void* other) {
  using Type = typename Pointed<Pointer>::Type;
  Type& member = Pointed<Pointer>::of(owner);
  const Type& given = Pointed<Pointer>::of(other);
  constexpr bool is_keyed =
      Items<Type>::presence == Presence::repeated && HasKey<typename Pointed<Pointer>::Item>;
  if constexpr (is_keyed) {
    for (const auto& item : given) {
      std::erase_if(member, [&](const auto& old) { return key(old) == key(item); });
      member.push_back(item);
    }
    settle<Pointer>(owner);
  } else {
    member = given;
  }
}

template <auto Pointer>
constexpr Slot slot(const Member* member, const Sort* sort) {
  return {member,
          sort,
          [](void* owner) -> void* { return &Pointed<Pointer>::of(owner); },
          [](const void* owner) -> const void* { return &Pointed<Pointer>::of(owner); },
          take<Pointer>,
          is_twice<Pointer>,
          settle<Pointer>,
          amend<Pointer>};
}

template <class Described>
struct Override {
  static constexpr bool is_one = false;
};
template <auto Pointer, const Sort* sort>
struct Override<As<Pointer, sort>> {
  static constexpr bool is_one = true;
  using Type = typename Pointed<Pointer>::Type;
  static constexpr Slot made() { return slot<Pointer>(&member_of<Type>, sort); }
};

// The slot of a member, given as its pointer or with a sort of its own.
template <auto Member>
constexpr Slot slot_for() {
  using Given = Override<std::remove_cv_t<decltype(Member)>>;
  if constexpr (Given::is_one) {
    return Given::made();
  } else {
    return slot<Member>(&member_of<typename Pointed<Member>::Type>,
                        &sort_of<typename Pointed<Member>::Item>);
  }
}

template <auto... Members>
struct Slots {
  static constexpr std::array<Slot, sizeof...(Members)> all = {slot_for<Members>()...};
};

constexpr bool always(const void*) { return true; }
constexpr void nothing(void*) {}

template <class Type>
constexpr void reset(void* value) {
  at<Type>(value) = Type{};
}

// The place of a type among the alternatives of a variant.
template <class Type, class... Types>
constexpr std::size_t index_in(const std::variant<Types...>*) {
  const std::array<bool, sizeof...(Types)> is_it = {std::is_same_v<Type, Types>...};
  return static_cast<std::size_t>(std::find(is_it.begin(), is_it.end(), true) - is_it.begin());
}

}  // namespace declared

// Leaves: two functions, bool read(Cursor&, T&) and void say(std::string&, const T&).
template <auto reads, auto says>
struct Leaf;
template <class Type, bool (*reads)(Cursor&, Type&), void (*says)(std::string&, const Type&)>
struct Leaf<reads, says> {
  static constexpr Sort sort(std::string_view name, std::string_view example,
                             std::string_view grammar) {
    Sort sort;
    sort.name = name;
    sort.example = example;
    sort.grammar = grammar;
    sort.read = [](Cursor& cursor, void* value) {
      return reads(cursor, declared::at<Type>(value));
    };
    sort.say = [](std::string& out, const void* value) { says(out, declared::look<Type>(value)); };
    return sort;
  }
};

template <class Type>
constexpr Word word(Type value, std::string_view text) {
  return {static_cast<std::int64_t>(value), text};
}
template <class Type>
constexpr Sort words(std::string_view name, std::span<const Word> list) {
  Sort sort;
  sort.shape = Shape::words;
  sort.name = name;
  sort.words = list;
  sort.number_of = [](const void* value) {
    return static_cast<std::int64_t>(declared::look<Type>(value));
  };
  sort.set_number = [](void* value, std::int64_t number) {
    declared::at<Type>(value) = static_cast<Type>(number);
  };
  return sort;
}

template <class Type>
constexpr Sort choice(std::string_view name, std::span<const Option> options) {
  Sort sort;
  sort.shape = Shape::choice;
  sort.name = name;
  sort.options = options;
  sort.reset = declared::reset<Type>;
  return sort;
}
template <auto... Members>
constexpr Option option(Pattern pattern) {
  if (pattern.slots() != sizeof...(Members)) throw "as many slots as members";
  return {pattern, declared::Slots<Members...>::all, declared::always, declared::nothing};
}
// The way to write a value whose member is this enumerator.
template <auto Pointer, auto value, auto... Members>
constexpr Option option_when(Pattern pattern) {
  Option result = option<Members...>(pattern);
  result.fits = [](const void* owner) { return declared::Pointed<Pointer>::of(owner) == value; };
  result.preset = [](void* owner) { declared::Pointed<Pointer>::of(owner) = value; };
  return result;
}
// The way to write a value of which this member is stated.
template <auto Pointer, auto... Members>
constexpr Option option_if_said(Pattern pattern) {
  Option result = option<Members...>(pattern);
  result.fits = [](const void* owner) { return declared::Pointed<Pointer>::of(owner).has_value(); };
  return result;
}

// One alternative of a variant, as {it}; an alternative without content is words only.
template <class Variant, class Type>
struct Alternative {
  static Type& of(void* owner) { return std::get<Type>(declared::at<Variant>(owner)); }
  static const Type& of(const void* owner) {
    return std::get<Type>(declared::look<Variant>(owner));
  }
  static constexpr Option empty(Pattern pattern) {
    return {pattern,
            {},
            [](const void* owner) {
              return std::holds_alternative<Type>(declared::look<Variant>(owner));
            },
            [](void* owner) { declared::at<Variant>(owner).template emplace<Type>(); }};
  }
  static constexpr std::array<Slot, 1> slots() {
    return {Slot{&declared::member_of<Type>, &sort_of<Type>,
                 [](void* owner) -> void* { return &of(owner); },
                 [](const void* owner) -> const void* { return &of(owner); }, nullptr, nullptr,
                 nullptr, nullptr}};
  }
};
template <class Variant, class Type>
struct AlternativeSlots {
  static constexpr std::array<Slot, 1> all = Alternative<Variant, Type>::slots();
};
template <class Variant, class Type>
constexpr Option alternative(Pattern pattern) {
  Option result = Alternative<Variant, Type>::empty(pattern);
  result.slots = AlternativeSlots<Variant, Type>::all;
  return result;
}

template <auto Member>
constexpr Clause clause(Pattern pattern, std::string_view purpose) {
  if (pattern.slots() != 1) throw "a clause has one slot";
  const Slot slot = declared::slot_for<Member>();
  return {pattern.slot_name(0), pattern, slot, purpose,
          slot.member->presence == Presence::required};
}
// A repeated clause of which there must be one.
template <auto Member>
constexpr Clause needed_clause(Pattern pattern, std::string_view purpose) {
  Clause result = clause<Member>(pattern, purpose);
  result.is_needed = true;
  return result;
}
template <auto Pointer>
constexpr Clause flag(std::string_view name, Pattern pattern, std::string_view purpose) {
  if (pattern.slots() != 0) throw "a flag has no slot";
  Slot slot = declared::slot<Pointer>(&declared::flag_member, nullptr);
  slot.take = declared::take_flag<Pointer>;
  return {name, pattern, slot, purpose, false};
}

// What is printed about a kind.
struct Told {
  std::string_view purpose;
  std::string_view example;
};
template <class Type, auto... Members>
constexpr Kind kind(std::string_view name, Pattern head, std::span<const Clause> clauses,
                    Told told) {
  if (head.slots() != sizeof...(Members)) throw "as many slots as members";
  return {name,
          head,
          declared::Slots<Members...>::all,
          clauses,
          told.purpose,
          told.example,
          declared::index_in<Type>(static_cast<const logbook::Fact*>(nullptr)),
          [](logbook::Fact& fact) -> void* { return &fact.emplace<Type>(); },
          [](logbook::Fact& fact) -> void* { return &std::get<Type>(fact); },
          [](const logbook::Fact& fact) -> const void* { return &std::get<Type>(fact); }};
}
constexpr Kind with_a_clause(Kind kind) {
  kind.needs_a_clause = true;
  return kind;
}
constexpr Kind with_common(Kind kind, Common common) {
  kind.common = common;
  return kind;
}

}  // namespace sentence
