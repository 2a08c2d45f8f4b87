#pragma once
// Taking words apart and putting them together: by ASCII characters only, so UTF-8 stays whole.

#include <string>
#include <string_view>
#include <vector>

namespace text {

// The pieces between the separators: n separators give n + 1 pieces, of which any may be empty.
std::vector<std::string_view> split(std::string_view words, char separator);

// The pieces in order with `between` between each two.
std::string join(const std::vector<std::string>& pieces, std::string_view between);

// Without blanks, tabs, line feeds and carriage returns at both ends.
std::string_view trim(std::string_view words);

// With a-z as A-Z and everything else as it is, whatever the locale.
std::string upper(std::string_view words);

}  // namespace text
