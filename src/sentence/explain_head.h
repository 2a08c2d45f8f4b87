// sentence/explain_head.h: which kind a faulty line was meant to be, and what is wrong with its
// head.
#pragma once

#include <vector>

#include "sentence/findings.h"
#include "sentence/reader.h"

namespace sentence {

// The kind, or null if nobody can tell; the cursor then stands where its clauses go on.
struct HeadFound {
  const Kind* kind = nullptr;
  bool is_whole = false;  // the head was read to its end
};
HeadFound explain_head(Cursor& cursor, std::vector<Misreading>& wrong);

}  // namespace sentence
