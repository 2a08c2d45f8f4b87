#include "store/journal.h"

#include <sys/stat.h>

#include <algorithm>
#include <fstream>
#include <iterator>
#include <optional>
#include <span>
#include <vector>

#include "store/trouble.h"

namespace store {
namespace {

// sqlite.org/fileformat2.html 1.3 and 3.
constexpr std::array<std::uint8_t, 8> magic = {0xD9, 0xD5, 0x05, 0xF9, 0x20, 0xA1, 0x63, 0xD7};
constexpr std::size_t journal_header_size = 28;
constexpr std::size_t pages_at = 8;
constexpr std::size_t sector_size_at = 20;
constexpr std::size_t page_size_at = 24;
constexpr std::size_t change_counter_at = 24;
constexpr std::size_t frame_size = 8;  // a page's number before it, its checksum behind it
constexpr std::size_t most_pages = 100'000;

using Bytes = std::vector<std::uint8_t>;

std::uint32_t number_at(std::span<const std::uint8_t> bytes, std::size_t at) {
  std::uint32_t number = 0;
  for (const std::uint8_t byte : bytes.subspan(at, 4)) number = number << 8 | byte;
  return number;
}

// What the file's page size is, by its header: 1 stands for 65536.
std::uint32_t page_size_of(const FileHeader& header) {
  const auto size = static_cast<std::uint32_t>(header[16] << 8 | header[17]);
  return size == 1 ? 65536 : size;
}

Bytes read_at(std::ifstream& file, std::size_t at, std::size_t size) {
  Bytes bytes(size);
  file.clear();
  file.seekg(static_cast<std::streamoff>(at));
  file.read(reinterpret_cast<char*>(bytes.data()), static_cast<std::streamsize>(size));
  bytes.resize(static_cast<std::size_t>(file.gcount()));
  return bytes;
}

// What a journal says about its file. Without a first page it says nothing.
struct Kept {
  std::uint32_t page_size = 0;
  std::optional<std::uint32_t> change_counter;
};

// Pages that were brought to the disk together, behind a header of their own; the next header
// begins with the next sector.
struct Stretch {
  std::size_t at = 0;
  std::size_t sector_size = 0;
  std::size_t page_size = 0;
  std::size_t pages = 0;

  std::size_t first_page() const { return at + sector_size; }
  std::size_t end() const { return first_page() + pages * (page_size + frame_size); }
  std::size_t next() const { return (end() + sector_size - 1) / sector_size * sector_size; }
};

std::optional<Stretch> stretch_at(std::ifstream& file, std::size_t at) {
  const Bytes header = read_at(file, at, journal_header_size);
  if (header.size() < journal_header_size) return std::nullopt;
  if (!std::equal(magic.begin(), magic.end(), header.begin())) return std::nullopt;
  const Stretch stretch{at, number_at(header, sector_size_at), number_at(header, page_size_at),
                        std::min<std::size_t>(number_at(header, pages_at), most_pages)};
  const bool is_possible = stretch.page_size >= 512 && stretch.sector_size >= 32;
  return is_possible ? std::optional(stretch) : std::nullopt;
}

std::optional<std::uint32_t> kept_counter(std::ifstream& file, const Stretch& stretch) {
  for (std::size_t i = 0; i < stretch.pages; ++i) {
    const std::size_t at = stretch.first_page() + i * (stretch.page_size + frame_size);
    const Bytes bytes = read_at(file, at, 4 + change_counter_at + 4);
    if (bytes.size() < 4 + change_counter_at + 4) return std::nullopt;
    if (number_at(bytes, 0) == 1) return number_at(bytes, 4 + change_counter_at);
  }
  return std::nullopt;
}

std::optional<Kept> kept_in(const std::string& journal) {
  std::ifstream file(journal, std::ios::binary);
  std::optional<Stretch> stretch = stretch_at(file, 0);
  if (!stretch) return std::nullopt;
  Kept kept{static_cast<std::uint32_t>(stretch->page_size), {}};
  while (stretch && !kept.change_counter) {
    kept.change_counter = kept_counter(file, *stretch);
    stretch = stretch_at(file, stretch->next());
  }
  return kept;
}

// Before the first page is written the counters are the same, afterwards the file's is one ahead.
bool can_be_of(const Kept& kept, const FileHeader& header) {
  if (kept.page_size != page_size_of(header)) return false;
  if (!kept.change_counter) return true;
  const std::uint32_t ahead = number_at(header, change_counter_at) - *kept.change_counter;
  return ahead <= 1;
}

[[noreturn]] void refuse_journal(const std::string& path, const std::string& why) {
  throw Trouble({logbook::TroubleKind::not_allowed, path,
                 "the journal " + path + "-journal " + why + "; move it away, and keep it"});
}

void expect_same_owner(const std::string& path, const struct stat& journal) {
  struct stat file {};
  if (::stat(path.c_str(), &file) != 0 || journal.st_uid == 0) return;
  if (journal.st_uid != file.st_uid) refuse_journal(path, "belongs to another user");
}

}  // namespace

void expect_own_journal(const std::string& path, const std::function<FileHeader()>& header) {
  constexpr int tries = 3;
  const std::string journal = path + "-journal";
  struct stat status {};
  if (::stat(journal.c_str(), &status) != 0) return;
  expect_same_owner(path, status);
  // Others may be writing: what is read of file and journal is of one moment only if the file's
  // header is the same before and after.
  for (int i = 0; i < tries; ++i) {
    const FileHeader before = header();
    const std::optional<Kept> kept = kept_in(journal);
    if (before != header()) continue;
    if (!kept || can_be_of(*kept, before)) return;
  }
  if (::stat(journal.c_str(), &status) == 0) refuse_journal(path, "was left by another file");
}

}  // namespace store
