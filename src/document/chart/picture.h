#pragma once
// A chart drawn as SVG: shapes and dashes tell things apart, so grey paper loses nothing.

#include <string>

#include "document/chart/chart.h"
#include "document/chart/layout.h"
#include "document/chart/legend.h"
#include "document/chart/letters.h"
#include "document/markup.h"

namespace document {

// The drawing without any words around it, as elements for an <svg> of that layout. Points carry
// data-x, data-y and data-state with their exact text, and a description.
std::string drawing(const Chart& chart, const Layout& layout);

// A whole <svg> element for a page that says title and key beside it. Its title and description
// have ids that begin with chart-KEY, so one page may hold many.
std::string picture(const Chart& chart);

// <title> and <desc> with these ids, for readers who do not see.
std::string described(const Chart& chart);

// The mark that stands before an entry of the key, around the spot, 24 wide; for an event the
// number that stands at its line; for one that is not drawn nothing.
std::string key_mark(const LegendEntry& entry, Spot middle);

// The same as an <svg> element of 28 by 16.
std::string key_picture(const LegendEntry& entry);

// Attributes that every <svg> of ours carries.
Attributes svg_attributes(double width, double height);

}  // namespace document
