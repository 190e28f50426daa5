// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "units/range.h"

namespace shoalwright {

// How pH, carbonate hardness and CO2 hang together in fresh water: the balance of charges of carbonic acid and water with the
// constants of equilibrium.h, solved as it stands (Stumm, W. & Morgan, J.J. Aquatic Chemistry; from memory). Carbonate hardness
// is total alkalinity, as test kits read it. Against PHREEQC (US Geological Survey) at 15 to 32 degrees C, 0.5 to 25 degrees of
// carbonate hardness, 0.5 to 50 mg/L of CO2 and pH 5 to 9 it is within 0.01 of pH, in water that has more than twice the calcite
// it can hold (index above 0.3) within 0.14. Test kits read to 0.2 at best: show one decimal. Below pH 6 with next to no
// hardness a kit's hardness is too coarse to tell pH from: show a range. Humic acids, phosphate and other buffers are not
// carbonate: with them too much CO2 is told, often several times too much.

/// Water as far as its carbonate is asked about.
struct CarbonateWater {
  double temperature_c = 25;
  double kh_dkh = 0;
  std::optional<double> gh_dgh;  ///< empty: not known, taken as much as carbonate hardness
};

/// What the model takes; anything outside is held at the nearer edge. Temperature: equilibrium.h.
inline constexpr Range carbonate_kh_dkh{0, 60}, carbonate_gh_dgh{0, 120}, carbonate_ph{3, 12};
inline constexpr Range carbonate_co2_mg_l{0, 3500}, carbonate_air_atm{0, 1};

/// Whether nothing of `water` is held at an edge.
bool carbonate_valid(const CarbonateWater& water);

/// CO2 in air by volume at 1 atm: outdoors, and in a room that is lived in (common practice, no source).
inline constexpr double co2_outdoors_atm = 420e-6, co2_indoors_atm = 800e-6;

/// pH with so much dissolved CO2, mg/L.
double ph_with_co2(const CarbonateWater& water, double co2_mg_l);

/// Dissolved CO2 at that pH, mg/L; 0 where the pH is higher than the carbonate hardness alone would make it.
double co2_at_ph_mg_l(const CarbonateWater& water, double ph);

/// Dissolved CO2, mg/L, of water that has come to balance with air of so much CO2, and its pH. Hours to a day of moved surface.
/// Tanks stand above it: animals breathe.
double co2_in_air_mg_l(double temperature_c, double air_co2_atm);
double ph_in_air(const CarbonateWater& water, double air_co2_atm);

/// All inorganic carbon, mol/L: CO2, hydrogen carbonate and carbonate. It stays as it is while no CO2 enters or leaves.
double carbon_with_co2_mol_l(const CarbonateWater& water, double co2_mg_l);
double carbon_at_ph_mol_l(const CarbonateWater& water, double ph);

/// pH of water that is closed to the air and holds so much inorganic carbon. Where that is nearly the alkalinity (pH 7.8 to 8.6)
/// 1 % of it moves pH by up to 0.2.
double ph_with_carbon(const CarbonateWater& water, double carbon_mol_l);

/// The trade's short cut, CO2 in mg/L: three times the carbonate hardness at pH 7, ten times that a pH lower. Common practice, no
/// source. In water of carbonate alone it tells too little: by a fifth to a quarter at 15 degrees C, a tenth at 25.
double co2_by_trade_rule_mg_l(double kh_dkh, double ph);

}  // namespace shoalwright
