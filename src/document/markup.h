#pragma once
// Pieces of HTML and SVG: whatever people wrote becomes text there, never a tag or a command.

#include <string>
#include <string_view>
#include <vector>

namespace document {

// The words as text or as the value of an attribute: control characters shown visibly
// (text::visible_line), & < > " ' as references, and the noncharacters that XML 1.0 section 2.2
// forbids shown visibly too.
std::string escaped(std::string_view words);

// The same, with each word longer than `longest_whole_word` columns in a span of class long, so
// that a page may break inside of it and of no other.
std::string escaped_text(std::string_view words);
constexpr std::size_t longest_whole_word = 24;

struct Attribute {
  std::string_view name;  // our own, never of a user
  std::string value;      // not yet escaped
};
using Attributes = std::vector<Attribute>;

// <name a="b">inner</name>; `inner` is markup already.
std::string element(std::string_view name, const Attributes& attributes, std::string_view inner);

// <name a="b"/>, for SVG.
std::string element(std::string_view name, const Attributes& attributes);

}  // namespace document
