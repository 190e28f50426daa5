// SPDX-License-Identifier: MIT
#include "stocking/grazers.h"

namespace shoalwright {

double grazed_bl2(Style style) {
  if (style == Style::grazer) return 40;
  return style == Style::invertebrate ? 8 : 0;
}

double grazed_cm2(double count, double grazed_bl2, double length_cm) { return count * grazed_bl2 * length_cm * length_cm; }

double grown_share(double running_weeks) {
  if (!(running_weeks >= 4)) return 0;
  return running_weeks < 12 ? 0.5 : 1;
}

std::optional<double> grazing_index(double wanted_cm2, double grown_share, double surface_cm2) {
  const double grown_cm2 = grown_share * surface_cm2;
  if (!(grown_cm2 > 0)) return std::nullopt;
  return wanted_cm2 / grown_cm2;
}

}  // namespace shoalwright
