#pragma once
// A document for the terminal, and for whatever reads plain lines.

#include <cstddef>
#include <string>

#include "document/document.h"

namespace document {

// The whole document, wrapped to `columns`, each line ending in a line feed and in no blank. Its
// charts have no faults. What is said does not depend on the width, only where lines break; the
// drawing of a chart wants 40 columns. Control characters in any of its words are shown visibly.
std::string as_text(const Document& document, std::size_t columns);

}  // namespace document
