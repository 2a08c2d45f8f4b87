#include "document/render.h"

#include <stdexcept>
#include <vector>

#include "document/as_csv.h"
#include "document/as_html.h"
#include "document/as_json.h"
#include "document/as_svg.h"
#include "document/as_text.h"
#include "text/pieces.h"

namespace document {

std::optional<Format> format_named(std::string_view name) {
  if (name == "text") return Format::text;
  if (name == "json") return Format::json;
  if (name == "csv") return Format::csv;
  if (name == "html") return Format::html;
  if (name == "svg") return Format::svg;
  return std::nullopt;
}

std::optional<Unrenderable> unrenderable(const Document& document, Format format) {
  if (format == Format::svg && charts_of(document).empty()) return Unrenderable::no_chart;
  return std::nullopt;
}

std::string render(const Document& document, Format format, std::size_t columns) {
  const std::vector<std::string> found = faults(document);
  if (!found.empty()) throw std::logic_error("document: " + text::join(found, "; "));
  if (unrenderable(document, format)) throw std::logic_error("document: no chart to be drawn");
  switch (format) {
    case Format::text:
      return as_text(document, columns);
    case Format::json:
      return as_json(document).in_lines() + "\n";
    case Format::csv:
      return as_csv(document);
    case Format::html:
      return as_html(document);
    case Format::svg:
      return as_svg(document).value();
  }
  return {};
}

}  // namespace document
