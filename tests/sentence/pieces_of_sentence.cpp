#include "sentence/pieces_of_sentence.h"

#include "quantity/expect.h"
#include "sentence/reader.h"
#include "sentence/sentence.h"
#include "sentence/sorts/times.h"

namespace sentence {

namespace {

// The end of the head of a canonical sentence.
std::size_t end_of_head(const std::string& text, const Kind& kind) {
  const Reading reading;
  Cursor cursor(text, text.size() - 1, reading);
  logbook::Said said;
  const bool is_read = read_value(cursor, day_sort(), &said.day) && read_time(cursor, said) &&
                       read_head(cursor, kind, kind.make(said.fact));
  EXPECT(is_read);
  return cursor.at();
}

}  // namespace

Pieces pieces_of(const std::string& text) {
  const Read read = sentence::read(text, {});
  EXPECT(read.said.has_value());
  const std::size_t head = end_of_head(text, kind_of(read.said->fact));
  Pieces pieces;
  pieces.head = text.substr(0, text.size() - 1);
  for (const ClauseSpan& span : read.spans) {
    if (span.from <= head) continue;
    if (pieces.clauses.empty()) pieces.head = text.substr(0, span.from);
    pieces.clauses.push_back(text.substr(span.from, span.to - span.from));
  }
  return pieces;
}

std::string put_together(const Pieces& pieces) {
  std::string text = pieces.head;
  for (std::size_t i = 0; i < pieces.clauses.size(); ++i) {
    if (i != 0) text += ", ";
    text += pieces.clauses[i];
  }
  return text + '.';
}

const Sort& day_sort() { return sort_of<quantity::Day>; }

}  // namespace sentence
