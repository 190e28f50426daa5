// SPDX-License-Identifier: MIT
#include "advice/roads.h"

#include <algorithm>
#include <set>

#include "stocking/stock.h"

namespace shoalwright {

namespace {

double past(double value, const Range& range) {
  if (value > range.high) return value - range.high;
  return value < range.low ? value - range.low : 0;
}

struct Tap {
  std::optional<double> temperature_c;  ///< of the tank
  double gh_dgh = 0, kh_dkh = 0;
  std::optional<double> ph;
};

std::vector<KindMiss> misses_of(const Species& species, const Tap& tap) {
  std::vector<KindMiss> misses;
  const auto look = [&](const std::optional<double>& value, const Need& need, WaterQuantity quantity) {
    const double by = value && need.tolerated ? past(*value, *need.tolerated) : 0;
    if (by > 0 || by < 0) misses.push_back({species.id, quantity, by});
  };
  look(tap.gh_dgh, species.water.gh_dgh, WaterQuantity::gh);
  look(tap.kh_dkh, species.water.kh_dkh, WaterQuantity::kh);
  look(tap.ph, species.water.ph, WaterQuantity::ph);
  return misses;
}

bool too_hard(const std::vector<KindMiss>& misses) {
  return std::any_of(misses.begin(), misses.end(),
                     [](const KindMiss& miss) { return miss.quantity != WaterQuantity::ph && miss.by > 0; });
}

bool takes(const std::optional<double>& value, const Need& need) {
  return value && need.tolerated && past(*value, *need.tolerated) == 0;
}

/// A quantity that nobody has told of the tap or the tank is left out of the count.
bool suits(const Species& species, const Tap& tap) {
  const Species::WaterNeeds& needs = species.water;
  return needs.salinity != Salinity::brackish && takes(tap.gh_dgh, needs.gh_dgh) && takes(tap.kh_dkh, needs.kh_dkh) &&
         (!tap.ph || takes(tap.ph, needs.ph)) && (!tap.temperature_c || takes(tap.temperature_c, needs.temperature_c));
}

/// Whether it would live in the soft water that is mixed, too.
bool is_soft(const Species& species, const MixedWater& mixed) {
  return takes(mixed.gh_dgh, species.water.gh_dgh) && takes(mixed.kh_dkh, species.water.kh_dkh);
}

double ro_down_to(double most, double tap) { return tap > most ? 1 - most / tap : 0; }

/// Least share for a kind: none where it lives in the tap as it is, else at least the lesser mix. Empty where it needs softer
/// water than that, or the mix holds too little for it.
std::optional<double> least_ro(const Species& species, const Tap& tap) {
  const std::optional<Range>&gh = species.water.gh_dgh.tolerated, &kh = species.water.kh_dkh.tolerated;
  if (!gh || !kh || species.water.salinity == Salinity::brackish) return std::nullopt;
  if (tap.temperature_c && !takes(tap.temperature_c, species.water.temperature_c)) return std::nullopt;
  if (past(tap.gh_dgh, *gh) == 0 && past(tap.kh_dkh, *kh) == 0) return 0;
  if (!(gh->high >= std::min(tap.gh_dgh, lesser_mix_most_dgh))) return std::nullopt;
  const double ro = std::max(ro_down_to(std::min(gh->high, lesser_mix_most_dgh), tap.gh_dgh), ro_down_to(kh->high, tap.kh_dkh));
  if (!((1 - ro) * tap.gh_dgh >= gh->low && (1 - ro) * tap.kh_dkh >= kh->low)) return std::nullopt;
  return ro;
}

}  // namespace

std::optional<Roads> roads(const Plan& plan, const Catalog& catalog) {
  if (!plan.source.gh_dgh || !plan.source.kh_dkh) return std::nullopt;
  const Windows windows = windows_of(plan, catalog);
  const Tap tap{windows.temperature_c.now, *plan.source.gh_dgh, *plan.source.kh_dkh, plan.source.ph};
  Roads all;
  std::set<std::string> in_plan, soft_groups;
  for (const Kept& kept : resolve_stock(plan, catalog)) {
    if (!kept.species) continue;
    in_plan.insert(kept.species->id);
    const std::vector<KindMiss> misses = misses_of(*kept.species, tap);
    if (too_hard(misses)) soft_groups.insert(kept.species->group);
    all.others.misses.insert(all.others.misses.end(), misses.begin(), misses.end());
  }
  if (soft_groups.empty()) return std::nullopt;

  all.mixing = recipe_card(plan, planned_aim(plan, windows));
  const double by_recipe = all.mixing.recipe.ro_fraction.value_or(1);
  all.tolerant.ro_fraction = ro_down_to(lesser_mix_most_dgh, tap.gh_dgh);
  all.tolerant.ro_l_week = all.tolerant.ro_fraction * all.mixing.for_l * 7 / all.mixing.every_days;
  all.others.kinds = static_cast<int>(catalog.species.size());
  for (const Species& species : catalog.species) {
    if (suits(species, tap)) ++all.others.kinds_that_suit;
    const bool planned = in_plan.count(species.id) > 0;
    if (!planned && !(soft_groups.count(species.group) > 0 && is_soft(species, all.mixing.recipe.reached))) continue;
    const std::optional<double> ro = least_ro(species, tap);
    if (ro && *ro < by_recipe) all.tolerant.kinds.push_back({species.id, *ro, planned});
  }
  std::sort(all.tolerant.kinds.begin(), all.tolerant.kinds.end(), [](const TolerantKind& a, const TolerantKind& b) {
    return a.ro_fraction != b.ro_fraction ? a.ro_fraction < b.ro_fraction : a.species < b.species;
  });
  return all;
}

}  // namespace shoalwright
