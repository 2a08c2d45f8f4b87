#include "command/out_file.h"

#include <array>
#include <cerrno>
#include <filesystem>
#include <fstream>
#include <system_error>

#include "store/file.h"
#include "store/place.h"
#include "store/trouble.h"

namespace command {

namespace {

// A file that cannot be read might be a book.
std::optional<std::string> why_not_there(const std::string& path) {
  namespace files = std::filesystem;
  std::error_code error;
  const files::file_status status = files::symlink_status(path, error);
  if (status.type() == files::file_type::not_found) return std::nullopt;
  if (status.type() == files::file_type::none) return error.message();
  if (!files::is_regular_file(status)) return "something else than a file stands there";
  std::ifstream there(path, std::ios::binary);
  std::array<char, 15> head{};
  there.read(head.data(), head.size());
  if (!there.is_open() || there.bad()) return "the file that stands there cannot be read";
  const std::string_view begins(head.data(), static_cast<std::size_t>(there.gcount()));
  if (begins == "SQLite format 3") return "that is a book";
  return std::nullopt;
}

Unanswerable cannot_write(const std::string& path, const std::string& why) {
  return {"\"" + path + "\" cannot be written: " + why + ".", cannot_create};
}

}  // namespace

std::optional<Unanswerable> write_file(const std::string& path, const std::string& bytes) {
  store::expect_own_links(path);
  if (const auto why = why_not_there(path)) return cannot_write(path, *why);
  try {
    store::NewFile file(path, store::NewFile::Kind::page);
    file.write(bytes);
    file.flush();
    file.settle();
  } catch (const store::Trouble& trouble) {
    return cannot_write(path, trouble.what().detail);
  }
  return std::nullopt;
}

}  // namespace command
