// logbook/entry.h: one entry of the record: its frame and what was said. The frame can never change
// once a book exists (docs/record.md).
#pragma once

#include <array>
#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "logbook/fact.h"
#include "quantity/calendar.h"

namespace logbook {

using Digest = std::array<std::uint8_t, 32>;
using RecordId = std::array<std::uint8_t, 16>;

// 16 random bytes; in the frame 26 characters of base 32, in sentences its first five characters.
struct WriterId {
  std::array<std::uint8_t, 16> bytes{};
  auto operator<=>(const WriterId&) const = default;
  bool operator==(const WriterId&) const = default;
};

// The key of an entry. Two entries of one writer and number (a fork) differ in the digest.
struct EntryId {
  WriterId writer;
  std::int64_t number = 0;
  Digest digest{};
  auto operator<=>(const EntryId&) const = default;
  bool operator==(const EntryId&) const = default;
};

// What the writer learned of another writer since its own previous entry.
struct Knows {
  WriterId writer;
  std::int64_t number = 0;
  std::array<std::uint8_t, 8> digest_start{};
  auto operator<=>(const Knows&) const = default;
  bool operator==(const Knows&) const = default;
};

// All fields of a record line before the bar; the digests are worked out by store.
struct Frame {
  WriterId writer;
  std::int64_t number = 0;
  quantity::Instant written;
  std::int64_t language = 1;
  std::vector<About> about;     // sorted
  std::vector<Knows> knows;     // sorted
  std::vector<EntryId> refers;  // sorted
  std::string signature;        // base64url; empty but for signed entries
  bool operator==(const Frame&) const = default;
};

// An entry as it is read from the book. An entry that this version cannot read, or whose body is
// withheld, has no said; its bytes are kept.
struct Entry {
  EntryId id;
  Frame frame;
  std::string sentence;
  std::optional<Said> said;
  // The key with which its signature was proved; absent: unsigned, or not proved.
  std::optional<PublicKey> proved_with;
};

// The newest number per writer inside which something was answered, as printed at the head of every
// sheet: K7QXM-130 M2ABC-88.
struct Head {
  WriterId writer;
  std::int64_t number = 0;
  auto operator<=>(const Head&) const = default;
  bool operator==(const Head&) const = default;
};
using Horizon = std::vector<Head>;

}  // namespace logbook
