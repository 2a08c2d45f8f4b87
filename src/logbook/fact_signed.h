// logbook/fact_signed.h: that a person signed entries, with a key in this record or on paper.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "logbook/names.h"

namespace logbook {

enum class SignedHow { with_key, on_paper };

// entry K7QXM-131 signed, through K7QXM-134, also entry K7QXM-140, by "B. Quill", certificate
// "A-1234", kind "mechanic", statement "…". / … signed on paper, page "12", by "B. Quill". The
// frame's refers holds the digest of every entry meant, and its signature is over that.
struct Signed {
  EntryName entry;
  SignedHow how = SignedHow::with_key;
  std::optional<EntryName> through;  // every entry of that writer up to this one
  std::vector<EntryName> also;
  std::optional<std::string> page;
  PersonName by;
  std::optional<std::string> certificate;
  std::optional<std::string> kind;
  std::optional<std::string> statement;
  bool operator==(const Signed&) const = default;
};

// A range holds at most this many entries.
inline constexpr std::int64_t most_in_a_range = 1000;
// True if the range ends at a later entry of the same writer and is not too long.
bool is_range(const EntryName& first, const EntryName& last);
// The entries between both ends of its range; none if that is no range.
std::vector<EntryName> between(const Signed& fact);

}  // namespace logbook
