#include "faults/calls.h"

#include <fcntl.h>
#include <poll.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <sys/vfs.h>
#include <unistd.h>

#include <cerrno>
#include <cstdarg>
#include <cstdio>

namespace faults {
namespace {

CallCounts counts{};
const CallFault* planned = nullptr;
long first = 0;
bool is_for_ever = false;
bool has_failed = false;

// The fault, if this call is to fail.
const CallFault* fault_of(Call call) {
  const long number = ++counts.at(static_cast<std::size_t>(call));
  if (planned == nullptr || planned->call != call) return nullptr;
  if (number != first && !(is_for_ever && number > first)) return nullptr;
  has_failed = true;
  return planned;
}

bool fails(Call call) {
  const CallFault* const fault = fault_of(call);
  if (fault != nullptr) errno = fault->error;
  return fault != nullptr;
}

// Bytes that are written all the same; below zero: the call fails outright.
ssize_t written_by(const CallFault& fault, std::size_t size) {
  if (fault.error == 0) return static_cast<ssize_t>((size + 1) / 2);
  errno = fault.error;
  return -1;
}

}  // namespace

void mend_calls() {
  counts = {};
  planned = nullptr;
  has_failed = false;
}

void fail_call(const CallFault& fault, long nth, bool for_ever) {
  mend_calls();
  planned = &fault;
  first = nth;
  is_for_ever = for_ever;
}

bool has_call_failed() { return has_failed; }
CallCounts counted_calls() { return counts; }

}  // namespace faults

