#include "reckon/trend/inversions.h"

#include <algorithm>

namespace reckon::trend {

namespace {

using Sequence = std::vector<std::size_t>;

// Two neighbouring runs, each already in order.
struct Runs {
  std::size_t first;
  std::size_t middle;
  std::size_t end;
};

// The merging sort from the bottom up. Whenever a number of the right run goes first, it makes an
// inversion with all that are left of the left run.
class Merging {
 public:
  Merging(Sequence sequence, std::span<const std::size_t> wanted)
      : sequence_(std::move(sequence)), merged_(sequence_.size()), wanted_(wanted) {}

  Inversions run() {
    const std::size_t size = sequence_.size();
    for (std::size_t width = 1; width < size; width *= 2) {
      for (std::size_t first = 0; first < size; first += 2 * width) {
        merge({first, std::min(first + width, size), std::min(first + 2 * width, size)});
      }
      std::swap(sequence_, merged_);
    }
    return std::move(found_);
  }

 private:
  void merge(const Runs& runs) {
    std::size_t left = runs.first;
    std::size_t right = runs.middle;
    for (std::size_t place = runs.first; place < runs.end; ++place) {
      const bool takes_right =
          right < runs.end && (left == runs.middle || sequence_[right] < sequence_[left]);
      if (takes_right) note(left, runs.middle, right);
      merged_[place] = sequence_[takes_right ? right++ : left++];
    }
  }

  // What is still left of the left run is greater than the number at `right`.
  void note(std::size_t left, std::size_t middle, std::size_t right) {
    const std::size_t last = found_.count + (middle - left);
    while (next_ < wanted_.size() && wanted_[next_] < last) {
      const std::size_t greater = left + (wanted_[next_] - found_.count);
      found_.picked.push_back({sequence_[greater], sequence_[right]});
      ++next_;
    }
    found_.count = last;
  }

  Sequence sequence_;
  Sequence merged_;
  std::span<const std::size_t> wanted_;
  std::size_t next_ = 0;
  Inversions found_{};
};

}  // namespace

Inversions inversions(Sequence sequence, std::span<const std::size_t> wanted) {
  return Merging(std::move(sequence), wanted).run();
}

}  // namespace reckon::trend
