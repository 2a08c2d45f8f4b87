#include "document/as_svg.h"

#include <vector>

#include "document/chart/picture_file.h"

namespace document {

std::optional<std::string> as_svg(const Document& document) {
  const std::vector<const Chart*> charts = charts_of(document);
  if (charts.empty()) return std::nullopt;
  return picture_file(charts);
}

}  // namespace document
