#include "store/chain.h"

#include "seal/digest.h"
#include "sentence/frame.h"

namespace store {

logbook::Digest body_digest(const logbook::Frame& frame, std::string_view sentence) {
  const auto withheld = sentence::read_withheld(sentence);
  return withheld ? *withheld : seal::digest(sentence::body_preimage(frame, sentence));
}

logbook::Digest entry_digest(const logbook::Frame& frame, const Link& link) {
  const logbook::Digest body = body_digest(frame, link.sentence);
  return seal::digest(sentence::entry_preimage(frame, {link.record, body, link.previous}));
}

}  // namespace store
