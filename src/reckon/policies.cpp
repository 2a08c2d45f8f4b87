#include "reckon/policies.h"

namespace reckon {

Policy policy_for(const View& view, const logbook::Thing& thing) {
  Policy policy;
  for (const SharingInForce& rule : view.rules.sharings) {
    if (!reaches(view.histories, *rule.stated.scope, thing)) continue;
    const bool is_other = !policy.said.empty() && policy.sharing != rule.stated.how;
    policy.sharing = is_other ? Sharing::disputed : rule.stated.how;
    policy.said.push_back(rule.fact->root);
  }
  return policy;
}

}  // namespace reckon
