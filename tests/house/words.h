// house/words.h: words we do not use, each with what to use instead.
#pragma once

#include "house/source.h"

namespace house {

// Marks of unfinished work and places of one machine, anywhere in the tree.
Findings check_leftovers(const Source& source);

// Words with another meaning or none for our readers: in string literals of src and in documents.
// What stands in double quotes is someone else's text and is left alone.
Findings check_words(const Source& source);

}  // namespace house
