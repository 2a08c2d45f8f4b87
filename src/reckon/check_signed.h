// reckon/check_signed.h: signatures, people and keys as they are said: whether what would be signed
// is there as it is named, and whether the person and the key are on record.
#pragma once

#include "reckon/check_fact.h"
#include "reckon/standing.h"

namespace reckon {

bool is_about_signing(const logbook::Fact& fact);
// A signature with a key is made by its own command, never said: signature_needs_key.
void check_signing(const logbook::Said& said, const Standing& standing, Objections& objections);
// Signatures, keys and ends are struck and said anew, never corrected.
void check_corrected_signing(const logbook::Said& instead, const StandingFact& old,
                             Objections& objections);

}  // namespace reckon
