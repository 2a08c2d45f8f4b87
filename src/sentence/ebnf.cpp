// The grammar, printed from the declarations.
#include <set>

#include "sentence/describe.h"
#include "sentence/kinds/kinds.h"
#include "sentence/sentence.h"
#include "sentence/sorts/counters.h"
#include "sentence/values.h"
#include "text/pieces.h"

namespace sentence {
namespace {

std::string in_quotes(std::string_view words) {
  std::string result;
  for (const std::string_view word : text::split(words, ' ')) {
    if (!result.empty()) result += ' ';
    result += '"' + std::string(word) + '"';
  }
  return result;
}

// The rules of sorts are gathered while patterns are printed, each once.
class Grammar {
 public:
  std::string of_kind(const Kind& kind) {
    std::string rule = of_pattern(kind.head, kind.head_slots);
    for (const Clause& clause : kind.clauses) rule += ' ' + of_clause(clause);
    if (kind.common != Common::none) rule += " { \",\" common }";
    return rule;
  }
  std::string of_common() {
    std::vector<std::string> rules;
    for (const Clause& clause : common_clauses()) {
      rules.push_back(of_pattern(clause.pattern, {&clause.slot, 1}));
    }
    return text::join(rules, " | ");
  }
  // Every sort named so far, and what those name.
  std::string rules_of_sorts() {
    std::string result;
    for (std::size_t i = 0; i < sorts_.size(); ++i) {
      result += std::string(sorts_[i]->name) + " = " + of_sort(*sorts_[i]) + "\n";
    }
    return result;
  }

 private:
  std::string name_of(const Sort& sort) {
    if (named_.insert(sort.name).second) sorts_.push_back(&sort);
    return std::string(sort.name);
  }
  std::string of_slot(const Piece& piece, const Slot& slot) {
    const std::string name = name_of(*slot.sort);
    if (piece.join.empty()) return name;
    return name + " { " + in_quotes(piece.join) + ' ' + name + " }";
  }
  std::string of_pattern(const Pattern& pattern, std::span<const Slot> slots) {
    std::string result;
    for (const Piece& piece : pattern.pieces()) {
      if (!result.empty()) result += ' ';
      switch (piece.kind) {
        case PieceKind::words:
          result += in_quotes(piece.text);
          break;
        case PieceKind::slot:
          result += of_slot(piece, slots[piece.slot]);
          break;
        case PieceKind::open:
          result += '[';
          break;
        case PieceKind::close:
          result += ']';
          break;
      }
    }
    return result;
  }
  std::string of_clause(const Clause& clause) {
    const std::string inside = "\",\" " + of_pattern(clause.pattern, {&clause.slot, 1});
    const bool is_repeated = clause.slot.member->presence == Presence::repeated && !is_list(clause);
    if (is_repeated) return "{ " + inside + " }";
    return clause.is_needed ? inside : "[ " + inside + " ]";
  }
  std::string of_sort(const Sort& sort) {
    if (sort.shape == Shape::leaf) return std::string(sort.grammar);
    std::vector<std::string> ways;
    for (const Word& word : sort.words) ways.push_back(in_quotes(word.text));
    for (const Option& option : sort.options) {
      ways.push_back(of_pattern(option.pattern, option.slots));
    }
    return text::join(ways, " | ");
  }

  std::set<std::string_view> named_;
  std::vector<const Sort*> sorts_;
};

std::string rules_of_counters() {
  std::vector<std::string> plurals;
  std::vector<std::string> singulars;
  for (const CounterWord& word : counter_words) {
    plurals.push_back(in_quotes(word.plural));
    singulars.push_back(in_quotes(word.singular));
  }
  return "counter-plural = " + text::join(plurals, " | ") + "\n" +
         "counter-singular = " + text::join(singulars, " | ") + "\n";
}

constexpr std::string_view closing_rules =
    "bare = 1 to 24 of A-Z 0-9 \"-\" \"/\", with a letter and with a digit or hyphen\n"
    "quoted = '\"' characters '\"', with \\\" and \\\\ for \" and \\\n"
    "base-letters = 5 to 26 of 0-9 A-Z without I L O U\n"
    "decimal = digits [ \".\" digits ]\n"
    "digits = digit { digit }\n"
    "clock = digits \":\" 2digit [ \":\" 2digit ]\n";

}  // namespace

std::string ebnf() {
  Grammar grammar;
  std::vector<std::string> names;
  std::string rules;
  for (const Kind* kind : all_kinds()) {
    names.emplace_back(kind->name);
    rules += std::string(kind->name) + " = " + grammar.of_kind(*kind) + "\n";
  }
  rules += "common = " + grammar.of_common() + "\n";
  return "sentence = date [ time ] fact \".\"\nfact = " + text::join(names, " | ") + "\n" + rules +
         grammar.rules_of_sorts() + rules_of_counters() + std::string(closing_rules);
}

}  // namespace sentence
