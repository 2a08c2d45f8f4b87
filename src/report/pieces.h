// report/pieces.h: what the reports share: the head of a sheet, the cells of one side of an item,
// the same side as minimal JSON, states as words.
#pragma once

#include <string>
#include <vector>

#include "reckon/lives.h"
#include "report/sheet.h"

namespace report {

// "As of 4 March 2026, counting news up to K7QXM-130 M2ABC-88."
std::string as_of_line(const Sheet& sheet);
// Adds the sentence as a paragraph; nothing where there is none to say.
void say(std::string sentence, document::Document& page);
// What was left out and the notices, as notes; then the caution.
void add_foot(document::Document& page, const Sheet& sheet);
// {"as_of","horizon"}, and where there are some "left_out" and "notices", to which the answer is
// added.
document::Json json_head(const Sheet& sheet);

document::State state_of(reckon::State state);
// ok, soon, due, over, not known.
std::string state_word(reckon::State state);
// Over, due or not known.
bool wants_attention(reckon::State state);
bool wants_attention(const std::vector<reckon::Item>& items);
// A sentence for each that does, and none twice: two limits may lack the same.
void add_attention(const std::vector<reckon::Item>& items, document::Document& page);

document::Cell words_cell(std::string shown);
document::Cell state_cell(reckon::State state);
document::Cell day_cell(std::optional<quantity::Day> day);
document::Cell used_cell(const reckon::Side& side);
document::Cell limit_cell(const reckon::Side& side);
document::Cell left_cell(const reckon::Side& side);
document::Cell due_cell(const reckon::Side& side);
// The names of the entries, "K7QXM-31, K7QXM-88".
document::Cell entries_cell(const std::vector<logbook::EntryId>& entries);

// Hours in whole seconds (used up, left down), counts and days as numbers; null: not known.
enum class Toward { up, down };
document::Json figure_json(const std::optional<reckon::Figure>& figure, Toward toward);
document::Json day_json(std::optional<quantity::Day> day);
document::Json names_json(const std::vector<logbook::EntryId>& entries);

// One object a side, all sides of an item with its id:
// {"id","about","item","unit","used","limit","left","due_at","due_day","governs","state","source",
// "because":[…],"shown":{"used","limit","left","due_at"},"left_is_at_most","due_at_airframe",
// "expected_day","last_done","last_done_day","last_done_signed","not_counted",
// "why_not_known"}; of shared lives also "shares_lives" (by fractions, shorter limit stays) and
// "life_used", a part of 1 rounded up. unit is h, "h METER", days or a
// counter's plural; hours are whole seconds; an item without sides is one object without figures.
// Members may be added, never changed or taken away.
document::Json items_json(const std::vector<reckon::Item>& items);

}  // namespace report
