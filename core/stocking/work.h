// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "plan/plan.h"
#include "tank/volume.h"

namespace shoalwright {

/// What water changes take of a keeper's week. Common practice, no source: a bucket holds 10 L and takes three minutes to fill,
/// carry and pour; ten more are for the siphon, the glass and clearing up.
inline constexpr double bucket_l = 10, minutes_a_bucket = 3, minutes_besides = 10;
/// Above this a hose and a pump spare the back.
inline constexpr double hose_from_l = 30;

struct ChangeWork {
  double litres = 0;  ///< each time
  int buckets = 0;    ///< each time
  double minutes_a_week = 0, litres_a_week = 0;
};

/// Empty where the rhythm is not known or no water is changed.
std::optional<ChangeWork> change_work(const Plan& plan, const Volume& volume);

}  // namespace shoalwright
