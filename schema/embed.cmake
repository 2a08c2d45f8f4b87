# Writes HEADER: for each of FILES, such as permanent.sql, a constant store::permanent_sql with its text.

set(text "// Made from schema/*.sql by schema/embed.cmake.\n\n#pragma once\n\n")
string(APPEND text "#include <string_view>\n\nnamespace store {\n\n")
foreach(file IN LISTS FILES)
  get_filename_component(name "${file}" NAME_WE)
  file(READ "${file}" sql)
  if(sql MATCHES "\\)sql\"")
    message(FATAL_ERROR "${file} holds the mark that ends its own literal")
  endif()
  string(APPEND text "inline constexpr std::string_view ${name}_sql = R\"sql(${sql})sql\";\n\n")
endforeach()
string(APPEND text "}  // namespace store\n")
file(WRITE "${HEADER}" "${text}")
