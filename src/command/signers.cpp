#include "command/signers.h"

#include <algorithm>
#include <set>

#include "reckon/signing.h"
#include "text/unicode.h"
#include "words/grammar.h"
#include "words/names.h"
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
  return {words::fill("{} no longer takes part since {}. Nothing was saved.",
                      {holding.name.text, quantity::say(holding.ended->day)}),
          refused};
}

bool is_one_certificate(const Holding& a, const Holding& b) {
  return a.name == b.name && a.certificate == b.certificate && a.kind == b.kind;
}

// Names that differ only in their capital letters.
Unanswerable several_names(const std::set<std::string>& names) {
  return {words::fill("{} are on record. Write the name as it stands there. Nothing was saved.",
                      {words::listed({names.begin(), names.end()}, "and")}),
          typed_wrongly};
}

// Certificates of other kinds may bear one number.
Unanswerable several(const std::vector<Holding>& found) {
  std::set<std::string> names;
  for (const Holding& one : found) names.insert(words::in_quotes(one.name.text));
  if (names.size() > 1) return several_names(names);
  std::vector<std::string> certificates;
  bool is_one_number = true;
  bool has_no_kind = false;
  for (const Holding& one : found) {
    certificates.push_back(words::certificate_text(one.certificate, one.kind));
    is_one_number = is_one_number && one.certificate == found.front().certificate;
    has_no_kind = has_no_kind || !one.kind;
  }
  std::string how = is_one_number ? "--kind" : "--certificate";
  if (is_one_number && has_no_kind) how += ", or with --kind '' the one without a kind";
  return {words::fill("{} holds {}. Say which with {}. Nothing was saved.",
                      {found.front().name.text, words::listed(certificates, "and"), how}),
          typed_wrongly};
}

bool is_named(const Holding& holding, const SignerNamed& named, bool is_exact) {
  const bool is_name = is_exact ? holding.name.text == named.name
                                : text::fold(holding.name.text) == text::fold(named.name);
  return is_name && (!named.certificate || holding.certificate == *named.certificate) &&
         (!named.kind || holding.kind.value_or("") == *named.kind);
}

}  // namespace

std::vector<Holding> holdings_of(const reckon::Standing& standing) {
  return reckon::holders_now(standing.facts, standing.knowledge).holdings();
}

SignerNamed signer_named(const std::string& name, const Typed& typed) {
  return {name, typed.text("--certificate"), typed.text("--kind")};
}

std::variant<Holding, Unanswerable> find_signer(const std::vector<Holding>& holdings,
                                                const SignerNamed& named) {
  std::vector<Holding> found;
  const Holding* ended = nullptr;
  // Where two people are told apart by capital letters only, the name as it was typed is meant.
  const bool is_exact = std::any_of(holdings.begin(), holdings.end(), [&](const Holding& holding) {
    return holding.name.text == named.name;
  });
  for (const Holding& holding : holdings) {
    if (!is_named(holding, named, is_exact)) continue;
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
  if (found.empty()) return ended != nullptr ? has_ended(*ended) : unknown(named.name);
  if (found.size() > 1) return several(found);
  std::erase_if(found.front().keys, [](const reckon::KeyHeld& key) { return key.ended; });
  return found.front();
}

}  // namespace command
