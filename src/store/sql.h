// store/sql.h: names and digests as columns hold them. Whatever is none is damage to the file.
#pragma once

#include "logbook/entry.h"
#include "store/sqlite.h"

namespace store {

logbook::WriterId writer_in(const Database& database, std::string_view text);
logbook::Digest digest_in(const Database& database, Blob bytes);
// Columns writer, number, digest from this one on.
logbook::EntryId entry_in(const Database& database, const Statement& statement, int column);

}  // namespace store
