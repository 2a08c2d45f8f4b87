#include "reckon/entry_named.h"

#include <algorithm>
#include <string_view>

namespace reckon {
namespace {

// The frame writes a writer in base 32, five bits a letter, the highest bits first.
constexpr std::string_view letters = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
constexpr std::size_t bits_of_writer = 128;

char letter_at(const logbook::WriterId& writer, std::size_t place) {
  std::size_t value = 0;
  for (std::size_t bit = place * 5; bit < place * 5 + 5; ++bit) {
    const unsigned byte = bit < bits_of_writer ? writer.bytes.at(bit / 8) : 0U;
    const bool is_set = ((byte >> (7 - bit % 8)) & 1U) != 0;
    value = value * 2 + (is_set ? 1 : 0);
  }
  return letters[value];
}

bool holds(const StandingFact& fact, const logbook::EntryName& name) {
  return std::any_of(fact.chain.begin(), fact.chain.end(),
                     [&](const logbook::EntryId& id) { return is_named(name, id); });
}

}  // namespace

std::string writer_letters(const logbook::WriterId& writer, std::size_t count) {
  std::string text;
  for (std::size_t place = 0; place < count; ++place) text += letter_at(writer, place);
  return text;
}

bool is_named(const logbook::EntryName& name, const logbook::EntryId& id) {
  if (name.number != id.number || name.writer.empty()) return false;
  if (name.writer.size() * 5 >= bits_of_writer + 5) return false;
  return name.writer == writer_letters(id.writer, name.writer.size());
}

const StandingFact* find_named(const std::vector<StandingFact>& facts,
                               const logbook::EntryName& name) {
  const StandingFact* found = nullptr;
  for (const StandingFact& fact : facts) {
    if (!holds(fact, name)) continue;
    if (found != nullptr) return nullptr;
    found = &fact;
  }
  return found;
}

}  // namespace reckon
