// store/mark.h: what this machine remembers of a book's writer, outside the book. A book whose
// newest own entries do not fit it was copied or restored, and gets a new writer.
#pragma once

#include <cstdint>
#include <optional>
#include <string>

#include "logbook/entry.h"

namespace store {

struct Mark {
  logbook::WriterId writer;
  std::int64_t number = 0;  // 0: nothing written yet
  logbook::Digest digest{};
  bool operator==(const Mark&) const = default;
};

// Reads without waiting for other commands, so that it may be absent while one is writing.
std::optional<Mark> glance_at_mark(const std::string& state_folder, const logbook::RecordId& record,
                                   const logbook::WriterId& writer);

// The marks of one record on this machine, held alone while it lives: one small file for each
// writer, named after record and writer, so that neither the book's name nor its folder matters.
class Marks {
 public:
  // Waits a few seconds for other commands; then in_use. no_place_for_mark if the folder fails.
  Marks(const std::string& state_folder, const logbook::RecordId& record);
  ~Marks();
  Marks(const Marks&) = delete;
  Marks& operator=(const Marks&) = delete;

  // Absent if there is none or it cannot be read: the book then counts as a copy.
  std::optional<Mark> read(const logbook::WriterId& writer) const;
  // The mark of a new writer is on the disk when it returns. Later ones are left to the system,
  // which saves each command a flush: the end of a process loses nothing, and a power failure
  // within seconds of several commands costs a new writer and nothing else.
  void write(const Mark& mark) const;
  void remove(const logbook::WriterId& writer) const noexcept;

 private:
  std::string path_of(const logbook::WriterId& writer) const;
  std::string stem_;
  int lock_;
};

}  // namespace store
