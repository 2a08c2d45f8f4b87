// store/file.h: the book as a file among files: where it is, how it comes to be, who may open it.
// The file's bytes are touched by SQLite only, since closing it any other way drops its locks.
#pragma once

#include <string>

#include "store/surroundings.h"

namespace store {

// The one name of an existing book. Throws no_such_book or not_a_book; not_allowed if a symbolic
// link of another user leads there; for writing also not_allowed if the file has a second name
// (hard link), under which its journal would not be found.
std::string existing_file(const std::string& path, Access access);

// Makes the folder and what is missing above it, for its owner only.
void make_folder(const std::string& path);
std::string folder_of(const std::string& path);
// Brings the names in the folder to the disk; a file's own flush does not.
void make_durable(const std::string& folder);

// A new, empty file beside the path that it is meant for; it vanishes unless it is settled there.
class NewFile {
 public:
  // Throws already_there or cannot_create.
  explicit NewFile(const std::string& path);
  ~NewFile();
  NewFile(const NewFile&) = delete;
  NewFile& operator=(const NewFile&) = delete;
  const std::string& name() const { return name_; }
  // Brings its bytes to the disk, whoever wrote them; no connection to it may be open.
  void flush() const;
  // Gives the file its path, never over another file, and makes that durable.
  void settle();

 private:
  std::string path_;
  std::string name_;
  bool is_settled_ = false;
};

}  // namespace store
