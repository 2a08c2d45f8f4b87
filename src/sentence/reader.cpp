#include "sentence/reader.h"

#include <algorithm>
#include <array>
#include <utility>

#include "quantity/figure.h"
#include "sentence/sorts/times.h"

namespace sentence {
namespace {

// The words of a text as a set of 64: if a word is in it the text may hold it, else it does not.
class WordSet {
 public:
  explicit WordSet(std::string_view text) {
    std::uint64_t hash = start;
    bool is_inside = false;
    for (const char c : text) {
      const bool is_letter = (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z');
      if (is_letter) hash = (hash ^ static_cast<std::uint64_t>(c | 0x20)) * factor;
      if (!is_letter && is_inside) add(hash);
      if (!is_letter) hash = start;
      is_inside = is_letter;
    }
    if (is_inside) add(hash);
  }
  bool may_hold(const WordSet& other) const { return (other.bits_ & ~bits_) == 0; }

 private:
  static constexpr std::uint64_t start = 14695981039346656037ULL;
  static constexpr std::uint64_t factor = 1099511628211ULL;
  void add(std::uint64_t hash) { bits_ |= std::uint64_t{1} << (hash >> 58); }

  std::uint64_t bits_ = 0;
};

// The words that the head of a kind always has.
WordSet words_of_head(const Kind& kind) {
  std::string words;
  for (const Piece& piece : kind.head.pieces()) {
    if (piece.kind != PieceKind::words) continue;
    words += piece.text;
    words += ' ';
  }
  return WordSet(words);
}

const std::vector<WordSet>& head_words() {
  static const std::vector<WordSet> sets = [] {
    std::vector<WordSet> result;
    for (const Kind* kind : all_kinds()) result.push_back(words_of_head(*kind));
    return result;
  }();
  return sets;
}

bool has_all_needed(const Clauses& clauses) {
  if (clauses.needs_one()) return false;
  const auto own = clauses.kind().clauses;
  return std::all_of(own.begin(), own.end(), [&](const Clause& clause) {
    return !clause.is_needed || clauses.has(clause);
  });
}

// What follows the head: nothing, or clauses after a comma or a blank as the head says.
bool read_rest(Cursor& cursor, Clauses& clauses) {
  if (cursor.is_at_end()) return true;
  if (clauses.kind().head.has_comma_after() && !cursor.take_comma()) return false;
  return !cursor.is_at_end() && read_clauses(cursor, clauses);
}

bool read_as(Cursor& cursor, const Kind& kind, logbook::Said& said) {
  void* fact = kind.make(said.fact);
  if (!read_head(cursor, kind, fact)) return false;
  Clauses clauses(kind, fact, said);
  if (!read_rest(cursor, clauses) || !has_all_needed(clauses)) return false;
  clauses.settle();
  return true;
}

bool read_fact(Cursor& cursor, logbook::Said& said) {
  const std::size_t start = cursor.skip_blanks();
  const std::size_t spans = cursor.spans() == nullptr ? 0 : cursor.spans()->size();
  const WordSet words(cursor.text().substr(start, cursor.end() - start));
  for (std::size_t i = 0; i < all_kinds().size(); ++i) {
    if (!words.may_hold(head_words()[i])) continue;
    cursor.go_to(start);
    if (cursor.spans() != nullptr) cursor.spans()->resize(spans);
    logbook::Said trial;
    trial.day = said.day;
    trial.time = said.time;
    if (!read_as(cursor, *all_kinds()[i], trial)) continue;
    said = std::move(trial);
    return true;
  }
  return false;
}

}  // namespace

bool read_clauses(Cursor& cursor, Clauses& clauses) {
  while (!cursor.is_at_end()) {
    if (!clauses.take(cursor) || clauses.is_twice()) return false;
    if (!cursor.is_at_end() && !cursor.take_comma()) return false;
  }
  return true;
}

bool read_time(Cursor& cursor, logbook::Said& said) {
  const std::size_t start = cursor.skip_blanks();
  const std::string_view figure = cursor.take_number();
  cursor.go_to(start);
  if (figure.find(':') == std::string_view::npos) return true;
  return read_value(cursor, sort_of<quantity::ClockTime>, &said.time.emplace());
}

bool read_sentence(Cursor& cursor, MissingDay missing, logbook::Said& said) {
  const std::optional<quantity::Day> today = cursor.reading().today;
  const bool has_day = read_value(cursor, sort_of<quantity::Day>, &said.day);
  if (!has_day && (!today || missing == MissingDay::is_wrong)) return false;
  if (!has_day) said.day = *today;
  return read_time(cursor, said) && read_fact(cursor, said);
}

bool read_inner_sentence(Cursor& cursor, logbook::Said& said) {
  return read_sentence(cursor, MissingDay::is_wrong, said) &&
         kind_of(said.fact).common != Common::none;
}

}  // namespace sentence
