// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "units/range.h"

namespace shoalwright {

// How long eggs take at another temperature. Development stands still at a threshold and runs in proportion to the degrees above
// it. A clutch hatches over a day: tell a window, never an hour.

/// Thresholds, degrees C: zebrafish (from the relation below), neon tetra (drawn through 38 to 40 h at 18 and 24 to 26 h at 26
/// degrees C, Journal of the Indian Fisheries Association), where only a product of degrees and hours is known (angelfish 1288:
/// Korzelecka-Orkisz et al. 2012), and where nothing is (common practice, no source).
inline constexpr double zebrafish_threshold_c = 0.57 / 0.055, neon_tetra_threshold_c = 3.71, product_threshold_c = 0,
                        unknown_threshold_c = 8;
/// Nearer to the threshold, or farther from the temperature of the reference, the rule is not trusted. Common practice, no
/// source.
inline constexpr double least_over_threshold_c = 3, trusted_within_c = 6;

/// Hours to a stage that takes `reference_h` at `reference_c`. Empty where the rule is not trusted.
std::optional<double> development_h(double reference_h, double reference_c, double temperature_c,
                                    double threshold_c = unknown_threshold_c);

/// Hours to a stage of the zebrafish that takes `h_at_28_5` at 28.5 degrees C; published for 25 to 33 degrees C. Empty beyond
/// what is trusted around that. Kimmel, C.B., Ballard, W.W., Kimmel, S.R., Ullmann, B. & Schilling, T.F. 1995. Stages of
/// embryonic development of the zebrafish. Developmental Dynamics 203: 253-310.
std::optional<double> zebrafish_development_h(double h_at_28_5, double temperature_c);

/// What to tell: a fifth either way. Common practice, no source.
Range development_window_h(double hours);

}  // namespace shoalwright
