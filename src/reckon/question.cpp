#include "reckon/question.h"

#include <algorithm>
#include <cstdint>
#include <string_view>
#include <utility>

namespace reckon {

namespace {

// FNV-1a, 64 bits: short, the same everywhere, and no secret hangs on it.
class Mixed {
 public:
  void mix(std::uint8_t byte) { value_ = (value_ ^ byte) * 1099511628211ULL; }
  void mix(const logbook::EntryId& id) {
    for (const std::uint8_t byte : id.writer.bytes) mix(byte);
    for (int shift = 0; shift < 64; shift += 8) {
      mix(static_cast<std::uint8_t>((id.number >> shift) & 0xff));
    }
    for (const std::uint8_t byte : id.digest) mix(byte);
  }
  std::string letters(std::size_t count) const {
    constexpr std::string_view alphabet = "0123456789ABCDEFGHJKMNPQRSTVWXYZ";
    std::string text;
    for (std::size_t at = 0; at < count; ++at) text += alphabet[(value_ >> (59 - 5 * at)) & 31];
    return text;
  }

 private:
  std::uint64_t value_ = 14695981039346656037ULL;
};

}  // namespace

Question make_question(const std::string& class_, std::vector<logbook::EntryId> entries,
                       std::vector<logbook::Thing> about) {
  std::sort(entries.begin(), entries.end());
  std::sort(about.begin(), about.end());
  about.erase(std::unique(about.begin(), about.end()), about.end());
  Mixed mixed;
  for (const char letter : class_) mixed.mix(static_cast<std::uint8_t>(letter));
  for (const logbook::EntryId& entry : entries) mixed.mix(entry);
  Question question;
  question.name = mixed.letters(4);
  question.class_ = class_;
  question.entries = std::move(entries);
  question.about = std::move(about);
  return question;
}

void add_question(std::vector<Question>& questions, Question question) {
  const bool is_there = std::any_of(questions.begin(), questions.end(), [&](const auto& other) {
    return other.name == question.name && other.class_ == question.class_;
  });
  if (!is_there) questions.push_back(std::move(question));
}

}  // namespace reckon
