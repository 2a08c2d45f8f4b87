#include "command/heads.h"

#include <algorithm>
#include <array>
#include <sstream>

#include "reckon/entry_named.h"
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
  logbook::EntryName entry;
  std::string digits;
  std::string name() const { return entry.writer + "-" + std::to_string(entry.number); }
};

// What stands around the heads on a sheet, and full stops and commas as people set them.
std::vector<std::string> words_of(const std::string& text) {
  constexpr std::array<std::string_view, 12> around = {"newest",    "entry", "of",      "each",
                                                       "base",      "for",   "and",     "timeworn",
                                                       "--against", "check", "keeping", "apart"};
  std::string plain = text;
  for (char& c : plain) {
    if (c == ',' || c == '.' || c == ';' || c == ':' || c == '"') c = ' ';
    if (c >= 'A' && c <= 'Z') c = static_cast<char>(c - 'A' + 'a');
  }
  std::vector<std::string> words;
  std::istringstream all(plain);
  for (std::string word; all >> word;) {
    if (std::find(around.begin(), around.end(), word) == around.end()) words.push_back(word);
  }
  return words;
}

// Beginning digits of a digest, or some of them: on paper o is taken for 0, and l and i for 1.
std::optional<std::string> read_digits(std::string word) {
  std::replace(word.begin(), word.end(), 'o', '0');
  std::replace_if(
      word.begin(), word.end(), [](char c) { return c == 'l' || c == 'i'; }, '1');
  if (word.find_first_not_of("0123456789abcdef") != word.npos) return std::nullopt;
  return word;
}

// Each name with the digits behind it, which may be typed in groups; absent if they are none.
std::optional<std::vector<Head>> read_heads(const std::string& text) {
  std::vector<Head> heads;
  for (const std::string& word : words_of(text)) {
    if (auto name = sentence::read_entry_name(word)) {
      heads.push_back({*std::move(name), ""});
      continue;
    }
    const auto digits = read_digits(word);
    if (!digits || heads.empty()) return std::nullopt;
    heads.back().digits += *digits;
  }
  const bool are_whole = std::all_of(heads.begin(), heads.end(), [](const Head& head) {
    return head.digits.size() >= shown_digits && head.digits.size() <= all_digits;
  });
  return are_whole && !heads.empty() ? std::optional(heads) : std::nullopt;
}

Compared compare(const Head& head, const std::vector<Entry>& entries) {
  const std::string name = head.name();
  const std::string text = name + " " + head.digits;
  std::size_t of_number = 0;
  for (const Entry& entry : entries) {
    if (!reckon::is_named(head.entry, entry.id)) continue;
    ++of_number;
    if (!text::hex(entry.id.digest).starts_with(head.digits)) continue;
    return {name, true, text + " stands in the book as on the sheet."};
  }
  const std::string lacks = "The book has no entry " + name +
                            ". Its newest entries were cut off or it is an older copy, unless the "
                            "sheet is of another record.";
  const std::string differs = "Entry " + name +
                              " is not the one on the sheet: it, or an entry before it, was "
                              "changed and the chain made anew.";
  return {name, false, of_number == 0 ? lacks : differs};
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
