#include "store/chain.h"

#include "seal/digest.h"
#include "sentence/frame.h"

namespace store {

logbook::Digest entry_digest(const logbook::Frame& frame, const Link& link) {
  const auto withheld = sentence::read_withheld(link.sentence);
  const logbook::Digest body =
      withheld ? *withheld : seal::digest(sentence::body_preimage(frame, link.sentence));
  return seal::digest(sentence::entry_preimage(frame, {link.record, body, link.previous}));
}

}  // namespace store
