#include "words/signings.h"

#include "words/grammar.h"
#include "words/names.h"
#include "words/words.h"

namespace words {

namespace {

using reckon::SignatureOn;
using reckon::SignState;
using reckon::StandingFact;
using reckon::Unsigned;

std::string signature_text(const SignatureOn& signature) {
  const std::string by = in_quotes(signature.fact->by.text);
  const std::string entry = entry_name(signature.entry);
  if (signature.fact->how == logbook::SignedHow::with_key) {
    return fill("signed here by {} ({})", {by, entry});
  }
  if (!signature.fact->page) return fill("signed on paper by {} ({})", {by, entry});
  return fill("signed on paper, page {}, by {} ({})", {*signature.fact->page, by, entry});
}

}  // namespace

std::string_view sign_state_word(SignState state) {
  switch (state) {
    case SignState::recorded:
      return "recorded";
    case SignState::signed_on_paper:
      return "signed on paper";
    case SignState::signed_here:
      return "signed here";
  }
  return "recorded";
}

std::string signed_text(const StandingFact& fact) {
  std::vector<std::string> signatures;
  std::vector<std::string> refused;
  for (const SignatureOn& signature : fact.signatures) {
    const bool counts = signature.why_not == Unsigned::nothing;
    (counts ? signatures : refused)
        .push_back(counts ? signature_text(signature) : refused_text(signature));
  }
  if (!signatures.empty()) return listed(signatures, "and");
  if (refused.empty()) return "recorded";
  return "recorded; " + listed(refused, "and");
}

std::string_view why_not_text(Unsigned why_not) {
  switch (why_not) {
    case Unsigned::nothing:
      return "";
    case Unsigned::not_proved:
      return "it fits no key on record for this person";
    case Unsigned::not_on_record:
      return "no such person with this certificate and key was on record";
    case Unsigned::key_ended:
      return "its key had ended";
    case Unsigned::person_ended:
      return "the person no longer took part";
    case Unsigned::changed_since:
      return "the entry was corrected since";
  }
  return "";
}

std::string refused_text(const SignatureOn& signature) {
  return fill("the signature in {} does not count: {}",
              {entry_name(signature.entry), why_not_text(signature.why_not)});
}

std::string work_text(const StandingFact& fact) {
  const std::string entry = entry_name(fact.chain.back());
  if (const auto* done = std::get_if<logbook::Done>(&fact.said->fact)) {
    return fill("{} done on {} ({})",
                {written_task(done->class_, done->name), thing_name(done->thing), entry});
  }
  if (const auto* next = std::get_if<logbook::NextDue>(&fact.said->fact)) {
    return fill("the stated due point of {} on {} ({})",
                {written_task(next->class_, next->name), thing_name(next->thing), entry});
  }
  if (const auto* overhauled = std::get_if<logbook::Overhauled>(&fact.said->fact)) {
    return fill("overhaul of {} ({})", {thing_name(overhauled->thing), entry});
  }
  return entry;
}

std::string some_text(std::string_view sentence, std::vector<std::string> named, std::size_t all) {
  const std::size_t more = all - named.size();
  if (more > 0) named.push_back(std::to_string(more) + " more");
  return fill(sentence, {listed(named, "and")});
}

std::string refused_on_text(const SignatureOn& signature, const StandingFact& fact,
                            bool is_wanted) {
  const std::string refused = fill("The signature in {} on {} does not count: {}.",
                                   {entry_name(signature.entry), entry_name(fact.chain.back()),
                                    why_not_text(signature.why_not)});
  if (!is_wanted) return refused;
  return refused + fill(" So {} does not count until it is signed again.", {work_text(fact)});
}

std::string not_counted_text(const StandingFact& fact) {
  const std::string work = work_text(fact);
  for (const SignatureOn& signature : fact.signatures) {
    if (signature.why_not == Unsigned::nothing) continue;
    return fill("Not counted: {}; {}. Sign it again, and it counts.",
                {work, refused_text(signature)});
  }
  if (fact.sign_state == SignState::signed_on_paper) {
    return fill("Not counted: {} is signed on paper only. Sign it here, and it counts.", {work});
  }
  return fill("Not counted: {} is not signed. Sign it, and it counts.", {work});
}

std::string fingerprint(const logbook::PublicKey& key) {
  constexpr std::size_t digits = 8;
  return key.text.substr(0, digits);
}

std::string certificate_text(const std::string& certificate,
                             const std::optional<std::string>& kind) {
  if (!kind) return fill("certificate {}", {in_quotes(certificate)});
  return fill("certificate {}, kind {}", {in_quotes(certificate), in_quotes(*kind)});
}

}  // namespace words
