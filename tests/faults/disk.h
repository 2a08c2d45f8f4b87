// tests/faults/disk.h: a disk that fails when it is told to. It stands between SQLite and the real
// files as the default file system of this process (sqlite.org/vfs.html), so that the program needs
// no hook for it. Nothing waits: a sync only settles the platter, and a pause passes at once.
#pragma once

#include <cstdint>
#include <memory>
#include <random>

#include "faults/platter.h"

namespace faults {

enum class Operation { open, read, write, truncate, sync, remove, lock };
constexpr std::size_t operations = 7;

// How much of a failing operation is done all the same.
enum class Extent { nothing, half, whole };

struct Fault {
  const char* name;
  Operation operation;
  int result;  // what SQLite is told
  Extent extent = Extent::nothing;
};

class Disk {
 public:
  Disk();
  ~Disk();
  Disk(const Disk&) = delete;
  Disk& operator=(const Disk&) = delete;

  // Nothing fails from here on; operations are counted anew.
  void mend();
  // The nth such operation from here on fails; for ever: and every one after it.
  void fail(const Fault& fault, std::int64_t nth, bool for_ever);
  // The power fails in the middle of the nth change (write, truncate, sync or remove) from here on;
  // from then on everything fails.
  void lose_power(std::int64_t nth);
  // True once the fault has struck.
  bool has_struck() const;
  // How many there were: of a kind, and changes of all kinds.
  std::int64_t count(Operation operation) const;
  std::int64_t changes() const;
  // The power is back: what is left of the files. Nobody may have them open.
  void restart(Loss loss, std::mt19937_64& random);

  struct Inside;

 private:
  std::unique_ptr<Inside> inside_;
};

}  // namespace faults
