// SPDX-License-Identifier: MIT
#pragma once

#include "units/range.h"

namespace shoalwright {

// Ammonia. Total ammonia nitrogen (TAN) is the nitrogen of NH3 and NH4+ together; NH3 is what harms. Equilibrium: Emerson, K.,
// Russo, R.C., Lund, R.E. & Thurston, R.V. 1975. Aqueous ammonia equilibrium calculations: effect of pH and temperature. Journal
// of the Fisheries Research Board of Canada 32: 2379-2383. Dissolved salts are left out, as is usual; in hard water that tells up
// to 12 % too much NH3.

inline constexpr Range ammonia_temperature_c{0, 50}, ammonia_ph{6, 10};

/// Whether the equations hold there; outside they answer for the nearer edge, which below pH 6 tells too much NH3.
bool ammonia_valid(double temperature_c, double ph);

/// pKa of ammonium.
double ammonium_pka(double temperature_c);

/// Share of the ammonia nitrogen that is NH3, 0 to 1.
double nh3_share(double temperature_c, double ph);

/// Nitrogen of NH3, mg/L.
double nh3_n_from_tan_mg_l(double tan_mg_l, double temperature_c, double ph);

/// Total ammonia nitrogen, mg/L, at which NH3 (as NH3) comes to `nh3_mg_l`.
double tan_for_nh3_mg_l(double nh3_mg_l, double temperature_c, double ph);

// Criteria for natural fresh water, mg/L of total ammonia nitrogen. US EPA 2013. Aquatic Life Ambient Water Quality Criteria for
// Ammonia - Freshwater. EPA-822-R-13-001. Mussels and snails set most of them. Tabulated there for pH 6.5 to 9 and 0 to 30
// degrees C (from memory); beyond, the equations go on up to `ammonia_ph` and `ammonia_temperature_c` and are held there.

/// Not to be passed by the mean of an hour, where salmon and trout of the genus Oncorhynchus live and where they do not.
double acute_tan_with_trout_mg_l(double temperature_c, double ph);
double acute_tan_without_trout_mg_l(double temperature_c, double ph);

/// Not to be passed by the mean of 30 days; that of 4 days may reach 2.5 times as much.
double chronic_tan_mg_l(double temperature_c, double ph);

}  // namespace shoalwright
