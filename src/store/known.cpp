#include "store/known.h"

#include "store/arrivals.h"
#include "store/rows.h"

namespace store {
namespace {

bool is_marked_there(Database& database, const Mark& mark) {
  return mark.number == 0 || is_there(database, {mark.writer, mark.number, mark.digest});
}

}  // namespace

bool fits(Database& database, const Mark& mark) {
  return is_marked_there(database, mark) &&
         is_one_command_after(database, mark.writer, mark.number);
}

Known known_here(Database& database, const logbook::RecordId& record,
                 const std::string& state_folder) {
  const auto own = own_writer(database);
  const auto mark = own ? glance_at_mark(state_folder, record, *own) : std::nullopt;
  if (!mark) return {};
  if (fits(database, *mark)) return {true, {}};
  if (is_marked_there(database, *mark)) return {};
  return {false, logbook::EntryId{mark->writer, mark->number, mark->digest}};
}

}  // namespace store
