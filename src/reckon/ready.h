// reckon/ready.h: "can I fly this?": yes only when all nine conditions are on record (design 7).
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "reckon/due.h"
#include "reckon/readiness.h"

namespace reckon {

Ready ready(const Histories& histories, const Standing& standing, const Asking& asking);

}  // namespace reckon
