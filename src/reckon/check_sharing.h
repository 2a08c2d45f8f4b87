// reckon/check_sharing.h: whether the record says twice, and otherwise, how a life is shared among
// models whose limits differ.
#pragma once

#include <vector>

#include "reckon/check_names.h"

namespace reckon {

class SharingChecks {
 public:
  void add(const Placed& placed);
  void check(const Placed& placed, const NameChecks& names, Objections& objections) const;

 private:
  bool is_replaced(const Placed& placed) const;

  std::vector<Placed> said_;                  // each says how lives are shared
  std::vector<logbook::EntryName> replaced_;  // what they stand instead of
};

}  // namespace reckon
