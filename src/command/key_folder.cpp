#include "command/key_folder.h"

#include <fcntl.h>
#include <unistd.h>

#include <algorithm>
#include <cerrno>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <system_error>

#include "store/file.h"
#include "store/trouble.h"
#include "text/binary.h"

namespace command {

namespace {

namespace fs = std::filesystem;

constexpr std::string_view ending = ".key";
constexpr std::uintmax_t most_bytes = 4096;
constexpr std::size_t name_digits = 16;

std::string folder_of(const World& world) { return world.config_folder + "/keys"; }

std::optional<KeyFile> read_key(const fs::path& path) {
  std::error_code trouble;
  const bool may_be_one = path.extension() == ending && fs::is_regular_file(path, trouble) &&
                          fs::file_size(path, trouble) <= most_bytes && !trouble;
  if (!may_be_one) return std::nullopt;
  std::ifstream file(path);
  std::ostringstream text;
  text << file.rdbuf();
  const auto key = seal::locked_for(text.str());
  if (!key) return std::nullopt;
  return KeyFile{named_key(*key), path.string(), text.str()};
}

void write_whole(const std::string& path, std::string_view text) {
  const int descriptor = ::open(path.c_str(), O_WRONLY | O_CLOEXEC);
  bool is_written = descriptor >= 0;
  while (is_written && !text.empty()) {
    const ssize_t size = ::write(descriptor, text.data(), text.size());
    is_written = size > 0;
    if (is_written) text.remove_prefix(static_cast<std::size_t>(size));
  }
  is_written = is_written && ::fsync(descriptor) == 0;
  const int error = errno;
  if (descriptor >= 0) ::close(descriptor);
  if (is_written) return;
  throw store::Trouble(
      {logbook::TroubleKind::cannot_write, path, std::generic_category().message(error)});
}

}  // namespace

logbook::PublicKey named_key(const seal::PublicKey& key) { return {text::hex(key)}; }

std::vector<KeyFile> keys_here(const World& world) {
  std::vector<KeyFile> keys;
  std::error_code trouble;
  for (const auto& file : fs::directory_iterator(folder_of(world), trouble)) {
    if (auto key = read_key(file.path())) keys.push_back(*std::move(key));
  }
  std::sort(keys.begin(), keys.end(),
            [](const KeyFile& a, const KeyFile& b) { return a.key < b.key; });
  return keys;
}

std::string keep_key(const seal::SecretKey& key, const std::string& locked, const World& world) {
  const std::string name = named_key(key.public_key()).text.substr(0, name_digits);
  const std::string path = folder_of(world) + "/" + name + std::string(ending);
  store::NewFile file(path);
  write_whole(file.name(), locked);
  file.settle();
  return path;
}

void forget_key(const std::string& path) {
  std::error_code trouble;
  fs::remove(path, trouble);
}

}  // namespace command
