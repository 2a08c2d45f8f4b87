#include "sentence/describe.h"

#include "sentence/kinds/kinds.h"
#include "sentence/sentence.h"
#include "text/pieces.h"

namespace sentence {
namespace {

std::string example_of(const Pattern& pattern, std::span<const Slot> slots) {
  std::string result;
  bool is_optional = false;
  for (const Piece& piece : pattern.pieces()) {
    if (piece.kind == PieceKind::open) is_optional = true;
    if (piece.kind == PieceKind::close) is_optional = false;
    const bool is_bracket = piece.kind == PieceKind::open || piece.kind == PieceKind::close;
    if (is_optional || is_bracket) continue;
    if (!result.empty()) result += ' ';
    const bool is_slot = piece.kind == PieceKind::slot;
    result += is_slot ? sentence::example_of(*slots[piece.slot].sort) : std::string(piece.text);
  }
  return result;
}

std::vector<std::string> lines_of(std::string_view text) {
  std::vector<std::string> lines;
  for (const std::string_view line : text::split(text, '\n')) lines.emplace_back(line);
  return lines;
}

void tell_clauses(std::vector<std::string>& lines, std::span<const Clause> clauses) {
  for (const Clause& clause : clauses) {
    lines.push_back(std::string(clause.pattern.text()) + ": " + std::string(clause.purpose));
  }
}

}  // namespace

std::string example_of(const Sort& sort) {
  switch (sort.shape) {
    case Shape::leaf:
      return std::string(sort.example);
    case Shape::words:
      return std::string(sort.words.front().text);
    case Shape::choice:
      break;
  }
  return example_of(sort.options.front().pattern, sort.options.front().slots);
}

std::string wanted_clause(const Clause& clause) {
  const auto pieces = clause.pattern.pieces();
  const bool has_words = pieces.size() != 1 || pieces.front().kind == PieceKind::words;
  const std::string example = example_of(clause.pattern, {&clause.slot, 1});
  return has_words ? example : std::string(clause.slot.sort->name) + " such as " + example;
}

std::vector<KindText> kinds() {
  std::vector<KindText> result;
  for (const Kind* kind : all_kinds()) {
    KindText text;
    text.name = kind->name;
    text.purpose = kind->purpose;
    text.examples = lines_of(kind->example);
    tell_clauses(text.clauses, kind->clauses);
    result.push_back(std::move(text));
  }
  return result;
}

}  // namespace sentence
