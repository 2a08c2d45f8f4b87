// store/inside.h: what an open book holds; shared by the files of this folder.
#pragma once

#include <optional>
#include <string>

#include "store/known.h"
#include "store/proofs.h"
#include "store/sqlite.h"
#include "store/surroundings.h"

namespace store {

// The file tells what it is by these two (file(1) and SQLite's own tools show them).
inline constexpr std::int64_t application = 0x5457524E;
inline constexpr std::int64_t schema_version = 1;

struct BookInside {
  Database database;
  Access access = Access::read;
  Surroundings surroundings{};
  logbook::RecordId record{};
  bool is_newer = false;
  bool began_a_new_writer = false;
  std::optional<logbook::Said> begins{};  // the first entry of a book that is just being made
  bool must_derive_anew = false;          // the derived tables are of another form, or not believed
  Known known{};                          // when it was opened, or after its last commit
  std::optional<Proofs> proved{};         // worked out by this opening, and so believed
  int looks = 0;                          // that live; the outermost holds the transaction
};

// What the record's first entry says; absent if this version cannot read it.
std::optional<logbook::Said> first_said(Database& database);

}  // namespace store