// The system's own, and what stands in its place.
extern "C" {

using faults::Call;

int real_open(const char* path, int flags, ...) asm("__real_open");
int real_mkostemp(char* name, int flags) asm("__real_mkostemp");
int real_mkdir(const char* path, mode_t mode) asm("__real_mkdir");
int real_chmod(const char* path, mode_t mode) asm("__real_chmod");
int real_fchmod(int file, mode_t mode) asm("__real_fchmod");
ssize_t real_read(int file, void* bytes, std::size_t size) asm("__real_read");
ssize_t real_write(int file, const void* bytes, std::size_t size) asm("__real_write");
ssize_t real_pwrite(int file, const void* bytes, std::size_t size, off_t at) asm("__real_pwrite");
int real_fsync(int file) asm("__real_fsync");
int real_fdatasync(int file) asm("__real_fdatasync");
int real_close(int file) asm("__real_close");
int real_flock(int file, int how) asm("__real_flock");
int real_stat(const char* path, struct stat* status) asm("__real_stat");
int real_lstat(const char* path, struct stat* status) asm("__real_lstat");
int real_statfs(const char* path, struct statfs* system) asm("__real_statfs");
int real_access(const char* path, int how) asm("__real_access");
char* real_realpath(const char* path, char* found) asm("__real_realpath");
ssize_t real_readlink(const char* path, char* target, std::size_t size) asm("__real_readlink");
int real_link(const char* from, const char* to) asm("__real_link");
int real_rename(const char* from, const char* to) asm("__real_rename");
int real_renameat2(int from_folder, const char* from, int to_folder, const char* to,
                   unsigned how) asm("__real_renameat2");
int real_unlink(const char* path) asm("__real_unlink");

int our_open(const char* path, int flags, ...) asm("__wrap_open");
int our_open(const char* path, int flags, ...) {
  if (faults::fails(Call::open)) return -1;
  if ((flags & O_CREAT) == 0) return real_open(path, flags);
  va_list rest;
  va_start(rest, flags);
  const mode_t mode = va_arg(rest, mode_t);
  va_end(rest);
  return real_open(path, flags, mode);
}

int our_mkostemp(char* name, int flags) asm("__wrap_mkostemp");
int our_mkostemp(char* name, int flags) {
  return faults::fails(Call::mkostemp) ? -1 : real_mkostemp(name, flags);
}

int our_mkdir(const char* path, mode_t mode) asm("__wrap_mkdir");
int our_mkdir(const char* path, mode_t mode) {
  return faults::fails(Call::mkdir) ? -1 : real_mkdir(path, mode);
}

int our_chmod(const char* path, mode_t mode) asm("__wrap_chmod");
int our_chmod(const char* path, mode_t mode) {
  return faults::fails(Call::chmod) ? -1 : real_chmod(path, mode);
}

int our_fchmod(int file, mode_t mode) asm("__wrap_fchmod");
int our_fchmod(int file, mode_t mode) {
  return faults::fails(Call::fchmod) ? -1 : real_fchmod(file, mode);
}

ssize_t our_read(int file, void* bytes, std::size_t size) asm("__wrap_read");
ssize_t our_read(int file, void* bytes, std::size_t size) {
  return faults::fails(Call::read) ? -1 : real_read(file, bytes, size);
}

ssize_t our_write(int file, const void* bytes, std::size_t size) asm("__wrap_write");
ssize_t our_write(int file, const void* bytes, std::size_t size) {
  const faults::CallFault* const fault = faults::fault_of(Call::write);
  if (fault == nullptr) return real_write(file, bytes, size);
  const ssize_t written = faults::written_by(*fault, size);
  return written < 0 ? written : real_write(file, bytes, static_cast<std::size_t>(written));
}

ssize_t our_pwrite(int file, const void* bytes, std::size_t size, off_t at) asm("__wrap_pwrite");
ssize_t our_pwrite(int file, const void* bytes, std::size_t size, off_t at) {
  const faults::CallFault* const fault = faults::fault_of(Call::pwrite);
  if (fault == nullptr) return real_pwrite(file, bytes, size, at);
  const ssize_t written = faults::written_by(*fault, size);
  return written < 0 ? written : real_pwrite(file, bytes, static_cast<std::size_t>(written), at);
}

int our_fsync(int file) asm("__wrap_fsync");
int our_fsync(int file) { return faults::fails(Call::fsync) ? -1 : real_fsync(file); }

int our_fdatasync(int file) asm("__wrap_fdatasync");
int our_fdatasync(int file) { return faults::fails(Call::fdatasync) ? -1 : real_fdatasync(file); }

// close(2): the file is closed all the same.
int our_close(int file) asm("__wrap_close");
int our_close(int file) {
  const faults::CallFault* const fault = faults::fault_of(Call::close);
  const int result = real_close(file);
  if (fault == nullptr) return result;
  errno = fault->error;
  return -1;
}

int our_flock(int file, int how) asm("__wrap_flock");
int our_flock(int file, int how) { return faults::fails(Call::flock) ? -1 : real_flock(file, how); }

int our_stat(const char* path, struct stat* status) asm("__wrap_stat");
int our_stat(const char* path, struct stat* status) {
  return faults::fails(Call::stat) ? -1 : real_stat(path, status);
}

int our_lstat(const char* path, struct stat* status) asm("__wrap_lstat");
int our_lstat(const char* path, struct stat* status) {
  return faults::fails(Call::lstat) ? -1 : real_lstat(path, status);
}

int our_statfs(const char* path, struct statfs* system) asm("__wrap_statfs");
int our_statfs(const char* path, struct statfs* system) {
  return faults::fails(Call::statfs) ? -1 : real_statfs(path, system);
}

int our_access(const char* path, int how) asm("__wrap_access");
int our_access(const char* path, int how) {
  return faults::fails(Call::access) ? -1 : real_access(path, how);
}

char* our_realpath(const char* path, char* found) asm("__wrap_realpath");
char* our_realpath(const char* path, char* found) {
  return faults::fails(Call::realpath) ? nullptr : real_realpath(path, found);
}

ssize_t our_readlink(const char* path, char* target, std::size_t size) asm("__wrap_readlink");
ssize_t our_readlink(const char* path, char* target, std::size_t size) {
  return faults::fails(Call::readlink) ? -1 : real_readlink(path, target, size);
}

int our_link(const char* from, const char* to) asm("__wrap_link");
int our_link(const char* from, const char* to) {
  return faults::fails(Call::link) ? -1 : real_link(from, to);
}

int our_rename(const char* from, const char* to) asm("__wrap_rename");
int our_rename(const char* from, const char* to) {
  return faults::fails(Call::rename) ? -1 : real_rename(from, to);
}

int our_renameat2(int from_folder, ...) asm("__wrap_renameat2");
int our_renameat2(int from_folder, ...) {
  if (faults::fails(Call::renameat2)) return -1;
  va_list rest;
  va_start(rest, from_folder);
  const char* const from = va_arg(rest, const char*);
  const int to_folder = va_arg(rest, int);
  const char* const to = va_arg(rest, const char*);
  const unsigned how = va_arg(rest, unsigned);
  va_end(rest);
  return real_renameat2(from_folder, from, to_folder, to, how);
}

int our_unlink(const char* path) asm("__wrap_unlink");
int our_unlink(const char* path) { return faults::fails(Call::unlink) ? -1 : real_unlink(path); }

// Nothing waits.
int our_poll(struct pollfd* files, nfds_t count, int milliseconds) asm("__wrap_poll");
int our_poll(struct pollfd* /*files*/, nfds_t /*count*/, int /*milliseconds*/) { return 0; }

}  // extern "C"
