// cases/figures.h: figures as case files write them, as whole numbers that compare exactly.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>

namespace cases {

// "41.0 h" is 147600 s on the clock "h"; "2.5 h engine-run" on "h engine-run"; "112 days"; "19
// landings" (a single one takes the plural's key). Counts are in thousandths.
struct Figure {
  std::int64_t amount = 0;
  std::string unit;
  bool operator==(const Figure&) const = default;
};

std::optional<Figure> read_figure(std::string_view text);
// The JSON's unit for a unit as people write it: "landing" is "landings".
std::string unit_key(std::string_view unit);
// "2.8" with so many units to the whole; none if it does not come out whole.
std::optional<std::int64_t> read_decimal(std::string_view text, std::int64_t units);

}  // namespace cases
