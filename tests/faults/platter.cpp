#include "faults/platter.h"

#include <algorithm>
#include <filesystem>
#include <fstream>
#include <utility>

namespace faults {

namespace {

constexpr std::size_t sector = 512;

bool coin(std::mt19937_64& random) { return random() % 2 == 0; }

// Whether a change as a whole arrived.
bool arrives(Loss loss, std::mt19937_64& random) {
  if (loss == Loss::all) return false;
  return loss == Loss::none || coin(random);
}

void grow(Bytes& content, std::size_t size, Loss loss, std::mt19937_64& random) {
  while (content.size() < size) {
    content.push_back(loss == Loss::torn ? static_cast<std::uint8_t>(random()) : 0);
  }
}

// One stretch of bytes inside one sector.
struct Stretch {
  std::size_t offset = 0;
  const std::uint8_t* begin = nullptr;
  std::size_t size = 0;
};

void put(Bytes& content, const Stretch& stretch) {
  std::copy_n(stretch.begin, stretch.size,
              content.begin() + static_cast<std::ptrdiff_t>(stretch.offset));
}

}  // namespace

void Platter::meet(const std::string& path, Bytes content) {
  files_[path] = {std::move(content), {}, false};
}

void Platter::create(const std::string& path) { files_[path] = {}; }

void Platter::write(const std::string& path, std::size_t offset, Bytes bytes) {
  files_[path].since.push_back({offset, std::move(bytes), false});
}

void Platter::truncate(const std::string& path, std::size_t size) {
  files_[path].since.push_back({size, {}, true});
}

void Platter::sync(const std::string& path) {
  File& file = files_[path];
  Bytes content = file.sure.value_or(Bytes());
  for (const Change& change : file.since) {
    const std::size_t end = change.offset + change.bytes.size();
    if (change.is_cut || content.size() < end) content.resize(end);
    put(content, {change.offset, change.bytes.data(), change.bytes.size()});
  }
  file = {std::move(content), {}, false};
}

void Platter::remove(const std::string& path, bool is_sure) {
  if (is_sure) {
    files_[path] = {std::nullopt, {}, true};
  } else {
    files_[path].is_removed = true;
  }
}

void Platter::bring(const File& file, const std::string& path, Loss loss, std::mt19937_64& random) {
  const bool is_named =
      file.is_removed ? file.sure && !arrives(loss, random) : file.sure || arrives(loss, random);
  if (!is_named) {
    std::filesystem::remove(path);
    return;
  }
  Bytes content = file.sure.value_or(Bytes());
  for (const Change& change : file.since) {
    const bool is_whole = loss != Loss::torn || change.is_cut;
    if (is_whole && !arrives(loss, random)) continue;
    if (change.is_cut) content.resize(std::min(content.size(), change.offset));
    for (std::size_t at = 0; at < change.bytes.size();) {
      const std::size_t offset = change.offset + at;
      const std::size_t size = std::min(change.bytes.size() - at, sector - offset % sector);
      if (loss != Loss::torn || coin(random)) {
        grow(content, offset + size, loss, random);
        put(content, {offset, change.bytes.data() + at, size});
      }
      at += size;
    }
  }
  std::ofstream(path, std::ios::binary | std::ios::trunc)
      .write(reinterpret_cast<const char*>(content.data()),
             static_cast<std::streamsize>(content.size()));
}

void Platter::leave(Loss loss, std::mt19937_64& random) {
  for (const auto& [path, file] : files_) bring(file, path, loss, random);
  settle();
}

}  // namespace faults
