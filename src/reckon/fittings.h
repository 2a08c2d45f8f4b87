// reckon/fittings.h: where every thing was fitted, and on which aircraft, and in which of its
// places, it rode meanwhile: a part in a module in an engine moves with it, any depth.
#pragma once

#include <map>
#include <optional>
#include <vector>

#include "reckon/timeline.h"

namespace reckon {

// A time of a thing on one aircraft: it uses what the aircraft's place used after from up to to.
struct Ride {
  const Ledger* ledger = nullptr;
  logbook::PlaceName place;  // of the aircraft, at the root
  Mark from;
  std::optional<Mark> to;
  std::size_t stay = 0;               // which of the thing's own stays
  std::vector<logbook::Thing> hosts;  // its host first, the aircraft last
};

class Fittings {
 public:
  // Keeps references to the timeline's ledgers.
  explicit Fittings(const Timeline& timeline);

  const std::vector<Stay>& stays(const logbook::Thing& thing) const;  // oldest first
  const std::vector<Ride>& rides(const logbook::Thing& thing) const;
  const std::vector<logbook::Thing>& ever_in(const logbook::Thing& host) const;
  const std::vector<Question>& questions() const { return questions_; }

 private:
  void fit(const WorkEvent& event, const logbook::Fitted& fitted);
  void remove(const WorkEvent& event, const logbook::Removed& removed);
  void ask_about_second_fitting(const Stay& stay);
  void ride(const logbook::Thing& thing);
  void ride_along(const Stay& stay, std::size_t number, std::vector<Ride>& rides);

  const Timeline& timeline_;
  std::map<logbook::Thing, std::vector<Stay>> stays_;
  std::map<logbook::Thing, std::vector<logbook::Thing>> inside_;
  std::map<logbook::Thing, std::vector<Ride>> rides_;
  std::vector<Question> questions_;
};

}  // namespace reckon
