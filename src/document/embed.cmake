# Writes HEADER: the constant document::page_css with the text of FILE.

file(READ "${FILE}" css)
if(css MATCHES "\\)css\"")
  message(FATAL_ERROR "${FILE} holds the mark that ends its own literal")
endif()
if(css MATCHES "</")
  message(FATAL_ERROR "${FILE} holds the mark that ends a style inside a page")
endif()
string(CONCAT text
  "// Made from reports/page.css by src/document/embed.cmake.\n\n#pragma once\n\n"
  "#include <string_view>\n\nnamespace document {\n\n"
  "inline constexpr std::string_view page_css = R\"css(${css})css\";\n\n"
  "}  // namespace document\n")
file(WRITE "${HEADER}" "${text}")
