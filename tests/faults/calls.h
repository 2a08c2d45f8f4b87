// tests/faults/calls.h: the calls to the system by which the program itself works on files, beside
// SQLite: marks, copies, pages, folders. Each can be made to fail. They are taken at link time
// (ld(1), --wrap), so that the program needs no hook and SQLite calls the system as ever.
#pragma once

#include <array>
#include <cstddef>

namespace faults {

enum class Call {
  open,
  mkostemp,
  mkdir,
  chmod,
  fchmod,
  read,
  write,
  pwrite,
  fsync,
  fdatasync,
  close,
  flock,
  stat,
  lstat,
  statfs,
  access,
  realpath,
  readlink,
  link,
  rename,
  renameat2,
  unlink
};
constexpr std::size_t calls = 22;

struct CallFault {
  const char* name;
  Call call;
  int error;  // what errno is set to; 0: a write does half and says so
};

// Nothing fails from here on; calls are counted anew.
void mend_calls();
// The nth call of the kind fails, or each from the nth on.
void fail_call(const CallFault& fault, long nth, bool for_ever);
bool has_call_failed();
using CallCounts = std::array<long, calls>;
CallCounts counted_calls();

}  // namespace faults
