#include "store/copies.h"

#include <fcntl.h>
#include <unistd.h>

#include <cerrno>
#include <fstream>
#include <optional>
#include <sstream>

#include "quantity/figure.h"
#include "sentence/frame.h"
#include "store/file.h"
#include "store/trouble.h"

namespace store {
namespace {

constexpr std::string_view elsewhere_word = "elsewhere";
constexpr std::string_view here_word = "here";

std::string file_of(const std::string& state_folder, const logbook::RecordId& record) {
  return state_folder + '/' + sentence::say_record_id(record) + ".copies";
}

// The path stands last, behind its length, so that a line that was cut off is none.
std::string say(const MadeCopy& copy) {
  const std::string path = copy.path.find('\n') == copy.path.npos ? copy.path : "";
  return quantity::say(copy.made) + ' ' +
         std::string(copy.is_elsewhere ? elsewhere_word : here_word) + ' ' +
         std::to_string(copy.place) + ' ' + sentence::say_digest(copy.digest) + ' ' +
         std::to_string(path.size()) + ' ' + path;
}

std::optional<MadeCopy> read(const std::string& line) {
  std::istringstream words(line);
  std::string made, where, place, digest, size, path;
  if (!(words >> made >> where >> place >> digest >> size)) return std::nullopt;
  words.get();
  std::getline(words, path);
  const auto instant = quantity::read_instant(made);
  const auto read_digest = sentence::read_digest(digest);
  if (!instant.is_read() || !read_digest) return std::nullopt;
  if (!quantity::is_all_digits(place) || place.size() > 18) return std::nullopt;
  const MadeCopy copy{instant.value(), where == elsewhere_word, quantity::value_of_digits(place),
                      *read_digest, path};
  return say(copy) == line ? std::optional(copy) : std::nullopt;
}

}  // namespace

std::vector<MadeCopy> made_copies(const std::string& state_folder,
                                  const logbook::RecordId& record) {
  std::vector<MadeCopy> copies;
  std::ifstream file(file_of(state_folder, record));
  for (std::string line; std::getline(file, line);) {
    if (const auto copy = read(line)) copies.push_back(*copy);
  }
  return copies;
}

void remember(const std::string& state_folder, const logbook::RecordId& record,
              const MadeCopy& copy) {
  try {
    make_folder(state_folder);
  } catch (const Trouble& trouble) {
    throw Trouble({logbook::TroubleKind::no_place_for_mark, state_folder, trouble.what().detail});
  }
  const std::string path = file_of(state_folder, record);
  const int descriptor = ::open(path.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
  if (descriptor < 0) fail(logbook::TroubleKind::no_place_for_mark, path, errno);
  // It begins with a line's end too, lest it continue a line that was cut off.
  const std::string line = '\n' + say(copy) + '\n';
  const ssize_t written = ::write(descriptor, line.data(), line.size());
  const bool is_done = written == static_cast<ssize_t>(line.size()) && ::fdatasync(descriptor) == 0;
  const int error = written < 0 ? errno : ENOSPC;
  ::close(descriptor);
  if (!is_done) fail(logbook::TroubleKind::no_place_for_mark, path, error);
  make_durable(state_folder);
}

}  // namespace store
