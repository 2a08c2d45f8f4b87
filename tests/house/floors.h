// house/floors.h: who may include whom. Folders of src are floors, and each sees only lower ones.
#pragma once

#include <vector>

#include "house/source.h"

namespace house {

// Our own includes point to the file's own floor or to a floor below that it may see.
Findings check_floors(const Source& source);

// Each foreign library is included by the one file or folder that is its door.
Findings check_doors(const Source& source);

// The pure floors neither read files nor print nor look at a clock.
Findings check_purity(const Source& source);

// A unit is a header with its source file. No unit reaches itself through includes.
Findings check_circles(const std::vector<Source>& sources);

// A source includes its own header before all else, so that every build proves that the header
// stands alone.
Findings check_own_headers(const std::vector<Source>& sources);

}  // namespace house
