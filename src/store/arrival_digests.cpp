#include "store/arrival_digests.h"

#include <algorithm>
#include <array>
#include <string>

#include "seal/digest.h"
#include "store/schema_proof.h"
#include "store/sql.h"

namespace store {
namespace {

constexpr std::string_view arrivals =
    "SELECT a.writer, a.number, a.digest, a.place, a.command, a.at, a.day, d.digest "
    "FROM arrived AS a LEFT JOIN arrival_digest AS d ON d.entry = a.place";

using ShortDigest = std::array<std::uint8_t, 8>;

ShortDigest digest_of(const Statement& arrival) {
  std::string text;
  for (const int column : {3, 4, 5, 6, 1}) text += std::to_string(arrival.number(column)) + ' ';
  text += arrival.text(0);
  const Blob entry = arrival.blob(2);
  text.append(entry.begin(), entry.end());
  const seal::Digest digest = seal::digest(text);
  ShortDigest kept{};
  std::copy_n(digest.begin(), kept.size(), kept.begin());
  return kept;
}

}  // namespace

void put_arrival_digest(Database& database, std::int64_t place) {
  Statement arrival = database.statement(std::string(arrivals).append(" WHERE a.place = ?"), place);
  if (!arrival.next()) return;
  database.execute("INSERT INTO arrival_digest VALUES (?, ?)", place, Blob(digest_of(arrival)));
}

std::vector<logbook::EntryId> changed_arrivals(Database& database) {
  std::vector<logbook::EntryId> changed;
  if (!has_our_table(database, "arrival_digest")) return changed;
  Statement arrival = database.statement(std::string(arrivals));
  while (arrival.next()) {
    const Blob kept = arrival.blob(7);
    const ShortDigest digest = digest_of(arrival);
    if (std::equal(kept.begin(), kept.end(), digest.begin(), digest.end())) continue;
    changed.push_back(entry_in(database, arrival, 0));
  }
  return changed;
}

}  // namespace store
