// One side of an item as cells for people, each with its exact value.
#include "report/pieces.h"
#include "words/figures.h"
#include "words/words.h"

namespace report {

namespace {

using document::Cell;
using reckon::Figure;
using reckon::Side;

// Hours in seconds; the exact value rounds the way the shown one does.
std::string exact_text(const Figure& figure, Toward toward) {
  if (figure.unit() == reckon::Unit::count) return quantity::say(figure.count());
  if (figure.unit() == reckon::Unit::days) return std::to_string(figure.days().count());
  const auto seconds = toward == Toward::up ? quantity::ceiling_to_seconds(figure.hours())
                                            : quantity::floor_to_seconds(figure.hours());
  return std::to_string(seconds.count());
}

std::string exact_unit(const Figure& figure, const Side& side) {
  return figure.unit() == reckon::Unit::hours ? std::string("s") : words::unit_key(side);
}

Cell figure_cell(std::string shown, const std::optional<Figure>& figure, const Side& side,
                 Toward toward) {
  if (!figure || figure->is_unknown()) return words_cell(std::move(shown));
  return {std::move(shown), exact_text(*figure, toward), exact_unit(*figure, side),
          document::State::none};
}

}  // namespace

Cell used_cell(const Side& side) {
  const std::string shown = words::used_text(side);
  if (!side.is_calendar) return figure_cell(shown, side.used.figure, side, Toward::up);
  Cell cell = day_cell(side.basis_day);
  cell.shown = shown;
  return cell;
}

Cell limit_cell(const Side& side) {
  return figure_cell(words::limit_text(side), side.limit, side, Toward::down);
}

Cell left_cell(const Side& side) {
  return figure_cell(words::left_text(side), side.left, side, Toward::down);
}

Cell due_cell(const Side& side) {
  const std::string shown = words::due_text(side);
  if (!side.is_calendar) return figure_cell(shown, side.due_at, side, Toward::down);
  Cell cell = day_cell(side.last_legal);
  cell.shown = shown;
  return cell;
}

Cell entries_cell(const std::vector<logbook::EntryId>& entries) {
  std::string names;
  for (const auto& entry : entries) {
    if (!names.empty()) names += ", ";
    names += words::entry_name(entry);
  }
  return words_cell(std::move(names));
}

}  // namespace report
