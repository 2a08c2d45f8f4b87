// sentence/sorts/entry_shape.h: what looks like the name of an entry.
#pragma once

#include <string_view>

namespace sentence {

// K7QXM-123: as another name it is written in quotes.
bool has_entry_shape(std::string_view name);

}  // namespace sentence
