// words/signings.h: how an entry was signed, why a signature does not count, and who signs.
#pragma once

#include <string>
#include <string_view>

#include "reckon/keyholders.h"
#include "reckon/standing.h"

namespace words {

// recorded, signed here, signed on paper.
std::string_view sign_state_word(reckon::SignState state);
// "signed here by "B. Quill" (K7QXM-140)", "signed on paper, page 12, by …", "recorded".
std::string signed_text(const reckon::StandingFact& fact);
// "the signature in K7QXM-140 does not count: its key had ended".
std::string refused_text(const reckon::SignatureOn& signature);
std::string_view why_not_text(reckon::Unsigned why_not);
// "Not counted: inspection "annual inspection" done on aircraft ZZ-KIT (K7QXM-131) is not signed."
std::string not_counted_text(const reckon::StandingFact& fact);

// The first eight digits of a key, by which people tell it apart.
std::string fingerprint(const logbook::PublicKey& key);
// certificate "A-1234", kind "mechanic".
std::string certificate_text(const std::string& certificate,
                             const std::optional<std::string>& kind);

}  // namespace words
