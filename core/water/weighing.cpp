// SPDX-License-Identifier: MIT
#include "water/weighing.h"

#include <cmath>

namespace shoalwright {

namespace {

/// Whether weights move the water no more than they may.
bool near_enough(std::span<const SaltDose> doses, const std::vector<double>& grams, double water_l) {
  double gh_dgh = 0, kh_dkh = 0;
  for (std::size_t i = 0; i < doses.size(); ++i) {
    if (doses[i].salt == nullptr) continue;
    const SaltBrings meant = salt_brings(*doses[i].salt, doses[i].mg_l),
                     weighed = salt_brings(*doses[i].salt, grams[i] * 1000 / water_l);
    gh_dgh += weighed.gh_dgh - meant.gh_dgh;
    kh_dkh += weighed.kh_dkh - meant.kh_dkh;
  }
  return std::abs(gh_dgh) <= weighed_within_dh && std::abs(kh_dkh) <= weighed_within_dh;
}

}  // namespace

double weighing_step_g(double grams) { return grams < weigh_whole_from_g ? weigh_fine_g : 1; }

std::vector<double> weighed_g(std::span<const SaltDose> doses, double water_l) {
  std::vector<double> grams(doses.size(), 0);
  if (!(water_l > 0)) return grams;
  for (const double finer : {1.0, 10.0, 100.0, 1000.0}) {
    for (std::size_t i = 0; i < doses.size(); ++i) {
      const double meant = doses[i].mg_l * water_l / 1000, parts = finer / weighing_step_g(meant);
      grams[i] = std::round(meant * parts) / parts;
    }
    if (near_enough(doses, grams, water_l)) break;
  }
  return grams;
}

}  // namespace shoalwright
