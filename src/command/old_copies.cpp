#include "command/old_copies.h"

#include <algorithm>
#include <filesystem>
#include <optional>
#include <system_error>
#include <utility>

#include "quantity/figure.h"
#include "store/book.h"
#include "store/file.h"
#include "store/place.h"

namespace command {

namespace {

namespace files = std::filesystem;

constexpr std::string_view copy_ending = ".db";

// Without a state folder: no mark speaks for a copy.
store::Book opened(const std::string& path) {
  return store::Book::open(path, store::Access::prove, {{}, "", {}, {}});
}

enum class Worth { replaced, needed, of_another };

// A copy of ours that the new one replaces: of this book, whole, and with no entry that the new one
// lacks.
Worth worth(const std::string& path, const store::Book& book, const store::Copied& newest) {
  if (store::is_same_file(path, book.path())) return Worth::of_another;
  try {
    const store::Book old = opened(path);
    if (old.record() != book.record() || old.writer() != book.writer()) return Worth::of_another;
    if (!old.against_copy(store::Depth::quick).empty()) return Worth::needed;
    const auto there = old.entry_ids();
    const auto& here = newest.held;
    const bool is_within = std::includes(here.begin(), here.end(), there.begin(), there.end());
    return is_within ? Worth::replaced : Worth::needed;
  } catch (const store::Trouble&) {
    return Worth::needed;
  }
}

// When a copy was made, by its name; several of one second are counted.
struct Stamp {
  std::string instant;  // 20260304T101112Z
  std::int64_t count = 1;
  auto operator<=>(const Stamp&) const = default;
};

// What compact and copy write between stem and ending.
std::optional<Stamp> read_stamp(std::string_view text) {
  constexpr std::string_view form = "ddddddddTddddddZ";
  if (text.size() < form.size()) return std::nullopt;
  for (std::size_t i = 0; i < form.size(); ++i) {
    const bool fits = form[i] == 'd' ? quantity::is_digit(text[i]) : form[i] == text[i];
    if (!fits) return std::nullopt;
  }
  Stamp stamp{std::string(text.substr(0, form.size())), 1};
  const std::string_view count = text.substr(form.size());
  if (count.empty()) return stamp;
  const bool is_count =
      count.size() <= 3 && count.front() == '-' && quantity::is_all_digits(count.substr(1));
  if (!is_count) return std::nullopt;
  stamp.count = quantity::value_of_digits(count.substr(1));
  return stamp;
}

using Copy = std::pair<Stamp, std::string>;  // with its name

// The copies in the folder by our own names, newest first.
std::vector<Copy> copies_in(const std::string& folder, const std::string& begins) {
  std::vector<Copy> found;
  std::error_code trouble;
  for (files::directory_iterator file(folder, trouble), end; !trouble && file != end;
       file.increment(trouble)) {
    const std::string name = file->path().filename().string();
    const bool is_framed = name.starts_with(begins) && name.ends_with(copy_ending) &&
                           name.size() > begins.size() + copy_ending.size();
    std::error_code unknown;
    if (!is_framed || !files::is_regular_file(file->symlink_status(unknown))) continue;
    const std::size_t size = name.size() - begins.size() - copy_ending.size();
    const auto stamp = read_stamp(std::string_view(name).substr(begins.size(), size));
    if (stamp) found.emplace_back(*stamp, name);
  }
  std::sort(found.rbegin(), found.rend());
  return found;
}

}  // namespace

std::string free_copy_name(const std::string& folder, const std::string& begins,
                           const std::string& instant) {
  const std::string path = folder + "/" + begins + instant;
  for (const auto& [stamp, name] : copies_in(folder, begins)) {
    if (stamp.instant != instant) continue;
    return path + "-" + std::to_string(stamp.count + 1) + std::string(copy_ending);
  }
  return path + std::string(copy_ending);
}

RemovedCopies remove_older(const store::Book& book, const store::Copied& newest,
                           const std::string& begins, std::size_t least) {
  const std::string folder = store::folder_of(newest.path);
  RemovedCopies result;
  std::size_t left = 1;
  for (const auto& [stamp, name] : copies_in(folder, begins)) {
    const std::string path = folder + "/" + name;
    // By its name: a clock that was set back makes no new copy an old one.
    if (store::is_same_file(path, newest.path)) continue;
    const Worth what = worth(path, book, newest);
    if (what == Worth::of_another) continue;
    // It is told and stays, and none of those that stand for the book is taken away in its place.
    if (what == Worth::needed) {
      result.kept.push_back(name);
      continue;
    }
    if (left < least) {
      ++left;
      continue;
    }
    std::error_code trouble;
    if (files::remove(path, trouble)) {
      ++result.count;
    } else {
      result.failed.push_back(name);
    }
  }
  if (result.count > 0) store::make_durable(folder);
  return result;
}

}  // namespace command
