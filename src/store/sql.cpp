#include "store/sql.h"

#include <algorithm>
#include <optional>

#include "sentence/frame.h"
#include "store/trouble.h"

namespace store {
namespace {

[[noreturn]] void damaged(const Database& database, const std::string& detail) {
  throw Trouble({logbook::TroubleKind::damaged, database.path(), detail});
}

}  // namespace

logbook::WriterId writer_in(const Database& database, std::string_view text) {
  const std::optional<logbook::WriterId> writer = sentence::read_writer(text);
  if (!writer) damaged(database, "no writer: " + std::string(text));
  return *writer;
}

logbook::Digest digest_in(const Database& database, Blob bytes) {
  logbook::Digest digest{};
  if (bytes.size() != digest.size()) damaged(database, "no digest");
  std::copy(bytes.begin(), bytes.end(), digest.begin());
  return digest;
}

logbook::EntryId entry_in(const Database& database, const Statement& statement, int column) {
  return {writer_in(database, statement.text(column)), statement.number(column + 1),
          digest_in(database, statement.blob(column + 2))};
}

}  // namespace store
