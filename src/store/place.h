// store/place.h: the place where a book lies, and what speaks against it: who else may write there,
// and kinds of file systems that do not keep what they promise.
#pragma once

#include <cstdint>
#include <string>
#include <vector>

namespace store {

enum class PlaceDoubt {
  others_may_write_file,
  others_may_write_folder,
  network,  // locks and flushes over a network or through a helper program may not hold
  stick,    // a file system of sticks: no rights, no safe journal, and sticks promise too much
};
// What speaks against working on the file there, wherever links lead; nothing if it cannot be
// asked. A folder where only the owner of a file may take it away (sticky) is none of others.
std::vector<PlaceDoubt> doubts_of_place(const std::string& file);

// True of file systems that live in memory or are laid over another one: what lies there is gone
// with the power or with the machine that was put together so. Never where a copy is elsewhere.
bool is_passing(std::int64_t number);
bool lies_on_passing(const std::string& file);

// What a file system is by its number in statfs(2); nothing for those that keep their word.
std::vector<PlaceDoubt> doubts_of_file_system(std::int64_t number);

// Throws not_allowed if a symbolic link on the way, or on the way to where one leads, belongs to
// neither the user nor the system: its owner could lead it elsewhere at any time.
void expect_own_links(const std::string& path);

// True if both lie on one file system, or if that cannot be found out.
bool is_on_same_device(const std::string& one, const std::string& other);
// True if both names lead to one file.
bool is_same_file(const std::string& one, const std::string& other);

}  // namespace store
