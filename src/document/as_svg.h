#pragma once
// The charts of a document as one picture.

#include <optional>
#include <string>

#include "document/document.h"

namespace document {

// A self-contained SVG file (no script, no outside address, sizes by viewBox) of all charts of the
// document in their order, tiles beside each other. Nothing if the document has no chart. Its
// charts have no faults.
std::optional<std::string> as_svg(const Document& document);

}  // namespace document
