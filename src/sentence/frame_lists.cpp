#include "sentence/frame_lists.h"

#include <algorithm>
#include <array>
#include <functional>

#include "quantity/expect.h"
#include "quantity/figure.h"
#include "text/binary.h"
#include "text/percent.h"
#include "text/pieces.h"

namespace sentence {
namespace {

constexpr std::size_t most_digits = 18;

template <std::size_t size>
std::optional<std::array<std::uint8_t, size>> array_from(std::optional<text::Bytes> bytes) {
  if (!bytes || bytes->size() != size) return std::nullopt;
  std::array<std::uint8_t, size> result{};
  std::copy(bytes->begin(), bytes->end(), result.begin());
  return result;
}

// Each strictly behind the one before it, so that a list has one spelling only.
template <class Item>
bool is_in_order(const std::vector<Item>& items) {
  return std::adjacent_find(items.begin(), items.end(), std::greater_equal<>()) == items.end();
}

template <class Item, class SayItem>
std::string say_list(const std::vector<Item>& items, SayItem say_item) {
  EXPECT(is_in_order(items));
  if (items.empty()) return "-";
  std::vector<std::string> pieces;
  pieces.reserve(items.size());
  for (const Item& item : items) pieces.push_back(say_item(item));
  return text::join(pieces, ",");
}

template <class Item, class ReadItem>
std::optional<std::vector<Item>> read_list(std::string_view text, ReadItem read_item) {
  std::vector<Item> items;
  if (text == "-") return items;
  for (const std::string_view piece : text::split(text, ',')) {
    std::optional<Item> item = read_item(piece);
    if (!item) return std::nullopt;
    items.push_back(*std::move(item));
  }
  if (!is_in_order(items)) return std::nullopt;
  return items;
}

std::string say_numbered(const logbook::WriterId& writer, std::int64_t number) {
  return say_writer(writer) + '-' + std::to_string(number) + '-';
}

std::string say_one_about(const logbook::About& about) {
  EXPECT(!about.class_.empty() && !about.names.empty());
  std::string result = text::percent_encoded(about.class_);
  for (const std::string& name : about.names) {
    EXPECT(!name.empty());
    result.append(":").append(text::percent_encoded(name));
  }
  return result;
}

std::optional<logbook::About> read_one_about(std::string_view text) {
  std::vector<std::string> names;
  for (const std::string_view piece : text::split(text, ':')) {
    std::optional<std::string> name = text::percent_decoded(piece);
    if (!name || name->empty()) return std::nullopt;
    names.push_back(*std::move(name));
  }
  if (names.size() < 2) return std::nullopt;
  logbook::About about{std::move(names.front()), {}};
  about.names.assign(std::next(names.begin()), names.end());
  return about;
}

std::optional<logbook::Knows> read_one_known(std::string_view text) {
  const std::optional<Numbered> numbered = read_numbered(text);
  if (!numbered) return std::nullopt;
  const auto start = array_from<8>(text::from_hex(numbered->rest));
  if (!start) return std::nullopt;
  return logbook::Knows{numbered->writer, numbered->number, *start};
}

std::optional<logbook::EntryId> read_one_entry(std::string_view text) {
  const std::optional<Numbered> numbered = read_numbered(text);
  if (!numbered) return std::nullopt;
  const std::optional<logbook::Digest> digest = read_digest(numbered->rest);
  if (!digest) return std::nullopt;
  return logbook::EntryId{numbered->writer, numbered->number, *digest};
}

}  // namespace

std::optional<std::int64_t> read_number(std::string_view text) {
  if (text.size() > most_digits || !quantity::is_all_digits(text)) return std::nullopt;
  if (text.front() == '0') return std::nullopt;
  return quantity::value_of_digits(text);
}

std::optional<Numbered> read_numbered(std::string_view text) {
  const std::size_t first = text.find('-');
  if (first == text.npos) return std::nullopt;
  const std::size_t second = std::min(text.find('-', first + 1), text.size());
  const std::optional<logbook::WriterId> writer = read_writer(text.substr(0, first));
  const auto number = read_number(text.substr(first + 1, second - first - 1));
  if (!writer || !number || second + 1 == text.size()) return std::nullopt;
  return Numbered{*writer, *number, text.substr(std::min(second + 1, text.size()))};
}

std::string say_writer(const logbook::WriterId& writer) { return text::base32(writer.bytes); }

std::optional<logbook::WriterId> read_writer(std::string_view text) {
  const auto bytes = array_from<16>(text::from_base32(text));
  if (!bytes) return std::nullopt;
  return logbook::WriterId{*bytes};
}

std::string say_record_id(const logbook::RecordId& record) { return text::base32(record); }

std::optional<logbook::RecordId> read_record_id(std::string_view text) {
  return array_from<16>(text::from_base32(text));
}

std::string say_digest(const logbook::Digest& digest) { return text::hex(digest); }

std::optional<logbook::Digest> read_digest(std::string_view text) {
  return array_from<32>(text::from_hex(text));
}

std::string say_about(const std::vector<logbook::About>& about) {
  return say_list(about, say_one_about);
}

std::optional<std::vector<logbook::About>> read_about(std::string_view text) {
  return read_list<logbook::About>(text, read_one_about);
}

std::string say_signature(const SignatureBytes& signature) { return text::base64url(signature); }

std::optional<SignatureBytes> read_signature(std::string_view text) {
  return array_from<std::tuple_size_v<SignatureBytes>>(text::from_base64url(text));
}

std::string say_knows(const std::vector<logbook::Knows>& knows) {
  return say_list(knows, [](const logbook::Knows& known) {
    return say_numbered(known.writer, known.number) + text::hex(known.digest_start);
  });
}

std::optional<std::vector<logbook::Knows>> read_knows(std::string_view text) {
  return read_list<logbook::Knows>(text, read_one_known);
}

std::string say_refers(const std::vector<logbook::EntryId>& refers) {
  return say_list(refers, [](const logbook::EntryId& entry) {
    return say_numbered(entry.writer, entry.number) + say_digest(entry.digest);
  });
}

std::optional<std::vector<logbook::EntryId>> read_refers(std::string_view text) {
  return read_list<logbook::EntryId>(text, read_one_entry);
}

}  // namespace sentence
