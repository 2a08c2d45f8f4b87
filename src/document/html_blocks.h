#pragma once
// Tables and charts as pieces of a page.

#include <string>

#include "document/document.h"

namespace document {

std::string html_table(const Table& table);

// A figure with caption, picture, key and the table of its points.
std::string html_chart(const Chart& chart);

}  // namespace document
