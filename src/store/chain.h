// store/chain.h: the digests that tie an entry to its words and to the entry before it.
#pragma once

#include <string_view>

#include "logbook/entry.h"

namespace store {

// What an entry's digest is made of besides its frame. sentence stands as in the record line, so it
// may be the mark of a withheld body.
struct Link {
  logbook::RecordId record;
  logbook::Digest previous;
  std::string_view sentence;
};
// Of what the entry is about and says; a withheld body's digest stands in its place.
logbook::Digest body_digest(const logbook::Frame& frame, std::string_view sentence);
logbook::Digest entry_digest(const logbook::Frame& frame, const Link& link);

}  // namespace store
