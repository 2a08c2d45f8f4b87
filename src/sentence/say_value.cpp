// How values, patterns and clauses are written.
#include "quantity/expect.h"
#include "sentence/values.h"

namespace sentence {
namespace {

void add_blank(std::string& out, std::size_t start) {
  if (out.size() > start && out.back() != ' ') out += ' ';
}

void say_list(std::string& out, const Piece& piece, const Slot& slot, const void* member) {
  const std::size_t size = slot.member->size(member);
  for (std::size_t i = 0; i < size; ++i) {
    if (i != 0) {
      out += ' ';
      out += piece.join;
      out += ' ';
    }
    say_value(out, *slot.sort, slot.member->item(member, i));
  }
}

// True if the brackets that open at this piece hold something.
bool is_said(std::span<const Piece> pieces, std::span<const Slot> slots, const void* owner) {
  for (const Piece& piece : pieces) {
    if (piece.kind == PieceKind::close) return false;
    if (piece.kind != PieceKind::slot) continue;
    const Slot& slot = slots[piece.slot];
    if (slot.member->size(slot.look(owner)) != 0) return true;
  }
  return false;
}

const Option& fitting_option(const Sort& sort, const void* value) {
  for (const Option& option : sort.options) {
    if (option.fits(value)) return option;
  }
  EXPECT(!"every value has a way to be written");
  return sort.options.front();
}

}  // namespace

void say_value(std::string& out, const Sort& sort, const void* value) {
  if (sort.shape == Shape::leaf) return sort.say(out, value);
  if (sort.shape == Shape::choice) {
    const Option& option = fitting_option(sort, value);
    return say_pattern(out, option.pattern, option.slots, value);
  }
  const std::int64_t number = sort.number_of(value);
  for (const Word& word : sort.words) {
    if (word.value != number) continue;
    out += word.text;
    return;
  }
  EXPECT(!"every enumerator has its word");
}

void say_pattern(std::string& out, const Pattern& pattern, std::span<const Slot> slots,
                 const void* owner) {
  const std::size_t start = out.size();
  bool is_silent = false;  // inside brackets that hold nothing
  const auto pieces = pattern.pieces();
  for (std::size_t i = 0; i < pieces.size(); ++i) {
    const Piece& piece = pieces[i];
    if (piece.kind == PieceKind::open) is_silent = !is_said(pieces.subspan(i), slots, owner);
    if (piece.kind == PieceKind::close) is_silent = false;
    const bool is_bracket = piece.kind == PieceKind::open || piece.kind == PieceKind::close;
    if (is_bracket || is_silent) continue;
    if (piece.text != ":") add_blank(out, start);
    if (piece.kind == PieceKind::words) {
      out += piece.text;
    } else {
      say_list(out, piece, slots[piece.slot], slots[piece.slot].look(owner));
    }
  }
}

void say_clause(std::string& out, const Clause& clause, const void* owner, const void* item) {
  const std::size_t start = out.size();
  for (const Piece& piece : clause.pattern.pieces()) {
    add_blank(out, start);
    if (piece.kind == PieceKind::words) {
      out += piece.text;
    } else if (item != nullptr) {
      say_value(out, *clause.slot.sort, item);
    } else {
      say_list(out, piece, clause.slot, clause.slot.look(owner));
    }
  }
}

}  // namespace sentence
