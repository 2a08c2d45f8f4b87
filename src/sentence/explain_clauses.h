// sentence/explain_clauses.h: what is wrong with the clauses of a line whose kind is known.
#pragma once

#include <vector>

#include "sentence/explain_head.h"

namespace sentence {

// The cursor stands after the head, or where its clauses seem to go on.
void explain_clauses(Cursor& cursor, const HeadFound& found, std::vector<Misreading>& wrong);

// The same for clauses that stand alone; none is needed but one.
std::vector<Misreading> explain_given_clauses(Cursor& cursor, const Kind& kind);

}  // namespace sentence
