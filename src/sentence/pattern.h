// sentence/pattern.h: a pattern reads like the sentence with gaps: words, {slot}, {slot or} for a
// list inside a clause, [ ] around what may be absent; a comma at the end says that the first
// clause follows after a comma. It is taken apart at compile time; a bad pattern does not compile.
#pragma once

#include <array>
#include <cstddef>
#include <cstdint>
#include <span>
#include <string_view>

namespace sentence {

enum class PieceKind : std::uint8_t { words, slot, open, close };

struct Piece {
  PieceKind kind = PieceKind::words;
  std::uint8_t slot = 0;  // which slot of the owner, counted from the left
  std::string_view text;  // the words, or the slot's name
  std::string_view join;  // of a list: the word between its items
};

class Pattern {
 public:
  constexpr Pattern() = default;
  consteval Pattern(const char* text) : text_(text) {
    std::string_view rest = text_;
    if (rest.ends_with(',')) {
      has_comma_after_ = true;
      rest.remove_suffix(1);
    }
    while (!rest.empty()) rest = take_piece(rest);
    if (is_open_) throw "a bracket is not closed";
  }

  constexpr std::span<const Piece> pieces() const { return {pieces_.data(), size_}; }
  constexpr std::size_t slots() const { return slots_; }
  constexpr bool has_comma_after() const { return has_comma_after_; }
  constexpr std::string_view text() const { return text_; }
  // The name of a slot, as it stands in the braces.
  constexpr std::string_view slot_name(std::size_t slot) const {
    for (const Piece& piece : pieces()) {
      if (piece.kind == PieceKind::slot && piece.slot == slot) return piece.text;
    }
    return {};
  }

 private:
  constexpr std::string_view take_piece(std::string_view rest) {
    switch (rest.front()) {
      case ' ':
        return rest.substr(1);
      case '{':
        return take_slot(rest);
      case '[':
        return take_bracket(rest, PieceKind::open);
      case ']':
        return take_bracket(rest, PieceKind::close);
      default:
        return take_words(rest);
    }
  }
  constexpr std::string_view take_slot(std::string_view rest) {
    const std::size_t end = rest.find('}');
    if (end == std::string_view::npos) throw "a brace is not closed";
    const std::string_view inside = rest.substr(1, end - 1);
    const std::size_t blank = inside.find(' ');
    Piece piece{PieceKind::slot, static_cast<std::uint8_t>(slots_), inside.substr(0, blank), {}};
    if (blank != std::string_view::npos) piece.join = inside.substr(blank + 1);
    if (piece.text.empty()) throw "a slot needs a name";
    ++slots_;
    add(piece);
    return rest.substr(end + 1);
  }
  constexpr std::string_view take_bracket(std::string_view rest, PieceKind kind) {
    const bool opens = kind == PieceKind::open;
    if (opens == is_open_) throw "brackets do not nest, and close what is open";
    is_open_ = opens;
    add({kind, 0, {}, {}});
    return rest.substr(1);
  }
  constexpr std::string_view take_words(std::string_view rest) {
    const std::size_t end = rest.find_first_of("{[]");
    std::string_view words = rest.substr(0, end);
    const std::size_t size = words.size();
    while (words.ends_with(' ')) words.remove_suffix(1);
    add({PieceKind::words, 0, words, {}});
    return rest.substr(size);
  }
  constexpr void add(const Piece& piece) {
    if (size_ == pieces_.size()) throw "a pattern has too many pieces";
    pieces_[size_] = piece;
    ++size_;
  }

  std::array<Piece, 12> pieces_{};
  std::size_t size_ = 0;
  std::size_t slots_ = 0;
  bool has_comma_after_ = false;
  bool is_open_ = false;
  std::string_view text_;
};

}  // namespace sentence
