// Any text given to the reader of record lines either has a bad field or is read; and what is read
// is written out again as the very same bytes, since the frame knows one spelling only.

#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <variant>

#include "quantity/expect.h"
#include "sentence/frame.h"

namespace {

void try_line(std::string_view text) {
  const auto read = sentence::read_line(text);
  if (const auto* const bad = std::get_if<sentence::BadLine>(&read)) {
    EXPECT(!bad->field.empty());
    return;
  }
  const auto& line = std::get<sentence::ReadLine>(read);
  EXPECT(line.sentence.empty() == line.withheld.has_value());
  const std::string body = line.withheld ? sentence::say_withheld(*line.withheld) : line.sentence;
  EXPECT(sentence::say_line(line.frame, body) == text);
}

template <class List>
void try_list(std::optional<List> (*read)(std::string_view), std::string (*say)(const List&),
              std::string_view text) {
  const auto list = read(text);
  if (list) EXPECT(say(*list) == text);
}

}  // namespace

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  try_line(text);
  try_list(&sentence::read_knows, &sentence::say_knows, text);
  try_list(&sentence::read_refers, &sentence::say_refers, text);
  try_list(&sentence::read_about, &sentence::say_about, text);
  if (const auto writer = sentence::read_writer(text))
    EXPECT(sentence::say_writer(*writer) == text);
  if (const auto digest = sentence::read_digest(text))
    EXPECT(sentence::say_digest(*digest) == text);
  if (const auto body = sentence::read_withheld(text)) {
    EXPECT(sentence::say_withheld(*body) == text);
  }
  return 0;
}
