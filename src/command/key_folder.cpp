#include "command/key_folder.h"

#include <algorithm>
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

}  // namespace

logbook::PublicKey named_key(const seal::PublicKey& key) { return {text::hex(key)}; }

std::vector<KeyFile> keys_here(const World& world) {
  std::vector<KeyFile> keys;
  std::error_code trouble;
  for (fs::directory_iterator file(folder_of(world), trouble), end; !trouble && file != end;
       file.increment(trouble)) {
    if (auto key = read_key(file->path())) keys.push_back(*std::move(key));
  }
  std::sort(keys.begin(), keys.end(),
            [](const KeyFile& a, const KeyFile& b) { return a.key < b.key; });
  return keys;
}

std::string keep_key(const seal::SecretKey& key, const std::string& locked, const World& world) {
  const std::string name = named_key(key.public_key()).text.substr(0, name_digits);
  const std::string path = folder_of(world) + "/" + name + std::string(ending);
  store::NewFile file(path);
  file.write(locked);
  file.flush();
  file.settle();
  return path;
}

void forget_key(const std::string& path) {
  std::error_code trouble;
  fs::remove(path, trouble);
}

}  // namespace command
