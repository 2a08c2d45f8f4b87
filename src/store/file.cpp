#include "store/file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <memory>
#include <system_error>

#include "store/place.h"
#include "store/trouble.h"

namespace store {
namespace {

using logbook::TroubleKind;

std::string system_words(int error) { return std::generic_category().message(error); }

[[noreturn]] void fail(TroubleKind kind, const std::string& path, int error) {
  throw Trouble({kind, path, system_words(error)});
}

bool is_on_stick(const std::string& path) {
  const auto doubts = doubts_of_place(path);
  return doubts.size() == 1 && doubts.front() == PlaceDoubt::stick;
}

TroubleKind creating(int error) {
  if (error == EEXIST) return TroubleKind::already_there;
  return error == EACCES || error == EPERM ? TroubleKind::not_allowed : TroubleKind::cannot_create;
}

// The rights are given once more, since the umask may have taken some away.
bool make_one(const std::string& path) {
  return ::mkdir(path.c_str(), 0700) == 0 && ::chmod(path.c_str(), 0700) == 0;
}

std::string real_path(const std::string& path) {
  const std::unique_ptr<char, decltype(&std::free)> found(::realpath(path.c_str(), nullptr),
                                                          &std::free);
  if (found) return found.get();
  const int error = errno;
  fail(error == EACCES ? TroubleKind::not_allowed : TroubleKind::no_such_book, path, error);
}

}  // namespace

std::string existing_file(const std::string& path, Access access) {
  expect_own_links(path);
  const std::string real = real_path(path);
  struct stat status {};
  if (::stat(real.c_str(), &status) != 0) fail(TroubleKind::cannot_read, path, errno);
  if (!S_ISREG(status.st_mode)) throw Trouble({TroubleKind::not_a_book, path, "not a plain file"});
  if (::access(real.c_str(), R_OK) != 0) fail(TroubleKind::not_allowed, path, errno);
  if (access == Access::write && status.st_nlink > 1) {
    throw Trouble({TroubleKind::not_allowed, path, "the file has a second name (hard link)"});
  }
  return real;
}

std::string folder_of(const std::string& path) {
  const std::size_t slash = path.rfind('/');
  if (slash == path.npos) return ".";
  return slash == 0 ? "/" : path.substr(0, slash);
}

void make_folder(const std::string& path) {
  if (path.empty() || make_one(path) || errno == EEXIST) return;
  if (errno != ENOENT || folder_of(path) == path) fail(creating(errno), path, errno);
  make_folder(folder_of(path));
  if (!make_one(path) && errno != EEXIST) fail(creating(errno), path, errno);
}

void make_durable(const std::string& folder) {
  const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  const bool is_done = descriptor >= 0 && ::fsync(descriptor) == 0;
  const int error = errno;
  if (descriptor >= 0) ::close(descriptor);
  if (!is_done) fail(TroubleKind::cannot_create, folder, error);
}

NewFile::NewFile(const std::string& path) : path_(path), name_(path + ".new-XXXXXX") {
  struct stat status {};
  if (::lstat(path.c_str(), &status) == 0) fail(TroubleKind::already_there, path, EEXIST);
  make_folder(folder_of(path));
  const int descriptor = ::mkostemp(name_.data(), O_CLOEXEC);
  if (descriptor < 0) fail(creating(errno), path, errno);
  const bool is_private = ::fchmod(descriptor, 0600) == 0;
  ::close(descriptor);
  // On a stick no file has rights of its own; whoever holds it may read it anyway.
  if (is_private || is_on_stick(name_)) return;
  ::unlink(name_.c_str());
  throw Trouble({TroubleKind::cannot_create, path, "the file cannot be made private"});
}

NewFile::~NewFile() {
  if (!is_settled_) ::unlink(name_.c_str());
}

void NewFile::flush() const {
  const int descriptor = ::open(name_.c_str(), O_RDONLY | O_CLOEXEC);
  const bool is_done = descriptor >= 0 && ::fsync(descriptor) == 0;
  const int error = errno;
  if (descriptor >= 0) ::close(descriptor);
  if (!is_done) fail(creating(error), path_, error);
}

void NewFile::settle() {
  int result = ::renameat2(AT_FDCWD, name_.c_str(), AT_FDCWD, path_.c_str(), RENAME_NOREPLACE);
  if (result != 0 && errno == EINVAL) {
    // This file system cannot rename without replacing; a second name is refused where one stands.
    result = ::link(name_.c_str(), path_.c_str());
    if (result == 0) ::unlink(name_.c_str());
    // A stick has no second names either; nobody else makes this name within a moment.
    struct stat status {};
    const bool is_free = ::lstat(path_.c_str(), &status) != 0;
    if (result != 0 && errno == ENOENT && is_free && is_on_stick(name_)) {
      result = ::rename(name_.c_str(), path_.c_str());
    }
  }
  if (result != 0) fail(creating(errno), path_, errno);
  is_settled_ = true;
  make_durable(folder_of(path_));
}

}  // namespace store
