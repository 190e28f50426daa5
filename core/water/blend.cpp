// SPDX-License-Identifier: MIT
#include "water/blend.h"

#include "units/convert.h"
#include "water/held.h"

namespace shoalwright {

namespace {

Conserved conserved(const CarbonateWater& water, double carbon_mol_l) {
  const double kh = held_within(water.kh_dkh, carbonate_kh_dkh);
  return {.kh_dkh = kh, .gh_dgh = held_within(water.gh_dgh.value_or(kh), carbonate_gh_dgh), .carbon_mol_l = carbon_mol_l};
}

CarbonateWater carbonate_of(const Conserved& water, double temperature_c) {
  return {.temperature_c = temperature_c, .kh_dkh = water.kh_dkh, .gh_dgh = water.gh_dgh};
}

}  // namespace

double mixed(double share_of_first, double first, double second) {
  const double share = held_within(share_of_first, {0, 1});
  return share * first + (1 - share) * second;
}

std::optional<double> share_for(double target, double first, double second) {
  if (!(first < second || first > second)) return std::nullopt;
  return (target - second) / (first - second);
}

Conserved conserved_with_co2(const CarbonateWater& water, double co2_mg_l) {
  return conserved(water, carbon_with_co2_mol_l(water, co2_mg_l));
}

Conserved conserved_at_ph(const CarbonateWater& water, double ph) { return conserved(water, carbon_at_ph_mol_l(water, ph)); }

Conserved conserved_in_air(const CarbonateWater& water, double air_co2_atm) {
  return conserved_with_co2(water, co2_in_air_mg_l(water.temperature_c, air_co2_atm));
}

Conserved mixed(double share_of_first, const Conserved& first, const Conserved& second) {
  return {.kh_dkh = mixed(share_of_first, first.kh_dkh, second.kh_dkh),
          .gh_dgh = mixed(share_of_first, first.gh_dgh, second.gh_dgh),
          .carbon_mol_l = mixed(share_of_first, first.carbon_mol_l, second.carbon_mol_l)};
}

Conserved with_bicarbonate(const Conserved& water, double added_dkh) {
  const double added = held_within(added_dkh, {0, carbonate_kh_dkh.high - held_within(water.kh_dkh, carbonate_kh_dkh)});
  Conserved after = water;
  after.kh_dkh += added;
  after.carbon_mol_l += meq_l_from_degrees(added) / 1000;
  return after;
}

double ph_closed(const Conserved& water, double temperature_c) {
  return ph_with_carbon(carbonate_of(water, temperature_c), water.carbon_mol_l);
}

double ph_after_standing(const Conserved& water, double temperature_c, double air_co2_atm) {
  return ph_in_air(carbonate_of(water, temperature_c), air_co2_atm);
}

}  // namespace shoalwright
