#include "report/refused.h"

#include "reckon/waiting.h"
#include "words/signings.h"
#include "words/words.h"

namespace report {

namespace {

bool is_made_good(const reckon::SignatureOn& signature, const reckon::StandingFact& fact) {
  return signature.why_not == reckon::Unsigned::changed_since && fact.is_counted &&
         fact.sign_state != reckon::SignState::recorded;
}

}  // namespace

std::vector<RefusedSignature> refused_signatures(const reckon::Histories& histories,
                                                 const reckon::Standing& standing) {
  std::vector<RefusedSignature> refused;
  for (const reckon::StandingFact& fact : standing.facts) {
    for (const reckon::SignatureOn& signature : fact.signatures) {
      if (signature.why_not == reckon::Unsigned::nothing || is_made_good(signature, fact)) continue;
      const bool is_wanted = reckon::waits(fact, histories, standing);
      refused.push_back({signature.entry, fact.chain.back(),
                         words::refused_on_text(signature, fact, is_wanted), is_wanted});
    }
  }
  return refused;
}

document::Json refused_json(const std::vector<RefusedSignature>& refused) {
  document::Json array = document::Json::array();
  for (const RefusedSignature& one : refused) {
    document::Json object = document::Json::object();
    object.set("entry", words::entry_name(one.entry)).set("on", words::entry_name(one.on));
    object.set("sentence", one.sentence);
    array.add(object.set("wants_attention", one.wants_attention));
  }
  return array;
}

}  // namespace report
