// SPDX-License-Identifier: MIT
#include "stocking/encounter.h"

#include <algorithm>

#include "stocking/body.h"
#include "stocking/floor.h"
#include "stocking/limits.h"
#include "stocking/style.h"
#include "stocking/swallow.h"

namespace shoalwright {

namespace {

// Shares of time in a third of the depth from which on a level of the ladder counts. Common practice, no source.
constexpr double lives_there = 0.4, visits_the_top = 0.2;

double index(const Species& eater, const Species& prey, double prey_cm) {
  const std::optional<Swallower> mouth = mouth_of(eater);
  if (!mouth || !(prey_cm > 0) || (eater.mouth.eater == "picker" && prey_cm >= picker_prey_cm)) return 0;
  return swallow_index(eater.size.adult_tl_cm, *mouth, prey_cm, depth_share_of(prey));
}

bool has_large_mouth(const Species& eater) { return eater.mouth.eater == "hunter" || eater.mouth.eater == "opportunist"; }

/// Larvae that need the sea, or kinds that never bred in a tank.
bool has_no_young_here(const Species& species) {
  return species.breeding_mode == "salt-larvae" || species.breeding_mode == "not-in-tanks";
}

bool lists(const Species& one, const Species& with) {
  const std::vector<std::string>& all = one.temper.breeds_with;
  return std::find(all.begin(), all.end(), with.id) != all.end();
}

}  // namespace

SwimLevels swim_levels(const Species& species) {
  const std::array<double, 3> share = depth_shares(species);
  const std::size_t main = static_cast<std::size_t>(std::max_element(share.begin(), share.end()) - share.begin());
  SwimLevels levels;
  levels.surface = main == 0 || share[0] >= lives_there;
  levels.middle = main == 1 || share[1] >= lives_there;
  levels.floor = main == 2 || share[2] >= lives_there;
  // Between the two: what is seen at the surface but lives lower, and the other way round.
  levels.upper = share[0] >= visits_the_top && share[1] >= visits_the_top;
  return levels;
}

std::array<bool, 4> levels_in_order(const SwimLevels& levels) {
  return {levels.surface, levels.upper, levels.middle, levels.floor};
}

bool share_a_level(const Species& a, const Species& b) {
  const std::array<double, 3> one = depth_shares(a), other = depth_shares(b);
  for (std::size_t layer = 0; layer < 3; ++layer)
    if ((one[layer] >= used_layer_share || layer == main_layer(one)) &&
        (other[layer] >= used_layer_share || layer == main_layer(other)))
      return true;
  return false;
}

std::optional<Swallower> mouth_of(const Species& eater) {
  std::optional<Swallower> mouth = swallower_of(eater.mouth.eater);
  if (!mouth) return mouth;
  if (hunts_asleep(eater)) mouth->reach_share += night_reach_share;
  if (eater.mouth.gape_share && mouth->gape_share > 0) mouth->gape_share = *eater.mouth.gape_share;
  return mouth;
}

double depth_share_of(const Species& species) {
  return species.size.body_depth_share.value_or(usual_depth_share(species.size.body));
}

double swallowed(const Species& eater, const Species& prey) {
  if (prey.kind == "snail" || (prey.kind == "shrimp" && !eater.mouth.eats_shrimp.empty())) return 0;
  return index(eater, prey, prey.size.adult_tl_cm);
}

double swallowed_when_sold(const Species& eater, const Species& prey) {
  if (prey.kind == "shrimp" || prey.kind == "snail") return 0;
  return index(eater, prey, prey.size.sold_cm.value_or(0));
}

bool is_biter(const Species& species) { return species.mouth.eater == "biter"; }

bool hunts_asleep(const Species& eater) { return eater.life.active == "night" && has_large_mouth(eater); }

bool may_choke_on(const Species& eater, const Species& prey) { return prey.size.spines && has_large_mouth(eater); }

SmallFry small_fry_beside(const Species& eater, const Species& prey) {
  const bool too_long = is_biter(prey) || prey.size.adult_tl_cm >= too_long_to_eat * eater.size.adult_tl_cm;
  const SmallFry young = has_no_young_here(prey) ? SmallFry::unharmed : SmallFry::young;
  if (prey.kind == "snail") {
    if (!eater.mouth.eats_snails) return SmallFry::unharmed;
    return too_long ? young : SmallFry::grown;
  }
  if (prey.kind != "shrimp") return SmallFry::unharmed;
  const std::string& says = eater.mouth.eats_shrimp;
  if (says == "no" || (says.empty() && eater.mouth.eater.empty())) return SmallFry::unharmed;
  // Who bites through a shell bites whatever its size.
  if (is_biter(eater) || (says == "adults" && !too_long)) return SmallFry::grown;
  if (says.empty() && !too_long && (has_large_mouth(eater) || swallowed(eater, prey) >= swallow_risk_from))
    return SmallFry::grown;
  if (says.empty() && index(eater, prey, shrimplet_cm) < swallow_risk_from) return SmallFry::unharmed;
  return young == SmallFry::young && eater.mouth.eater == "picker" ? SmallFry::picked : young;
}

bool nips(const Species& species) { return species.temper.nips_fins == "yes" || species.temper.nips_fins == "when-few"; }

bool offers_fins(const Species& species) { return species.temper.fins == "long" && species.temper.feeding_pace != "fast"; }

bool is_weaker(const Species& other, const Species& beside) {
  return other.size.adult_tl_cm < beside.size.adult_tl_cm || other.temper.feeding_pace == "slow" || other.temper.fins == "long";
}

bool may_cross(const Species& a, const Species& b) { return lists(a, b) || lists(b, a); }

bool look_alike(const Species& a, const Species& b) {
  return !a.temper.look_alike_group.empty() && a.temper.look_alike_group == b.temper.look_alike_group;
}

bool is_outpaced(const Species& slow, const Species& fast) {
  return slow.temper.feeding_pace == "slow" && fast.temper.feeding_pace == "fast";
}

bool is_fighter(const Species& species) {
  return species.life.group.kind == GroupKind::solitary && species.temper.to_own_kind == Toward::aggressive &&
         species.temper.rival_males;
}

bool takes_for_rival(const Species& fighter, const Species& other) {
  return is_fighter(fighter) && fighter.temper.fins == "long" && other.kind == "fish" && other.temper.fins == "long" &&
         !look_alike(fighter, other) && share_a_level(fighter, other);
}

bool rasps_flanks(const Species& grazer, const Species& other) {
  return grazer.mouth.eater == "grazer" && grazer.temper.to_others != Toward::peaceful &&
         grazer.size.adult_tl_cm >= rasper_least_cm && other.kind == "fish" && other.size.body == Body::short_deep &&
         other.size.adult_tl_cm >= rasped_least_cm && other.temper.feeding_pace == "slow";
}

bool is_livebearer(const Species& species) { return species.breeding_mode == "livebearer"; }

bool guards_eggs(const Species& species) {
  constexpr std::string_view guarded[] = {"cave-spawner", "substrate-depositor", "wall-depositor", "leaf-depositor",
                                          "bubble-nester"};
  const GroupKind lives = species.life.group.kind;
  if (lives != GroupKind::pair && lives != GroupKind::harem) return false;
  const bool holds_ground = holds_floor(species) && species.temper.to_own_kind != Toward::peaceful;
  return (holds_ground || species.temper.to_others != Toward::peaceful) &&
         std::find(std::begin(guarded), std::end(guarded), species.breeding_mode) != std::end(guarded);
}

}  // namespace shoalwright
