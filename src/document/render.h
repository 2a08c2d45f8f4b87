#pragma once
// From a document to the bytes of a chosen form: the one way by which answers leave the program.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "document/document.h"

namespace document {

enum class Format { text, json, csv, html, svg };

// The form that goes by this name (text, json, csv, html, svg), if there is one.
std::optional<Format> format_named(std::string_view name);

// Why a sound document cannot be had in a form. The words for the user are said above.
enum class Unrenderable { no_chart };  // a picture was asked of a document without a chart
std::optional<Unrenderable> unrenderable(const Document& document, Format format);

// The finished bytes; only text asks for the columns. A document with faults, or one that is
// unrenderable and was not asked about, is our own bug: std::logic_error with all that is wrong,
// before anything is written.
std::string render(const Document& document, Format format, std::size_t columns);

}  // namespace document
