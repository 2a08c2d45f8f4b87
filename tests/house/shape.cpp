#include "house/shape.h"

#include <algorithm>
#include <string>

#include "house/functions.h"

namespace house {

namespace {

// Columns as people count them: bytes that go on with a UTF-8 character are none of their own.
std::size_t columns(std::string_view line) {
  return static_cast<std::size_t>(std::count_if(line.begin(), line.end(), [](char c) {
    return (static_cast<unsigned char>(c) & 0xC0) != 0x80;
  }));
}

std::string over(const std::string& what, std::size_t count, std::size_t limit) {
  return what + " is " + std::to_string(count) + ", the limit is " + std::to_string(limit);
}

Findings check_lines(const Source& source) {
  Findings findings;
  const auto lines = lines_of(source.text);
  if (lines.size() > file_lines_limit) {
    findings.push_back(
        {source.path, 0, over("the file's length in lines", lines.size(), file_lines_limit)});
  }
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (columns(lines[i]) <= line_columns_limit) continue;
    findings.push_back(
        {source.path, i + 1,
         over("the line's width in columns", columns(lines[i]), line_columns_limit)});
  }
  return findings;
}

Findings check_function(const Source& source, const Function& function) {
  Findings findings;
  const auto demand = [&](const std::string& what, std::size_t count, std::size_t limit) {
    if (count > limit)
      findings.push_back({source.path, function.first_line, over(what, count, limit)});
  };
  demand("the function's length in lines", function.lines(), function_lines_limit);
  demand("the function's number of parameters", function.parameters, parameters_limit);
  demand("the function's nesting", function.nesting, nesting_limit);
  return findings;
}

// The comment stands first, or right below the line that says the header is read once.
bool opens_with_comment(std::string_view text) {
  constexpr std::string_view once = "#pragma once";
  if (text.starts_with(once)) text = trimmed(text.substr(once.size()));
  return text.starts_with("//");
}

}  // namespace

Findings check_shape(const Source& source) {
  auto findings = check_lines(source);
  for (const auto& function : functions_of(source.text)) {
    append(findings, check_function(source, function));
  }
  return findings;
}

Findings check_header(const Source& source) {
  Findings findings;
  if (!source.path.ends_with(".h")) return findings;
  if (source.text.find("#pragma once\n") == std::string::npos) {
    findings.push_back({source.path, 0, "the header lacks #pragma once"});
  }
  if (!opens_with_comment(source.text)) {
    findings.push_back({source.path, 1, "the header opens without a comment on what lives there"});
  }
  return findings;
}

}  // namespace house
