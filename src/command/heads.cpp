#include "command/heads.h"

#include <algorithm>
#include <sstream>

#include "quantity/figure.h"
#include "sentence/frame.h"
#include "text/binary.h"
#include "words/grammar.h"
#include "words/words.h"

namespace command {

namespace {

using logbook::Entry;

constexpr std::size_t shown_digits = 16;
constexpr std::size_t all_digits = 64;

struct Head {
  std::string base;
  std::int64_t number = 0;
  std::string digits;
  std::string text() const { return base + "-" + std::to_string(number) + " " + digits; }
};

// The words in pairs; absent if they are none.
std::optional<std::vector<Head>> read_heads(const std::string& text) {
  std::vector<Head> heads;
  std::istringstream words(text);
  std::string name, digits;
  while (words >> name) {
    const auto hyphen = name.rfind('-');
    if (hyphen == 0 || hyphen == name.npos || !(words >> digits)) return std::nullopt;
    const auto number = quantity::read_whole(name.substr(hyphen + 1));
    const bool is_hex = digits.find_first_not_of("0123456789abcdef") == digits.npos;
    const bool fits = digits.size() >= shown_digits && digits.size() <= all_digits;
    if (!number.is_read() || !is_hex || !fits) return std::nullopt;
    heads.push_back({name.substr(0, hyphen), number.value(), digits});
  }
  return heads.empty() ? std::nullopt : std::optional(heads);
}

Compared compare(const Head& head, const std::vector<Entry>& entries) {
  std::size_t of_number = 0;
  for (const Entry& entry : entries) {
    if (entry.id.number != head.number) continue;
    if (!sentence::say_writer(entry.id.writer).starts_with(head.base)) continue;
    ++of_number;
    if (!text::hex(entry.id.digest).starts_with(head.digits)) continue;
    return {head.text(), true, head.text() + " stands in the book as on the sheet."};
  }
  const std::string name = head.base + "-" + std::to_string(head.number);
  const std::string lacks = "The book has no entry " + name +
                            ". Its newest entries were cut off or it is an older copy, unless the "
                            "sheet is of another record.";
  const std::string differs = "Entry " + name +
                              " is not the one on the sheet: it, or an entry before it, was "
                              "changed and the chain made anew.";
  return {head.text(), false, of_number == 0 ? lacks : differs};
}

}  // namespace

std::vector<std::string> head_texts(const std::vector<Entry>& entries) {
  std::vector<std::string> heads;
  for (std::size_t i = 0; i < entries.size(); ++i) {
    const bool is_last =
        i + 1 == entries.size() || entries[i + 1].id.writer != entries[i].id.writer;
    if (!is_last) continue;
    heads.push_back(words::entry_name(entries[i].id) + " " +
                    text::hex(entries[i].id.digest).substr(0, shown_digits));
  }
  return heads;
}

std::string heads_sentence(const std::vector<Entry>& entries) {
  const auto heads = head_texts(entries);
  if (heads.empty()) return {};
  return words::fill("Newest entry of each base, for timeworn check --against: {}.",
                     {words::listed(heads, "and")});
}

std::variant<std::vector<Compared>, Unanswerable> compare_heads(const std::string& text,
                                                                const std::vector<Entry>& entries) {
  const auto heads = read_heads(text);
  if (!heads) {
    return Unanswerable{"\"" + text +
                            "\" cannot be read. Write it as it stands at the foot of a printed "
                            "sheet, like \"K7QXM-130 0123456789abcdef\".",
                        typed_wrongly};
  }
  std::vector<Compared> result;
  for (const Head& head : *heads) result.push_back(compare(head, entries));
  return result;
}

}  // namespace command
