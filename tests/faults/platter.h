// tests/faults/platter.h: what a disk surely holds and what it would lose if the power failed now.
// Writes since a file's last sync may be there, may not be, in any order, and in sectors of 512
// bytes (sqlite.org/atomiccommit.html, "Hardware Assumptions").
#pragma once

#include <cstdint>
#include <map>
#include <optional>
#include <random>
#include <string>
#include <vector>

namespace faults {

using Bytes = std::vector<std::uint8_t>;

// What becomes of the changes that were not synced.
enum class Loss {
  all,   // none of them arrived
  none,  // all of them did
  some,  // each one did or did not, so that later ones may stand without earlier ones
  torn,  // each sector of each one did or did not; what no write reached holds rubbish
};

class Platter {
 public:
  // From here on everything that is on the real disk is surely there.
  void settle() { files_.clear(); }
  // The first sight of a file that is there.
  void meet(const std::string& path, Bytes content);
  bool has_met(const std::string& path) const { return files_.contains(path); }
  void create(const std::string& path);
  void write(const std::string& path, std::size_t offset, Bytes bytes);
  void truncate(const std::string& path, std::size_t size);
  void sync(const std::string& path);
  // is_sure: the folder was synced too.
  void remove(const std::string& path, bool is_sure);
  // Puts on the real disk what the loss of power leaves. Nobody may have the files open.
  void leave(Loss loss, std::mt19937_64& random);

 private:
  struct Change {
    std::size_t offset = 0;
    Bytes bytes;
    bool is_cut = false;  // the file was cut at the offset
  };
  struct File {
    std::optional<Bytes> sure;  // absent: its name may be lost too
    std::vector<Change> since;
    bool is_removed = false;  // its name may still come back
  };
  static void bring(const File& file, const std::string& path, Loss loss, std::mt19937_64& random);
  std::map<std::string, File> files_;
};

}  // namespace faults
