#include "sentence/sorts/inner.h"

#include <utility>

#include "sentence/explain.h"
#include "sentence/reader.h"

namespace sentence {

bool read_inner(Cursor& cursor, logbook::InnerSaid& inner) {
  if (cursor.trace() != nullptr) return explain_inner(cursor);
  logbook::Said said;
  if (!read_inner_sentence(cursor, said)) return false;
  inner = logbook::InnerSaid(std::move(said));
  return true;
}

void say_inner(std::string& out, const logbook::InnerSaid& inner) {
  const std::string sentence = say(*inner);
  out += std::string_view(sentence).substr(0, sentence.size() - 1);
}

}  // namespace sentence
