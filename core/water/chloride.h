// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

/// Chloride for each nitrite, by number, that kept channel catfish free of nitrite's harm. Tomasso, J.R., Simco, B.A. & Davis,
/// K.B. 1979. Chloride inhibition of nitrite-induced methemoglobinemia in channel catfish. Journal of the Fisheries Research
/// Board of Canada 36: 1141-1144. Not every fish is helped: largemouth bass were not (Tomasso 1986).
inline constexpr double chloride_for_each_nitrite = 16;

/// mg/L of chloride that stand against `nitrite_mg_l` (as NO2) at so many chloride for each nitrite; 0 where there is none.
double chloride_for_nitrite_mg_l(double nitrite_mg_l, double each = chloride_for_each_nitrite);

}  // namespace shoalwright
