#include "sentence/values.h"

#include <algorithm>
#include <vector>

namespace sentence {
namespace {

// Where the values of a pattern go: members of the owner, or the one member given.
struct Target {
  void* owner = nullptr;
  void* member = nullptr;
  std::vector<ClauseSpan>* spans = nullptr;
};

void* member_of(const Slot& slot, const Target& target) {
  return target.member != nullptr ? target.member : slot.at(target.owner);
}

bool read_item(Cursor& cursor, const Slot& slot, void* member) {
  if (read_value(cursor, *slot.sort, slot.member->add(member))) return true;
  slot.member->drop(member);
  return false;
}

bool read_slot(Cursor& cursor, const Piece& piece, const Slot& slot, void* member) {
  if (!read_item(cursor, slot, member)) return false;
  if (piece.join.empty()) return true;
  while (cursor.take_words(piece.join)) {
    if (!read_item(cursor, slot, member)) return false;
  }
  return true;
}

struct Reader {
  Cursor& cursor;
  std::span<const Slot> slots;
  Target target;

  bool read(const Piece& piece) const {
    if (piece.kind == PieceKind::words) return cursor.take_words(piece.text);
    const std::size_t from = cursor.skip_blanks();
    const Slot& slot = slots[piece.slot];
    if (!read_slot(cursor, piece, slot, member_of(slot, target))) return false;
    if (target.spans != nullptr) {
      target.spans->push_back(
          {piece.text, static_cast<std::uint16_t>(from), static_cast<std::uint16_t>(cursor.at())});
    }
    return true;
  }
  bool read_all(std::span<const Piece> pieces) const {
    return std::all_of(pieces.begin(), pieces.end(),
                       [this](const Piece& piece) { return read(piece); });
  }
  // What stands in brackets may be absent: then nothing of it is kept.
  void read_bracket(std::span<const Piece> pieces) const {
    const std::size_t start = cursor.at();
    if (read_all(pieces)) return;
    cursor.go_to(start);
    for (const Piece& piece : pieces) {
      if (piece.kind != PieceKind::slot) continue;
      const Slot& slot = slots[piece.slot];
      void* member = member_of(slot, target);
      while (slot.member->presence != Presence::required && slot.member->size(member) != 0) {
        slot.member->drop(member);
      }
    }
  }
  bool read_pieces(std::span<const Piece> pieces) const {
    while (!pieces.empty()) {
      if (pieces.front().kind != PieceKind::open) {
        if (!read(pieces.front())) return false;
        pieces = pieces.subspan(1);
        continue;
      }
      const auto close = std::find_if(pieces.begin(), pieces.end(), [](const Piece& piece) {
        return piece.kind == PieceKind::close;
      });
      const auto size = static_cast<std::size_t>(close - pieces.begin());
      read_bracket(pieces.subspan(1, size - 1));
      pieces = pieces.subspan(size + 1);
    }
    return true;
  }
};

bool read_leaf(Cursor& cursor, const Sort& sort, void* value) {
  const std::size_t start = cursor.at();
  if (sort.read(cursor, value)) return true;
  if (cursor.trace() != nullptr) {
    cursor.want(start, std::string(sort.name) + " such as " + std::string(sort.example), {});
  }
  return false;
}

bool read_words(Cursor& cursor, const Sort& sort, void* value) {
  for (const Word& word : sort.words) {
    if (!cursor.take_words(word.text)) continue;
    sort.set_number(value, word.value);
    return true;
  }
  return false;
}

bool read_choice(Cursor& cursor, const Sort& sort, void* value) {
  const bool took_short_forms =
      cursor.take_short_forms(sort.read_short == nullptr && cursor.known() != nullptr);
  bool is_read = false;
  const std::size_t start = cursor.at();
  for (const Option& option : sort.options) {
    cursor.go_to(start);
    sort.reset(value);
    option.preset(value);
    is_read = read_pattern(cursor, option, value);
    if (is_read) break;
  }
  cursor.take_short_forms(took_short_forms);
  return is_read;
}

bool read_shape(Cursor& cursor, const Sort& sort, void* value) {
  switch (sort.shape) {
    case Shape::leaf:
      return read_leaf(cursor, sort, value);
    case Shape::words:
      return read_words(cursor, sort, value);
    case Shape::choice:
      return read_choice(cursor, sort, value);
  }
  return false;
}

}  // namespace

bool read_value(Cursor& cursor, const Sort& sort, void* value) {
  const std::size_t start = cursor.skip_blanks();
  if (read_shape(cursor, sort, value)) return true;
  cursor.go_to(start);
  if (sort.read_short != nullptr && cursor.known() != nullptr && sort.read_short(cursor, value)) {
    return true;
  }
  cursor.go_to(start);
  return false;
}

bool read_pattern(Cursor& cursor, const Option& option, void* owner) {
  return Reader{cursor, option.slots, {owner}}.read_pieces(option.pattern.pieces());
}

bool read_head(Cursor& cursor, const Kind& kind, void* owner) {
  const Reader reader{cursor, kind.head_slots, {owner, nullptr, cursor.spans()}};
  return reader.read_pieces(kind.head.pieces());
}

bool read_clause(Cursor& cursor, const Clause& clause, void* member) {
  const std::size_t start = cursor.at();
  const Reader reader{cursor, {&clause.slot, 1}, {nullptr, member}};
  if (reader.read_pieces(clause.pattern.pieces())) {
    if (cursor.is_at_clause_end()) return true;
    cursor.want(cursor.at(), ",", ",");
  }
  cursor.go_to(start);
  return false;
}

bool is_list(const Clause& clause) {
  const auto pieces = clause.pattern.pieces();
  return std::any_of(pieces.begin(), pieces.end(),
                     [](const Piece& piece) { return !piece.join.empty(); });
}

}  // namespace sentence
