// Any text given to the sentence reader either has faults or is read; what is read, said and read
// again is said the same, whatever the first writing was.

#include <cstddef>
#include <cstdint>
#include <string_view>

#include "quantity/expect.h"
#include "sentence/sentence.h"

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size);

extern "C" int LLVMFuzzerTestOneInput(const std::uint8_t* data, std::size_t size) {
  const std::string_view text(reinterpret_cast<const char*>(data), size);
  const sentence::Reading reading{quantity::Day::of(20'000), nullptr};
  const auto first = sentence::read(text, reading);
  EXPECT(first.said.has_value() == first.wrong.empty());
  if (!first.said) return 0;
  const auto canonical = sentence::say(*first.said);
  const auto again = sentence::read(canonical, sentence::Reading{});
  EXPECT(again.said.has_value());
  EXPECT(sentence::say(*again.said) == canonical);
  return 0;
}
