// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "plan/plan.h"
#include "stocking/stock.h"
#include "tank/volume.h"

namespace shoalwright {

/// Dissolved oxygen at one hour of the day, mg/L.
struct AirPoint {
  double hour = 0, oxygen_mg_l = 0;
};

/// Lamps of ten hours. Common practice, no source.
inline constexpr double lamps_on_hour = 8, lamps_off_hour = 18;

/// How oxygen rises and falls over a day like any other, midnight to midnight, for drawing: each litre moves towards where it
/// would settle, by night with animals asleep and plants using some, by day with animals about (oxygen_use.h) and plants using
/// none. What plants give by day is not counted. Mass balance. Empty where the dawn of Air is.
std::vector<AirPoint> air_course(const Plan& plan, const std::vector<Kept>& stock, const Volume& volume,
                                 std::optional<double> water_c);

}  // namespace shoalwright
