// words/signings.h: how an entry was signed, why a signature does not count, and who signs.
#pragma once

#include <string>
#include <string_view>
#include <vector>

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
// "The signature in K7QXM-140 on K7QXM-131 does not count: its key had ended." With what follows
// from it, if work does not count for want of it.
std::string refused_on_text(const reckon::SignatureOn& signature, const reckon::StandingFact& fact,
                            bool is_wanted);
// "inspection "annual inspection" done on aircraft ZZ-KIT (K7QXM-131)".
std::string work_text(const reckon::StandingFact& fact);
// The sentence with its gap filled by these, and by the number of those that are not named.
std::string some_text(std::string_view sentence, std::vector<std::string> named, std::size_t all);
// "Not counted: inspection "annual inspection" done on aircraft ZZ-KIT (K7QXM-131) is not signed."
std::string not_counted_text(const reckon::StandingFact& fact);

// The first eight digits of a key, by which people tell it apart.
std::string fingerprint(const logbook::PublicKey& key);
// certificate "A-1234", kind "mechanic".
std::string certificate_text(const std::string& certificate,
                             const std::optional<std::string>& kind);

}  // namespace words
