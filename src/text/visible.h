#pragma once
// Characters that act on a terminal, or reorder what is read, instead of being seen.
// What people wrote is never sent to a screen without being made visible here.

#include <string>
#include <string_view>

namespace text {

// C0, DEL and C1 controls (ECMA-48), Unicode's bidirectional controls (Annex 9: U+061C,
// U+200E-F, U+202A-E, U+2066-9) and its line and paragraph separators (U+2028-9).
// The list is fixed here, so that it never changes with a newer Unicode.
bool is_control(char32_t code);

// True if the words hold any control character, a line feed too, or bytes that are not UTF-8.
bool has_control(std::string_view words);

// Each control character but the line feed as <U+001B>, each byte that is not UTF-8 as <byte 9B>.
std::string visible(std::string_view words);

// The same with line feeds made visible as well: for whatever must stay on one line.
std::string visible_line(std::string_view words);

// Of a byte or character that is shown by its number to the base 16.
inline constexpr std::string_view hex_digits = "0123456789ABCDEF";

}  // namespace text
