#include "command/out_file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>

#include "store/file.h"
#include "store/place.h"

namespace command {

namespace {

constexpr mode_t for_all_to_read = S_IRUSR | S_IWUSR | S_IRGRP | S_IROTH;

std::optional<std::string> why_not_there(const std::string& path) {
  namespace files = std::filesystem;
  std::error_code error;
  const files::file_status status = files::symlink_status(path, error);
  if (!files::exists(status)) return std::nullopt;
  if (!files::is_regular_file(status)) return "something else than a file stands there";
  std::ifstream there(path, std::ios::binary);
  std::array<char, 15> head{};
  there.read(head.data(), head.size());
  const std::string_view begins(head.data(), static_cast<std::size_t>(there.gcount()));
  if (begins == "SQLite format 3") return "that is a book";
  return std::nullopt;
}

// All of it, or the error's number.
int write_all(int descriptor, std::string_view bytes) {
  while (!bytes.empty()) {
    const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
    if (written < 0 && errno != EINTR) return errno;
    if (written > 0) bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  return 0;
}

// A file under a name that nothing has (O_EXCL inside mkostemp), then in its place.
int put_in_place(const std::string& path, const std::string& bytes) {
  std::string beside = path + ".XXXXXX";
  const int descriptor = ::mkostemp(beside.data(), O_CLOEXEC);
  if (descriptor < 0) return errno;
  int error = write_all(descriptor, bytes);
  // Without rights of their own (a stick), files are as readable as their folder.
  ::fchmod(descriptor, for_all_to_read);
  if (error == 0 && ::fsync(descriptor) != 0) error = errno;
  if (::close(descriptor) != 0 && error == 0) error = errno;
  if (error == 0 && std::rename(beside.c_str(), path.c_str()) != 0) error = errno;
  if (error != 0) ::unlink(beside.c_str());
  return error;
}

Unanswerable cannot_write(const std::string& path, const std::string& why) {
  return {"\"" + path + "\" cannot be written: " + why + ".", cannot_create};
}

}  // namespace

std::optional<Unanswerable> write_file(const std::string& path, const std::string& bytes) {
  store::expect_own_links(path);
  if (const auto why = why_not_there(path)) return cannot_write(path, *why);
  const int error = put_in_place(path, bytes);
  if (error != 0) return cannot_write(path, std::generic_category().message(error));
  store::make_durable(store::folder_of(path));
  return std::nullopt;
}

}  // namespace command
