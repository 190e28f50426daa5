// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

namespace shoalwright {

// What a plan means where it says nothing. The reader fills these in and lists their pointers in Plan::assumed, so that a default
// that the keeper never chose counts as assumed when it enters a verdict. Common practice, no source.

inline constexpr double default_fill_gap_cm = 2.5;         ///< water line below the rim
inline constexpr double default_place_temperature_c = 20;  ///< room air
inline constexpr double default_change_fraction = 0.3;
inline constexpr double default_every_days = 7;
inline constexpr Ration default_ration = Ration::normal;
inline constexpr int default_fasting_days = 0;
inline constexpr Planting default_planting = Planting::none;
inline constexpr double default_running_weeks = 0;
inline constexpr bool default_lid = false;
inline constexpr double default_ca_mg_ratio = 3;
inline constexpr SubstrateKind default_substrate = SubstrateKind::bare;
inline constexpr double default_piece_cm = 10;  ///< each measure of a piece that was not given
/// Ceiling of nitrate as NO3 in mg/L by strictness: lenient, usual, strict.
inline constexpr double default_nitrate_mg_l[3] = {50, 40, 25};

/// Water line of a tank whose filling was not given, in cm above the inside bottom; half full where the gap would leave less.
inline double default_fill_cm(double height_cm) {
  return height_cm > 2 * default_fill_gap_cm ? height_cm - default_fill_gap_cm : height_cm / 2;
}

/// Glass of a tank whose thickness was not given, in mm, from its inside height in cm: 4 up to 30, 6 up to 40, 8 up to 50, 10 up
/// to 60, 12 above. Common practice, no source; never a strength calculation.
inline double default_glass_mm(double height_cm) {
  if (height_cm <= 30) return 4;
  if (height_cm <= 40) return 6;
  if (height_cm <= 50) return 8;
  return height_cm <= 60 ? 10 : 12;
}

}  // namespace shoalwright
