// SPDX-License-Identifier: MIT
#include "water/calcite.h"

#include <cmath>

#include "units/convert.h"
#include "water/equilibrium.h"
#include "water/held.h"

namespace shoalwright {

std::optional<double> calcite_index(const CarbonateWater& water, double calcium_share, double ph, double co2_mg_l) {
  const double kh = held_within(water.kh_dkh, carbonate_kh_dkh);
  const double gh = held_within(water.gh_dgh.value_or(kh), carbonate_gh_dgh);
  const double calcium_mol_l = mmol_l_from_degrees(gh) / 1000 * held_within(calcium_share, {0, 1});
  const double co2_mol_l = held_within(co2_mg_l, carbonate_co2_mg_l) / (1000 * (molar_c + 2 * molar_o));
  if (!(calcium_mol_l > 0 && co2_mol_l > 0)) return std::nullopt;
  const double t = water.temperature_c;
  const double log10_calcium = std::log10(calcium_mol_l) + 4 * log10_activity(t, ionic_strength_of_hardness_mol_l(kh, gh));
  const double log10_carbonate = log10_k1(t) + log10_k2(t) + std::log10(co2_mol_l) + 2 * held_within(ph, carbonate_ph);
  return log10_calcium + log10_carbonate - log10_k_calcite(t);
}

}  // namespace shoalwright
