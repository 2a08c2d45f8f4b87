#include "store/file.h"

#include <fcntl.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <cstdio>
#include <cstdlib>
#include <cstring>
#include <memory>

#include "store/place.h"
#include "store/trouble.h"

namespace store {
namespace {

using logbook::TroubleKind;

bool is_on_stick(const std::string& path) {
  const auto doubts = doubts_of_place(path);
  return doubts.size() == 1 && doubts.front() == PlaceDoubt::stick;
}

constexpr std::array<std::string_view, 3> journal_endings = {"-journal", "-wal", "-shm"};

bool is_there(const std::string& path) {
  struct stat status {};
  return ::lstat(path.c_str(), &status) == 0;
}

bool is_folder(const std::string& path) {
  struct stat status {};
  return ::stat(path.c_str(), &status) == 0 && S_ISDIR(status.st_mode);
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
  if (path.empty() || make_one(path)) return;
  if (errno == ENOENT && folder_of(path) != path) {
    make_folder(folder_of(path));
    if (make_one(path)) return;
  }
  const int error = errno;
  if (error != EEXIST) fail(creating(error), path, error);
  if (!is_folder(path)) fail(TroubleKind::cannot_create, path, ENOTDIR);
}

void make_durable(const std::string& folder) {
  const int descriptor = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  const bool is_done = descriptor >= 0 && ::fsync(descriptor) == 0;
  const int error = errno;
  if (descriptor >= 0) ::close(descriptor);
  if (!is_done) fail(TroubleKind::cannot_create, folder, error);
}

NewFile::NewFile(const std::string& path, Kind kind)
    : path_(path), name_(path + ".new-XXXXXX"), kind_(kind) {
  if (path.empty()) throw Trouble({TroubleKind::cannot_create, path, "its name is empty"});
  const std::string folder = folder_of(path);
  if (kind == Kind::record) {
    expect_free();
    make_folder(folder);
  }
  folder_ = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
  if (folder_ < 0) fail(creating(errno), path, errno);
  try {
    make();
  } catch (...) {
    ::close(folder_);
    throw;
  }
}

NewFile::~NewFile() {
  if (!is_settled_) ::unlink(name_.c_str());
  ::close(folder_);
}

void NewFile::make() {
  const int descriptor = ::mkostemp(name_.data(), O_CLOEXEC);
  if (descriptor < 0) fail(creating(errno), path_, errno);
  const bool has_rights = ::fchmod(descriptor, kind_ == Kind::page ? 0644 : 0600) == 0;
  ::close(descriptor);
  // On a stick no file has rights of its own; whoever holds it may read it anyway.
  if (has_rights || kind_ == Kind::page || is_on_stick(name_)) return;
  ::unlink(name_.c_str());
  throw Trouble({TroubleKind::cannot_create, path_, "the file cannot be made private"});
}

// sqlite.org/howtocorrupt.html 1.4: a journal belongs to whatever file has its name.
void NewFile::expect_free() const {
  if (is_there(path_)) fail(TroubleKind::already_there, path_, EEXIST);
  for (const std::string_view ending : journal_endings) {
    const std::string journal = path_ + std::string(ending);
    if (path_.ends_with(ending)) {
      throw Trouble({TroubleKind::not_allowed, path_,
                     "a name that ends in " + std::string(ending) +
                         " is that of another file's journal; choose another name"});
    }
    if (!is_there(journal)) continue;
    throw Trouble({TroubleKind::already_there, journal,
                   "it was left by another file of that name and would be written into the new "
                   "one; move it away, and keep it"});
  }
}

void NewFile::write(std::string_view bytes) const {
  const int descriptor = ::open(name_.c_str(), O_WRONLY | O_CLOEXEC);
  int error = descriptor < 0 ? errno : 0;
  while (error == 0 && !bytes.empty()) {
    const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
    if (written < 0 && errno != EINTR) error = errno;
    if (written > 0) bytes.remove_prefix(static_cast<std::size_t>(written));
  }
  if (descriptor >= 0 && ::close(descriptor) != 0 && error == 0) error = errno;
  if (error != 0) fail(TroubleKind::cannot_write, path_, error);
}

void NewFile::flush() const {
  const int descriptor = ::open(name_.c_str(), O_RDONLY | O_CLOEXEC);
  const bool is_done = descriptor >= 0 && ::fsync(descriptor) == 0;
  const int error = errno;
  // Advice: the system may keep the pages all the same, and then they are read from memory.
  if (is_done) ::posix_fadvise(descriptor, 0, 0, POSIX_FADV_DONTNEED);
  if (descriptor >= 0) ::close(descriptor);
  if (!is_done) fail(creating(error), path_, error);
}

int NewFile::put_in_place() const {
  if (kind_ == Kind::page) return ::rename(name_.c_str(), path_.c_str());
  int result = ::renameat2(AT_FDCWD, name_.c_str(), AT_FDCWD, path_.c_str(), RENAME_NOREPLACE);
  if (result == 0 || errno != EINVAL) return result;
  // This file system cannot rename without replacing; a second name is refused where one stands.
  result = ::link(name_.c_str(), path_.c_str());
  if (result == 0) ::unlink(name_.c_str());
  // A stick has no second names either; nobody else makes this name within a moment.
  if (result != 0 && !is_there(path_) && is_on_stick(name_)) {
    result = ::rename(name_.c_str(), path_.c_str());
  }
  return result;
}

void NewFile::settle() {
  // Once more: making a book takes a while.
  if (kind_ == Kind::record) expect_free();
  if (put_in_place() != 0) fail(creating(errno), path_, errno);
  is_settled_ = true;
  if (::fsync(folder_) != 0) fail(TroubleKind::cannot_create, path_, errno);
}

}  // namespace store
