#include "document/chart/letters.h"

#include <algorithm>
#include <cmath>

#include "document/wrap.h"
#include "text/unicode.h"

namespace document {
namespace {

// Shares of the letter height.
double letter_share(std::string_view cluster) {
  constexpr std::string_view slim = "fijlrtI .,:;'|!()[]-";
  constexpr std::string_view broad = "mwMW@%OQ&";
  if (cluster.size() > 1) return text::columns(cluster) > 1 ? 1.05 : 0.8;
  if (slim.find(cluster) != slim.npos) return 0.41;
  if (broad.find(cluster) != broad.npos) return 0.99;
  const bool is_upper = cluster >= "A" && cluster <= "Z";
  return is_upper ? 0.77 : 0.64;
}

}  // namespace

std::size_t drawn_width(std::string_view words) {
  double width = 0;
  for (const std::string_view cluster : text::clusters(words)) width += letter_share(cluster);
  return static_cast<std::size_t>(std::ceil(width * letter_height));
}

std::vector<std::string> boxed(std::string_view words, double width) {
  const auto room = static_cast<std::size_t>(std::max(width, 1.0));
  std::vector<std::string> lines;
  for (const std::string& line : wrapped(words, room, drawn_width)) {
    lines.emplace_back();
    if (drawn_width(line) <= room) {
      lines.back() = line;
      continue;
    }
    for (const std::string_view cluster : text::clusters(line)) {
      const std::string longer = lines.back() + std::string(cluster);
      if (!lines.back().empty() && drawn_width(longer) > room) lines.emplace_back();
      lines.back() += cluster;
    }
  }
  return lines;
}

}  // namespace document
