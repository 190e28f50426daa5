// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

// Nitrogen from feed. Reference: Timmons, M.B. & Ebeling, J.M. 2007. Recirculating Aquaculture (the factor is from memory): 16 %
// of protein is nitrogen, 80 % of it is assimilated, 80 % of that excreted, 90 % of that as ammonia: 0.092 of the protein.

/// mg of total ammonia nitrogen from `feed_g` of food with that share of crude protein (as fed, 0 to 1).
double tan_from_feed_mg(double feed_g, double protein_share);

/// mg/L of nitrate (as NO3) that `tan_mg` of ammonia nitrogen become in `water_l`; 0 where there is no water.
double nitrate_from_tan_mg_l(double tan_mg, double water_l);

/// mg/L as CaCO3 of alkalinity that oxidising 1 mg/L of ammonium nitrogen to nitrate takes: 2 equivalents a mole. Stoichiometry.
double alkalinity_for_nitrification_mg_l(double n_mg_l);

/// Carbonate hardness, degrees, taken by `n_mg_l` of nitrogen: 2 equivalents a mole when it came as ammonium salt, 1 net when it
/// came from food (ammonia first gives one). Stoichiometry.
double kh_drop_dkh(double n_mg_l, double equivalents_per_mole);

}  // namespace shoalwright
