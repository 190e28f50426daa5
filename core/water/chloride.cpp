// SPDX-License-Identifier: MIT
#include "water/chloride.h"

#include "units/convert.h"
#include "water/constants.h"

namespace shoalwright {

double chloride_for_nitrite_mg_l(double nitrite_mg_l, double each) {
  return nitrite_mg_l > 0 && each > 0 ? nitrite_mg_l * each * molar_cl / (molar_n + 2 * molar_o) : 0;
}

}  // namespace shoalwright
