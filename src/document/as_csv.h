#pragma once
// A document as one long table for spreadsheets and scripts: comma-separated lines by RFC 4180.

#include <string>
#include <string_view>

#include "document/document.h"

namespace document {

// The head line section,row,column,shown,exact,unit,state and one line a cell, each ending in CR
// LF. A cell of a table has the key of the table as section, its row from 1, and the key of its
// column. Sentences are listed too: section title, head, heading, paragraph, note or signature (or
// a table's own key where its if_empty stands for rows), the row counted within its section, and
// column text (statement and label in a signature). A chart has its title and its sentence in
// section chart, columns title and text; each point is a row of the section named by its key, with
// columns x, y and state; its other parts follow in sections KEY_line (x, y, x_to, y_to, reach),
// KEY_band (label, x, lower, upper), KEY_level and KEY_event (label and y or x). Control characters
// are shown visibly.
std::string as_csv(const Document& document);

// One field: quoted where RFC 4180 wants it (also around semicolons and tabs, at which some
// spreadsheets divide) after being guarded.
std::string csv_field(std::string_view words);

// With an apostrophe in front of words that a spreadsheet might take for a formula (they begin with
// = + - @, a tab, a carriage return or NUL, after any apostrophes); plain numbers are left alone.
std::string guarded(std::string_view words);

// What was guarded: unguarded(guarded(words)) == words for all words.
std::string_view unguarded(std::string_view words);

}  // namespace document
