// words/words.h: the sentences that every command needs: names, figures, misreadings, objections
// and troubles as people say them. Each sentence stands whole in the source, with gaps.
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "logbook/entry.h"
#include "logbook/misreading.h"
#include "logbook/trouble.h"
#include "reckon/check.h"
#include "reckon/lives.h"

namespace words {

// K7QXM-123: five characters of the writer.
std::string entry_name(const logbook::EntryId& entry);
std::string head_name(const logbook::Head& head);
// "aircraft ZZ-KIT", "engine TS-40 E-1001", "part PN-4411 B-88".
std::string thing_name(const logbook::Thing& thing);
// "K7QXM-130 M2ABC-88".
std::string horizon_text(const logbook::Horizon& horizon);

// Used is rounded up, left is rounded down, both to hundredths of an hour at the finest shown.
std::string hours_used(quantity::ServiceHours hours);  // "4323.3 h"
std::string hours_left(quantity::ServiceHours hours);  // "2.8 h"
std::string figure_used(const reckon::Figure& figure, const reckon::Clock& clock);
std::string figure_left(const reckon::Figure& figure, const reckon::Clock& clock);
std::string counter_name(const logbook::Counter& counter, bool one);  // "start", "starts"

// The doubt's stable text that "although" carries to accept it: it holds its figure, so that the
// doubt is raised again only if the figure changes: "2.3 h are missing before this flight".
std::string doubt_text(const reckon::Objection& objection);
// Whether an accepted doubt says that hours are missing: they count nowhere, so every answer about
// the aircraft must say so.
bool tells_of_missing_hours(std::string_view doubt);
// "0.5 h are missing before this flight": accepted in K7QXM-9, and counted nowhere.
std::string missing_hours_text(std::string_view doubt, const logbook::EntryId& entry);
// The whole objection: what was read, what is wrong, what to do. Two sentences at most.
std::string objection_text(const reckon::Objection& objection);
std::string question_text(const reckon::Question& question);

// All misreadings of one line, each pointing at its words: the line again, marks below it, what was
// read, what was wanted, the nearest known word. Ends with what to write instead. After twenty only
// their number.
std::string misreadings_text(std::string_view line,
                             const std::vector<logbook::Misreading>& misreadings);

// What is wrong with the book and that nothing was lost; and its exit code (design 14). undone:
// what the command did not do.
std::string trouble_text(const logbook::Trouble& trouble,
                         std::string_view undone = "nothing was saved");
int trouble_exit_code(const logbook::Trouble& trouble);
// When a command has done what it was asked for and its answer could not be written.
std::string_view unheard_text();
// When something failed that nobody foresaw; what: the system's own words.
// Before that: what was asked for stands all the same.
std::string_view unfinished_text();
std::string unknown_trouble_text(std::string_view what);
// When the machine has no memory left, whatever the command had done by then.
std::string_view no_memory_text();

// The caution that every answer and sheet carries.
std::string_view caution();

}  // namespace words
