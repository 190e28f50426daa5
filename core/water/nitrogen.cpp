// SPDX-License-Identifier: MIT
#include "water/nitrogen.h"

#include "units/convert.h"

namespace shoalwright {

double tan_from_feed_mg(double feed_g, double protein_share) {
  constexpr double ammonia_of_protein = 0.092;
  return feed_g * 1000 * protein_share * ammonia_of_protein;
}

double nitrate_from_tan_mg_l(double tan_mg, double water_l) { return water_l > 0 ? no3_from_n(tan_mg / water_l) : 0; }

double alkalinity_for_nitrification_mg_l(double n_mg_l) { return n_mg_l * molar_caco3 / molar_n; }

double kh_drop_dkh(double n_mg_l, double equivalents_per_mole) {
  return degrees_from_meq_l(n_mg_l / molar_n * equivalents_per_mole);
}

}  // namespace shoalwright
