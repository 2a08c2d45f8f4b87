#include "store/known.h"

#include "store/arrivals.h"
#include "store/rows.h"

namespace store {

bool fits(Database& database, const Mark& mark) {
  const bool is_marked =
      mark.number == 0 || is_there(database, {mark.writer, mark.number, mark.digest});
  return is_marked && is_one_command_after(database, mark.writer, mark.number);
}

bool is_known_here(Database& database, const logbook::RecordId& record,
                   const std::string& state_folder) {
  const auto own = own_writer(database);
  const auto mark = own ? glance_at_mark(state_folder, record, *own) : std::nullopt;
  return mark && fits(database, *mark);
}

}  // namespace store
