// reckon/question.h: names for questions, which stay the same in every book that holds the same
// entries.
#pragma once

#include <string>
#include <vector>

#include "reckon/standing_fact.h"

namespace reckon {

// The name comes from the class and the entries, in whatever order they are given.
Question make_question(const std::string& class_, std::vector<logbook::EntryId> entries,
                       std::vector<logbook::Thing> about);

// Adds it unless a question of that name is there already.
void add_question(std::vector<Question>& questions, Question question);

}  // namespace reckon
