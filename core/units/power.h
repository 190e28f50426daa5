// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

/// e to the power of `x`, to a few units in the last place. The C library's `exp`, `log` and `pow` carry 10 KB of figures into
/// the page that hardly pack; `expm1` and `log1p` carry none.
double natural_power(double x);

/// `base` to the power of `exponent`, to about 1e-14 of it. 0 for a base of 0 with an exponent above 0; not a number for a base
/// below 0.
double raised(double base, double exponent);

}  // namespace shoalwright
