// sentence/frame_lists.h: the fields of a record line one by one: names and lists.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "logbook/entry.h"

namespace sentence {

// A whole number from 1 on, of at most 18 digits, without zeros in front.
std::optional<std::int64_t> read_number(std::string_view text);

// The beginning "writer-number"; rest is what follows the next hyphen, empty if none does.
struct Numbered {
  logbook::WriterId writer;
  std::int64_t number = 0;
  std::string_view rest;
};
std::optional<Numbered> read_numbered(std::string_view text);

std::string say_writer(const logbook::WriterId& writer);  // 26 characters
std::optional<logbook::WriterId> read_writer(std::string_view text);
std::string say_record_id(const logbook::RecordId& record);  // 26 characters, likewise
std::optional<logbook::RecordId> read_record_id(std::string_view text);
// 64 lower-case hexadecimal digits.
std::string say_digest(const logbook::Digest& digest);
std::optional<logbook::Digest> read_digest(std::string_view text);
// An Ed25519 signature (RFC 8032) in base64url.
using SignatureBytes = std::array<std::uint8_t, 64>;
std::string say_signature(const SignatureBytes& signature);
std::optional<SignatureBytes> read_signature(std::string_view text);
// Lists of the frame: joined by commas, "-" when empty. They are in the order of the types' own
// comparison without a double; the readers refuse every other spelling.
std::string say_knows(const std::vector<logbook::Knows>& knows);
std::optional<std::vector<logbook::Knows>> read_knows(std::string_view text);
std::string say_refers(const std::vector<logbook::EntryId>& refers);
std::optional<std::vector<logbook::EntryId>> read_refers(std::string_view text);
std::string say_about(const std::vector<logbook::About>& about);
std::optional<std::vector<logbook::About>> read_about(std::string_view text);

}  // namespace sentence
