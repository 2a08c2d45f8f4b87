// store/origin.h: where a command's time and a book's identities come from. For records begun for
// tests they come from the first entry, so that a test gives the same book every time.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "logbook/entry.h"
#include "seal/signing.h"
#include "store/surroundings.h"

namespace store {

struct Origin {
  quantity::Instant now;
  quantity::Day today;
  std::string seed;  // empty: identities are random
};
// first: what the record's first entry says; absent if it cannot be read.
Origin origin_of(const std::optional<logbook::Said>& first, const Surroundings& surroundings);

// A secret for the key of that name: random, but for tests always the same.
seal::SecretKey new_key(const Origin& origin, const std::string& name);
logbook::RecordId new_record(const Origin& origin);
// ordinal: how many writers this book then had, this one counted.
logbook::WriterId new_writer(const Origin& origin, std::int64_t ordinal);

}  // namespace store
