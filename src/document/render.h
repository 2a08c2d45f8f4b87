#pragma once
// From a document to the bytes of a chosen form: the one way by which answers leave the program.

#include <cstddef>
#include <optional>
#include <string>
#include <string_view>

#include "document/document.h"

namespace document {

enum class Format { text, json, csv };

// The form that goes by this name (text, json, csv), if there is one.
std::optional<Format> format_named(std::string_view name);

// The finished bytes; only text asks for the columns. A document with faults is our own bug:
// std::logic_error with all of them, before anything is written.
std::string render(const Document& document, Format format, std::size_t columns);

}  // namespace document
