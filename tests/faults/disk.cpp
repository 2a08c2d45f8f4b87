#include "faults/disk.h"

#include <sqlite3.h>

#include <array>
#include <cstring>
#include <optional>

namespace faults {

namespace {

// What SQLite is told of each operation when the power is off.
int without_power(Operation operation) {
  constexpr std::array<int, operations> results = {
      SQLITE_CANTOPEN,    SQLITE_IOERR_READ,   SQLITE_IOERR_WRITE, SQLITE_IOERR_TRUNCATE,
      SQLITE_IOERR_FSYNC, SQLITE_IOERR_DELETE, SQLITE_IOERR_LOCK};
  return results[static_cast<std::size_t>(operation)];
}

bool is_change(Operation operation) {
  return operation == Operation::write || operation == Operation::truncate ||
         operation == Operation::sync || operation == Operation::remove;
}

}  // namespace

// What is to become of one operation.
struct Fate {
  int result = SQLITE_OK;
  Extent extent = Extent::whole;
  bool is_last = false;  // the power fails in it
};

struct Disk::Inside {
  Fate fate_of(Operation operation);

  sqlite3_vfs* real = nullptr;
  sqlite3_vfs vfs{};
  Platter platter;
  std::optional<Fault> fault;
  std::int64_t nth = 0;
  bool for_ever = false;
  std::array<std::int64_t, operations> counts{};
  std::int64_t changes = 0;  // writes, truncates, syncs, removes
  std::int64_t last_change = 0;
  bool is_off = false;
  bool has_struck = false;
};

Fate Disk::Inside::fate_of(Operation operation) {
  const std::int64_t count = ++counts[static_cast<std::size_t>(operation)];
  if (is_off) return {without_power(operation), Extent::nothing, false};
  if (is_change(operation) && ++changes == last_change) {
    is_off = has_struck = true;
    return {without_power(operation), Extent::nothing, true};
  }
  if (!fault || fault->operation != operation) return {};
  if (count < nth || (count > nth && !for_ever)) return {};
  has_struck = true;
  return {fault->result, fault->extent, false};
}

namespace {

// SQLite hands out room for this and, behind it, for the real file.
struct OpenFile {
  sqlite3_file base;
  Disk::Inside* disk;
  const char* path;  // of SQLite, until the file is closed; null for a passing file
};
constexpr int own_size = (sizeof(OpenFile) + 15) / 16 * 16;

OpenFile& ours(sqlite3_file* file) { return *reinterpret_cast<OpenFile*>(file); }
sqlite3_file* real(sqlite3_file* file) {
  return reinterpret_cast<sqlite3_file*>(reinterpret_cast<char*>(file) + own_size);
}
const sqlite3_io_methods& way(sqlite3_file* file) { return *real(file)->pMethods; }
Disk::Inside& disk_of(sqlite3_vfs* vfs) { return *static_cast<Disk::Inside*>(vfs->pAppData); }

int close(sqlite3_file* file) { return way(file).xClose(real(file)); }

int read(sqlite3_file* file, void* to, int size, sqlite3_int64 at) {
  const Fate fate = ours(file).disk->fate_of(Operation::read);
  return fate.result != SQLITE_OK ? fate.result : way(file).xRead(real(file), to, size, at);
}

int write(sqlite3_file* file, const void* from, int size, sqlite3_int64 at) {
  OpenFile& own = ours(file);
  const Fate fate = own.disk->fate_of(Operation::write);
  const int done = fate.extent == Extent::whole || fate.is_last ? size
                   : fate.extent == Extent::half                ? size / 2
                                                                : 0;
  if (done > 0 && own.path != nullptr) {
    const auto* const bytes = static_cast<const std::uint8_t*>(from);
    own.disk->platter.write(own.path, static_cast<std::size_t>(at), Bytes(bytes, bytes + done));
  }
  if (done == 0 || fate.is_last) return fate.result;
  const int result = way(file).xWrite(real(file), from, done, at);
  return fate.result != SQLITE_OK ? fate.result : result;
}

int truncate(sqlite3_file* file, sqlite3_int64 size) {
  OpenFile& own = ours(file);
  const Fate fate = own.disk->fate_of(Operation::truncate);
  const bool is_done = fate.extent == Extent::whole || fate.is_last;
  if (is_done && own.path != nullptr) {
    own.disk->platter.truncate(own.path, static_cast<std::size_t>(size));
  }
  return fate.result != SQLITE_OK ? fate.result : way(file).xTruncate(real(file), size);
}

int sync(sqlite3_file* file, int) {
  OpenFile& own = ours(file);
  const Fate fate = own.disk->fate_of(Operation::sync);
  if (fate.result == SQLITE_OK && own.path != nullptr) own.disk->platter.sync(own.path);
  return fate.result;
}

int size_of(sqlite3_file* file, sqlite3_int64* size) {
  return way(file).xFileSize(real(file), size);
}

int lock(sqlite3_file* file, int level) {
  const Fate fate = ours(file).disk->fate_of(Operation::lock);
  return fate.result != SQLITE_OK ? fate.result : way(file).xLock(real(file), level);
}
int unlock(sqlite3_file* file, int level) { return way(file).xUnlock(real(file), level); }
int is_reserved(sqlite3_file* file, int* out) {
  return way(file).xCheckReservedLock(real(file), out);
}
int control(sqlite3_file* file, int what, void* with) {
  return way(file).xFileControl(real(file), what, with);
}
int sector_size(sqlite3_file* file) { return way(file).xSectorSize(real(file)); }
int traits(sqlite3_file* file) { return way(file).xDeviceCharacteristics(real(file)); }

// Version 1: no shared memory and no mapping, which a book does not use either.
constexpr sqlite3_io_methods methods = {
    1,       close,       read,   write, truncate, sync, size_of, lock, unlock, is_reserved,
    control, sector_size, traits, {},    {},       {},   {},      {},   {}};

Bytes content_of(sqlite3_file* file) {
  sqlite3_int64 size = 0;
  file->pMethods->xFileSize(file, &size);
  Bytes content(static_cast<std::size_t>(size));
  if (size > 0) file->pMethods->xRead(file, content.data(), static_cast<int>(size), 0);
  return content;
}

// What SQLite asks for when it opens a file.
struct Opening {
  sqlite3_vfs* vfs;
  const char* path;
  sqlite3_file* file;
  int flags;
  int* got;
};

int open(const Opening& opening) {
  const auto& [vfs, path, file, flags, got] = opening;
  Disk::Inside& disk = disk_of(vfs);
  OpenFile& own = ours(file);
  own = {{nullptr}, &disk, path};
  const Fate fate = disk.fate_of(Operation::open);
  if (fate.result != SQLITE_OK) return fate.result;
  int is_there = 0;
  if (path != nullptr) disk.real->xAccess(disk.real, path, SQLITE_ACCESS_EXISTS, &is_there);
  const int result = disk.real->xOpen(disk.real, path, real(file), flags, got);
  if (real(file)->pMethods != nullptr) own.base.pMethods = &methods;
  if (result != SQLITE_OK || path == nullptr) return result;
  if (is_there == 0) {
    disk.platter.create(path);
  } else if (!disk.platter.has_met(path)) {
    disk.platter.meet(path, content_of(real(file)));
  }
  return result;
}

int remove(sqlite3_vfs* vfs, const char* path, int syncs_folder) {
  Disk::Inside& disk = disk_of(vfs);
  const Fate fate = disk.fate_of(Operation::remove);
  const bool is_done = fate.extent == Extent::whole;
  if (is_done || fate.is_last) {
    disk.platter.remove(path, fate.result == SQLITE_OK && syncs_folder != 0);
  }
  const int result = is_done ? disk.real->xDelete(disk.real, path, 0) : SQLITE_OK;
  return fate.result != SQLITE_OK ? fate.result : result;
}

int access(sqlite3_vfs* vfs, const char* path, int what, int* out) {
  return disk_of(vfs).real->xAccess(disk_of(vfs).real, path, what, out);
}
int full_name(sqlite3_vfs* vfs, const char* path, int size, char* out) {
  return disk_of(vfs).real->xFullPathname(disk_of(vfs).real, path, size, out);
}
int pass(sqlite3_vfs*, int microseconds) { return microseconds; }

}  // namespace

Disk::Disk() : inside_(std::make_unique<Inside>()) {
  inside_->real = sqlite3_vfs_find(nullptr);
  sqlite3_vfs& vfs = inside_->vfs;
  vfs = *inside_->real;
  vfs.szOsFile += own_size;
  vfs.zName = "faults";
  vfs.pAppData = inside_.get();
  vfs.xOpen = [](sqlite3_vfs* own, const char* path, sqlite3_file* file, int flags, int* got) {
    return open({own, path, file, flags, got});
  };
  vfs.xDelete = remove;
  vfs.xAccess = access;
  vfs.xFullPathname = full_name;
  vfs.xSleep = pass;
  sqlite3_vfs_register(&vfs, 1);
}

Disk::~Disk() {
  sqlite3_vfs_register(inside_->real, 1);
  sqlite3_vfs_unregister(&inside_->vfs);
}

void Disk::mend() {
  inside_->fault.reset();
  inside_->counts = {};
  inside_->changes = inside_->last_change = 0;
  inside_->is_off = inside_->has_struck = false;
}

void Disk::fail(const Fault& fault, std::int64_t nth, bool for_ever) {
  mend();
  inside_->platter.settle();
  inside_->fault = fault;
  inside_->nth = nth;
  inside_->for_ever = for_ever;
}

void Disk::lose_power(std::int64_t nth) {
  mend();
  inside_->platter.settle();
  inside_->last_change = nth;
}

bool Disk::has_struck() const { return inside_->has_struck; }
std::int64_t Disk::count(Operation operation) const {
  return inside_->counts[static_cast<std::size_t>(operation)];
}
std::int64_t Disk::changes() const { return inside_->changes; }

void Disk::restart(Loss loss, std::mt19937_64& random) {
  mend();
  inside_->platter.leave(loss, random);
}

}  // namespace faults
