#include "command/signers.h"

#include <algorithm>

#include "reckon/signing.h"
#include "text/pieces.h"
#include "words/grammar.h"
#include "words/signings.h"

namespace command {

namespace {

using reckon::Holding;

Unanswerable unknown(const std::string& name) {
  return {words::fill("\"{}\" holds no certificate on record. Say first, for example: timeworn say "
                      "'person \"{}\" holds certificate \"A-1234\", kind \"mechanic\"'. Nothing "
                      "was saved.",
                      {name, name}),
          no_such};
}

Unanswerable has_ended(const Holding& holding) {
  return {words::fill("{} ended on {}. Nothing was saved.",
                      {holding.name.text, quantity::say(holding.ended->day)}),
          refused};
}

bool is_one_certificate(const Holding& a, const Holding& b) {
  return a.name == b.name && a.certificate == b.certificate && a.kind == b.kind;
}

Unanswerable several(const std::vector<Holding>& found) {
  std::vector<std::string> certificates;
  for (const Holding& one : found) {
    certificates.push_back(words::certificate_text(one.certificate, one.kind));
  }
  return {words::fill("{} holds {}. Say which with --certificate. Nothing was saved.",
                      {found.front().name.text, words::listed(certificates, "and")}),
          typed_wrongly};
}

}  // namespace

std::vector<Holding> holdings_of(const reckon::Standing& standing) {
  return reckon::holders_now(standing.facts, standing.knowledge).holdings();
}

std::variant<Holding, Unanswerable> find_signer(const std::vector<Holding>& holdings,
                                                const std::string& name,
                                                const std::optional<std::string>& certificate) {
  std::vector<Holding> found;
  const Holding* ended = nullptr;
  for (const Holding& holding : holdings) {
    const bool is_meant = text::upper(holding.name.text) == text::upper(name) &&
                          (!certificate || holding.certificate == *certificate);
    if (!is_meant) continue;
    if (holding.ended) {
      ended = &holding;
      continue;
    }
    const auto same = std::find_if(found.begin(), found.end(), [&](const Holding& one) {
      return is_one_certificate(one, holding);
    });
    if (same == found.end()) {
      found.push_back(holding);
    } else {
      same->keys.insert(same->keys.end(), holding.keys.begin(), holding.keys.end());
    }
  }
  if (found.empty()) return ended != nullptr ? has_ended(*ended) : unknown(name);
  if (found.size() > 1) return several(found);
  std::erase_if(found.front().keys, [](const reckon::KeyHeld& key) { return key.ended; });
  return found.front();
}

}  // namespace command
