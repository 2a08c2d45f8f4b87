#include "store/place.h"

#include <sys/stat.h>
#include <sys/vfs.h>
#include <unistd.h>

#include <algorithm>
#include <array>
#include <filesystem>

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

constexpr mode_t others = S_IWGRP | S_IWOTH;

template <class Numbers>
bool holds(const Numbers& numbers, std::int64_t number) {
  return std::find(numbers.begin(), numbers.end(), number) != numbers.end();
}

}  // namespace

std::vector<PlaceDoubt> doubts_of_file_system(std::int64_t number) {
  // On some machines the field is 32 bits wide and signed.
  const std::int64_t unsigned_number = number & 0xFFFFFFFF;
  if (holds(of_networks, unsigned_number)) return {PlaceDoubt::network};
  if (holds(of_sticks, unsigned_number)) return {PlaceDoubt::stick};
  return {};
}

std::vector<PlaceDoubt> doubts_of_place(const std::string& file) {
  std::vector<PlaceDoubt> doubts;
  struct statfs system {};
  if (::statfs(file.c_str(), &system) == 0) doubts = doubts_of_file_system(system.f_type);
  // A stick has no rights of its own: what it shows says nothing about who may write.
  if (!doubts.empty()) return doubts;
  struct stat status {};
  if (::stat(file.c_str(), &status) == 0 && (status.st_mode & others) != 0) {
    doubts.push_back(PlaceDoubt::others_may_write_file);
  }
  const std::string folder = std::filesystem::path(file).parent_path().string();
  if (::stat(folder.empty() ? "." : folder.c_str(), &status) == 0 &&
      (status.st_mode & others) != 0) {
    doubts.push_back(PlaceDoubt::others_may_write_folder);
  }
  return doubts;
}

void expect_own_links(const std::string& path) {
  for (std::size_t at = 0; at != path.npos;) {
    at = path.find('/', at + 1);
    const std::string part = path.substr(0, at);
    struct stat status {};
    if (::lstat(part.c_str(), &status) != 0 || !S_ISLNK(status.st_mode)) continue;
    if (status.st_uid == ::geteuid() || status.st_uid == 0) continue;
    throw Trouble({TroubleKind::not_allowed, path,
                   part + " is a symbolic link that belongs to another user"});
  }
}

bool is_on_same_device(const std::string& one, const std::string& other) {
  struct stat first {};
  struct stat second {};
  if (::stat(one.c_str(), &first) != 0 || ::stat(other.c_str(), &second) != 0) return true;
  return first.st_dev == second.st_dev;
}

}  // namespace store
