// SPDX-License-Identifier: MIT
#include "units/power.h"

#include <cmath>
#include <numbers>

namespace shoalwright {

double natural_power(double x) {
  // Far below 0, expm1 is nearly -1 and the sum would keep few of its figures.
  return x < 0 ? 1 / (1 + std::expm1(-x)) : 1 + std::expm1(x);
}

double raised(double base, double exponent) {
  if (base == 0 && exponent > 0) return 0;
  int halvings = 0;
  const double part = std::frexp(base, &halvings);  // from 0.5 to 1, where 1 less of it is exact
  return natural_power(exponent * (std::log1p(part - 1) + halvings * std::numbers::ln2));
}

}  // namespace shoalwright
