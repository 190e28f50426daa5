// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

// Conversions between what the keeper reads and the metric units inside. Inch and US gallon (231 cubic inches) are exact by definition
// (NIST Special Publication 811, appendix B, from memory). Any finite value is taken.

inline constexpr double cm_per_in = 2.54;
inline constexpr double l_per_us_gal = 231 * cm_per_in * cm_per_in * cm_per_in / 1000;

constexpr double cm_from_in(double in) { return in * cm_per_in; }
constexpr double in_from_cm(double cm) { return cm / cm_per_in; }
constexpr double l_from_us_gal(double us_gal) { return us_gal * l_per_us_gal; }
constexpr double us_gal_from_l(double l) { return l / l_per_us_gal; }
constexpr double c_from_f(double temperature_f) { return (temperature_f - 32) / 1.8; }
constexpr double f_from_c(double temperature_c) { return temperature_c * 1.8 + 32; }

}  // namespace shoalwright
