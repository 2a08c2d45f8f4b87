// reckon/source_factor.h: the factor from hours as they are flown and logged to hours in service.
#pragma once

#include "reckon/standing.h"

namespace reckon {

// Of the newest statement of the aircraft's source clock; one where none is stated.
quantity::Factor source_factor(const Standing& standing, const logbook::Aircraft& aircraft);

}  // namespace reckon
