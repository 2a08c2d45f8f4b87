// command/version.h: the program's version, in this one place.
#pragma once

#include <string_view>

namespace command {

inline constexpr std::string_view version = "0.1.0";

}  // namespace command
