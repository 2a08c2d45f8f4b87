// report/refused.h: signatures on record that do not count, for check.
#pragma once

#include <string>
#include <vector>

#include "document/json.h"
#include "reckon/histories.h"

namespace report {

struct RefusedSignature {
  logbook::EntryId entry;  // that says it
  logbook::EntryId on;     // what was signed, in its newest words
  std::string sentence;
  bool wants_attention = false;  // for want of it work does not count
};

// Of everything that stands. One that was made good, by signing the newer words, is left out.
std::vector<RefusedSignature> refused_signatures(const reckon::Histories& histories,
                                                 const reckon::Standing& standing);
document::Json refused_json(const std::vector<RefusedSignature>& refused);

}  // namespace report
