#include "document/markup.h"

#include "text/pieces.h"
#include "text/unicode.h"
#include "text/visible.h"

namespace document {
namespace {

std::string reference(const text::Character& character) {
  switch (character.code.value_or(0)) {
    case U'&':
      return "&amp;";
    case U'<':
      return "&lt;";
    case U'>':
      return "&gt;";
    case U'"':
      return "&quot;";
    case U'\'':
      return "&#39;";
    case U'\uFFFE':
      return "&lt;U+FFFE&gt;";
    case U'\uFFFF':
      return "&lt;U+FFFF&gt;";
    default:
      return std::string(character.bytes);
  }
}

std::string opened(std::string_view name, const Attributes& attributes) {
  std::string result = "<" + std::string(name);
  for (const Attribute& attribute : attributes) {
    result += ' ';
    result += attribute.name;
    result += "=\"" + escaped(attribute.value) + '"';
  }
  return result;
}

}  // namespace

std::string escaped(std::string_view words) {
  const std::string shown = text::visible_line(words);
  std::string result;
  for (const text::Character& character : text::characters(shown)) result += reference(character);
  return result;
}

std::string escaped_text(std::string_view words) {
  const std::string shown = text::visible_line(words);
  std::vector<std::string> pieces;
  for (const std::string_view word : text::split(shown, ' ')) {
    const bool is_long = text::columns(word) > longest_whole_word;
    pieces.push_back(is_long ? element("span", {{"class", "long"}}, escaped(word)) : escaped(word));
  }
  return text::join(pieces, " ");
}

std::string element(std::string_view name, const Attributes& attributes, std::string_view inner) {
  return opened(name, attributes) + '>' + std::string(inner) + "</" + std::string(name) + '>';
}

std::string element(std::string_view name, const Attributes& attributes) {
  return opened(name, attributes) + "/>";
}

}  // namespace document
