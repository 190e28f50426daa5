// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

/// From here a floor deserves a thought about where the tank stands, kg. Common practice, no source. A lower figure warns more
/// people.
inline constexpr double mass_placement_kg = 100;
/// From here a structural engineer and the local code are asked before filling, kg. Common practice, no source.
inline constexpr double mass_engineer_kg = 250;
/// Temperature at which water is weighed when the plan has no aim, degrees C. Its choice moves the mass by less than 0.3 %.
inline constexpr double weighing_temperature_c = 25;

}  // namespace shoalwright
