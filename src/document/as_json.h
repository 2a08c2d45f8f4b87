#pragma once
// A whole document as JSON, for machines and for the program that draws it on paper.

#include "document/document.h"
#include "document/json.h"

namespace document {

// {"title","head":["…"],"blocks":[…]}, each block with its "kind":
// heading, paragraph and note have "text"; table has "key", "columns":[{"key","name","align"}],
// "rows":[{column key: {"shown","exact","unit","state"}, …}] and "if_empty"; chart is told at
// chart_json.h; signature has
// "statement" and "labels". Every member always stands there, an empty string for nothing.
// Additive for ever: members may be added, never changed or taken away.
Json as_json(const Document& document);

// The cell as {"shown","exact","unit","state"}.
Json as_json(const Cell& cell);

}  // namespace document
