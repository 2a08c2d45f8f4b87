#pragma once
// A document as one page for browsers and for paper.

#include <string>

#include "document/document.h"

namespace document {

// One file that needs no other: its style is inside (reports/page.css), charts are inline SVG, and
// its own policy allows no script and no address outside. Fits A4 and Letter in print. Each cell
// shows the same words as text (grid.h: text_of) and carries data-exact, data-unit and data-state
// where it has them, its row data-row, its table data-key; a chart says its sentence and its key
// in words, and has its points as a table to be opened on a screen. Its charts have no faults.
std::string as_html(const Document& document);

}  // namespace document
