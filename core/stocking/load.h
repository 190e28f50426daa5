// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

namespace shoalwright {

/// Nitrogen that feeding puts into the water, and where it goes. Empty: not known because an input was not given, or (the last
/// three) not reckoned yet.
struct Load {
  std::optional<double> feed_g_d, tan_mg_d;
  std::optional<double> nitrate_peak_mg_l, nitrate_trough_mg_l;  ///< settled saw-tooth under the present changes, as NO3
  std::optional<double> change_needed_fraction;                  ///< smallest at the present rhythm that keeps the peak at the limit
  std::optional<double> kh_drift_dkh_week, media_needed_l, ammonia_nh3_mg_l;
  bool operator==(const Load&) const = default;
};

}  // namespace shoalwright
