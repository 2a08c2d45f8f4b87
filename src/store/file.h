// store/file.h: the book as a file among files: where it is, how it comes to be, who may open it.
// The file's bytes are touched by SQLite only, since closing it any other way drops its locks.
#pragma once

#include <string>
#include <string_view>

#include "store/surroundings.h"

namespace store {

// The one name of an existing book. Throws no_such_book or not_a_book; not_allowed if a symbolic
// link of another user leads there; for writing also not_allowed if the file has a second name
// (hard link), under which its journal would not be found.
std::string existing_file(const std::string& path, Access access);

// Makes the folder and what is missing above it, for its owner only. Throws cannot_create if
// something else than a folder stands there.
void make_folder(const std::string& path);
std::string folder_of(const std::string& path);
// Brings the names in the folder to the disk; a file's own flush does not.
void make_durable(const std::string& folder);

// A new, empty file beside the path that it is meant for; it vanishes unless it is settled there.
class NewFile {
 public:
  enum class Kind {
    record,  // a book, a copy, a key: its owner's alone, over no other file, its folder is made
    page,    // a sheet: for all to read, in a folder that is there, and it may replace a file
  };
  // Throws already_there, not_allowed or cannot_create. A record is never made beside a journal of
  // its name, which would be written back into it, nor under the name of one.
  explicit NewFile(const std::string& path, Kind kind = Kind::record);
  ~NewFile();
  NewFile(const NewFile&) = delete;
  NewFile& operator=(const NewFile&) = delete;
  const std::string& name() const { return name_; }
  // Puts all of it in; throws cannot_write.
  void write(std::string_view bytes) const;
  // Brings its bytes to the disk, whoever wrote them, and asks the system to forget what it keeps
  // of them, so that who reads them next reads the disk. No connection to it may be open.
  void flush() const;
  // Gives the file its path and makes that durable.
  void settle();

 private:
  void make();
  void expect_free() const;
  int put_in_place() const;

  std::string path_;
  std::string name_;
  Kind kind_;
  int folder_ = -1;  // open from the beginning: what cannot be made durable is not begun
  bool is_settled_ = false;
};

}  // namespace store
