#include "store/place.h"

#include <sys/stat.h>
#include <sys/vfs.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <climits>
#include <cstdlib>
#include <memory>

#include "store/trouble.h"

namespace store {
namespace {

using logbook::TroubleKind;

// statfs(2) and linux/magic.h.
constexpr std::array<std::int64_t, 12> of_networks = {
    0x6969,      // NFS
    0x517B,      // SMB
    0xFF534D42,  // CIFS
    0xFE534D42,  // SMB2
    0x65735546,  // FUSE, which synchronised folders and ssh use
    0x01021997,  // 9P, the folders of a host seen from a virtual machine
    0x00C36400,  // Ceph
    0x5346414F,  // AFS
    0x73757245,  // Coda
    0x01161970,  // GFS2
    0x7461636F,  // OCFS2
    0x0BD00BD0,  // Lustre
};
constexpr std::array<std::int64_t, 2> of_sticks = {
    0x4D44,      // FAT
    0x2011BAB0,  // exFAT
};

constexpr std::array<std::int64_t, 3> passing = {
    0x01021994,  // tmpfs
    0x858458F6,  // ramfs
    0x794C7630,  // overlay
};

constexpr int most_links = 40;  // as the system itself gives up (path_resolution(7))
constexpr mode_t others = S_IWGRP | S_IWOTH;

template <class Numbers>
bool holds(const Numbers& numbers, std::int64_t number) {
  return std::find(numbers.begin(), numbers.end(), number) != numbers.end();
}

// Where the path leads; itself if it leads nowhere.
std::string resolved(const std::string& path) {
  const std::unique_ptr<char, decltype(&std::free)> found(::realpath(path.c_str(), nullptr),
                                                          &std::free);
  return found ? found.get() : path;
}

// Takes the first part off, with the slash behind it.
std::string first_part(std::string& rest) {
  const std::size_t slash = rest.find('/');
  const std::string part = rest.substr(0, slash);
  rest.erase(0, slash == rest.npos ? rest.npos : slash + 1);
  return part;
}

// Of a path in which no link is left, and that ends with a slash or is empty.
std::string above(const std::string& done) {
  if (done == "./") return "..";
  if (done.empty() || done.ends_with("../")) return done + "..";
  if (done == "/") return done;
  const std::size_t slash = done.rfind('/', done.size() - 2);
  return slash == done.npos ? "./" : done.substr(0, slash + 1);
}

// Where a link leads; empty if it is none. path: what was typed.
std::string own_link(const std::string& here, const std::string& path) {
  struct stat status {};
  if (::lstat(here.c_str(), &status) != 0 || !S_ISLNK(status.st_mode)) return {};
  if (status.st_uid != ::geteuid() && status.st_uid != 0) {
    throw Trouble({TroubleKind::not_allowed, path,
                   here + " is a symbolic link that belongs to another user"});
  }
  std::array<char, PATH_MAX> target{};
  const ssize_t size = ::readlink(here.c_str(), target.data(), target.size());
  return size > 0 ? std::string(target.data(), static_cast<std::size_t>(size)) : std::string();
}

}  // namespace

std::vector<PlaceDoubt> doubts_of_file_system(std::int64_t number) {
  // On some machines the field is 32 bits wide and signed.
  const std::int64_t unsigned_number = number & 0xFFFFFFFF;
  if (holds(of_networks, unsigned_number)) return {PlaceDoubt::network};
  if (holds(of_sticks, unsigned_number)) return {PlaceDoubt::stick};
  return {};
}

bool is_passing(std::int64_t number) { return holds(passing, number & 0xFFFFFFFF); }

bool lies_on_passing(const std::string& file) {
  struct statfs system {};
  return ::statfs(file.c_str(), &system) == 0 && is_passing(system.f_type);
}

std::vector<PlaceDoubt> doubts_of_place(const std::string& path) {
  const std::string file = resolved(path);
  std::vector<PlaceDoubt> doubts;
  struct statfs system {};
  if (::statfs(file.c_str(), &system) == 0) doubts = doubts_of_file_system(system.f_type);
  // A stick has no rights of its own: what it shows says nothing about who may write.
  if (!doubts.empty()) return doubts;
  struct stat status {};
  if (::stat(file.c_str(), &status) == 0 && (status.st_mode & others) != 0) {
    doubts.push_back(PlaceDoubt::others_may_write_file);
  }
  const std::size_t slash = file.rfind('/');
  const std::string folder = slash == file.npos ? "." : file.substr(0, slash + 1);
  if (::stat(folder.c_str(), &status) == 0 && (status.st_mode & others) != 0 &&
      (status.st_mode & S_ISVTX) == 0) {
    doubts.push_back(PlaceDoubt::others_may_write_folder);
  }
  return doubts;
}

void expect_own_links(const std::string& path) {
  // As the system goes: what a link leads to is put in its place, and walked in its turn.
  std::string done = path.starts_with('/') ? "/" : "";
  std::string rest = path;
  for (int links = 0; !rest.empty() && links <= most_links;) {
    const std::string part = first_part(rest);
    if (part.empty() || part == ".") continue;
    const std::string here = part == ".." ? above(done) : done + part;
    const std::string to = own_link(here, path);
    if (to.empty()) {
      done = here.ends_with('/') ? here : here + '/';
      continue;
    }
    ++links;
    if (to.starts_with('/')) done = "/";
    rest = to + '/' + rest;
  }
}

bool is_on_same_device(const std::string& one, const std::string& other) {
  struct stat first {};
  struct stat second {};
  if (::stat(one.c_str(), &first) != 0 || ::stat(other.c_str(), &second) != 0) return true;
  return first.st_dev == second.st_dev;
}

bool is_same_file(const std::string& one, const std::string& other) {
  struct stat first {};
  struct stat second {};
  if (::stat(one.c_str(), &first) != 0 || ::stat(other.c_str(), &second) != 0) return false;
  return first.st_dev == second.st_dev && first.st_ino == second.st_ino;
}

}  // namespace store
