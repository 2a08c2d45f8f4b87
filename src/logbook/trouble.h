// logbook/trouble.h: what can be wrong with a book on disk, as plain data, so that words can say
// it.
#pragma once

#include <string>

namespace logbook {

enum class TroubleKind {
  no_such_book,       // 66
  not_a_book,         // 66: another kind of file
  newer_book,         // 77: written by a newer version; only readable
  already_there,      // 73: new would overwrite
  cannot_create,      // 73
  cannot_read,        // 74
  cannot_write,       // 74: disk full, read-only, I/O error
  in_use,             // 75
  not_allowed,        // 77
  damaged,            // 74: a digest, a page or a table does not hold
  not_proved,         // 74: a book from elsewhere that is not whole, or not made as ours are
  no_place_for_mark,  // 78: the state folder cannot be used
  not_confirmed,      // 74: written, but the disk failed before it said that it is there to stay
};

struct Trouble {
  TroubleKind kind = TroubleKind::cannot_read;
  std::string path;
  std::string detail;  // the system's own words, shown last
};

}  // namespace logbook
