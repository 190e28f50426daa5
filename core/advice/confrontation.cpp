// SPDX-License-Identifier: MIT
#include "advice/confrontation.h"

#include <algorithm>
#include <string_view>

#include "stocking/encounter.h"

namespace shoalwright {

namespace {

/// Whether one does to the other what the rule is about.
bool does_to(std::string_view rule, const Species& one, const Species& other) {
  if (rule == "predation") return swallowed(one, other) >= swallow_watch_from || is_biter(one) || may_choke_on(one, other);
  if (rule == "invertebrate-predation") return small_fry_beside(one, other) == SmallFry::grown;
  if (rule == "fin-nipping") return nips(one) && offers_fins(other);
  if (rule != "temperament") return false;
  return takes_for_rival(one, other) || rasps_flanks(one, other) ||
         (one.temper.to_others == Toward::aggressive && share_a_level(one, other)) ||
         (one.temper.to_others == Toward::semi && is_weaker(other, one));
}

}  // namespace

std::optional<Confrontation> confrontation_of(const Finding& finding, const std::vector<Kept>& stock) {
  std::vector<const Species*> kinds;
  for (const Kept& kept : stock)
    if (kept.species && std::find(finding.species.begin(), finding.species.end(), kept.id) != finding.species.end())
      kinds.push_back(kept.species);
  std::optional<Confrontation> worst;
  double most = -1;
  for (const Species* one : kinds)
    for (const Species* other : kinds) {
      if (one == other || !does_to(finding.rule, *one, *other)) continue;
      const double by_mouth = swallowed(*one, *other);
      const double degree = by_mouth > 0 ? 1e3 + by_mouth : one->size.adult_tl_cm / std::max(other->size.adult_tl_cm, 0.1);
      if (degree <= most) continue;
      most = degree;
      worst = Confrontation{one, other, {}, {}, {}};
    }
  if (!worst || finding.rule != "predation") return worst;
  const double reach = swallowed(*worst->doer, *worst->other);
  const std::optional<Swallower> mouth = mouth_of(*worst->doer);
  if (!(reach > 0) || !mouth) return worst;
  worst->opens_cm = mouth->gape_share * worst->doer->size.adult_tl_cm;
  worst->takes_cm = reach * worst->other->size.adult_tl_cm;
  worst->deep_cm = depth_share_of(*worst->other) * worst->other->size.adult_tl_cm;
  return worst;
}

}  // namespace shoalwright
