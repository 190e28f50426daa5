// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>

namespace shoalwright {

// Who can swallow whom. What limits prey is its depth against the mouth: largest prey was 27 % and 20 % of the predator's
// standard length deep in two piscivores (Mihalitsis, M. & Bellwood, D.R. 2017. PLoS ONE); in seven lake piscivores the longest
// prey was 32 to 46 % of the predator's total length, and slender prey longer than deep prey (Gaeta et al. 2018. PLoS ONE 13:
// e0194092).

/// Reach of a mouth.
struct Swallower {
  double gape_share = 0;   ///< width of the mouth over total length
  double reach_share = 0;  ///< longest prey over total length
  bool operator==(const Swallower&) const = default;
};

/// By the word of a species card for how it eats: hunters after the sources above, the others common practice, no source. Grazers
/// swallow nothing that swims. A bottom picker takes only what is under `picker_prey_cm`. Empty for biters, from whom no size is
/// safe, and for other words.
std::optional<Swallower> swallower_of(std::string_view eater);

/// Eggs, fry and shrimplets that bottom pickers take, cm. Common practice, no source.
inline constexpr double picker_prey_cm = 0.8;
/// What a night hunter reaches beyond its class: it takes prey asleep. Common practice, no source.
inline constexpr double night_reach_share = 0.05;

/// How far a prey is within reach of mouth and gullet: 1 and more is eaten. Total lengths, cm; `prey_depth_share` is depth over
/// length of the prey. 0 where the prey has no size.
double swallow_index(double predator_cm, const Swallower& swallower, double prey_cm, double prey_depth_share);

/// From the first on eaten, then at risk, then to be watched as the eater grows; fine below. Common practice, no source.
inline constexpr double swallow_eaten_from = 1.0, swallow_risk_from = 0.8, swallow_watch_from = 0.67;

}  // namespace shoalwright
