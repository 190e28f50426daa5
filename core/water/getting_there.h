// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "plan/plan.h"
#include "water/gentle_change.h"
#include "water/mix_aim.h"
#include "water/recipe.h"

namespace shoalwright {

// From the water that is in the tank to the water aimed at, by changes small enough that no animal is shocked.

/// Hardness this near its aim has arrived, once it is inside the window too: what home tests read wrong, degrees. Common
/// practice, no source. Inside is told to `edge_in_hand_dh`.
inline constexpr double arrived_dh = 1;

/// What is in the tank; empty: not known.
struct TankWater {
  std::optional<double> temperature_c, ph, gh_dgh, kh_dkh;
  bool operator==(const TankWater&) const = default;
};

/// What was measured, else the tap: a tank filled from it. The tap's pH is not the tank's, which has other CO2.
TankWater tank_water_now(const Plan& plan);

/// One bucket of new water, to be mixed as often as there are changes with it. `strength`: share of the way from the water that
/// the tank has then to the recipe's, above 0 to 1.
struct Bucket {
  double strength = 1;
  Recipe recipe;
  int changes = 0;
  bool operator==(const Bucket&) const = default;
};

/// The tank after a change. `bucket` is a place in GettingThere::buckets. pH: at the CO2 that the tank holds.
struct ChangeStep {
  TankWater after;
  double fraction = 0;  ///< of the water, 0 to 1; smaller than asked for where no other bucket would do
  int bucket = 0;
  bool operator==(const ChangeStep&) const = default;
};

struct GettingThere {
  TankWater now;  ///< with a pH worked out where none was measured
  std::vector<ChangeStep> steps;
  std::vector<Bucket> buckets;         ///< in the order in which they are used
  std::optional<int> changes;          ///< until GH and KH have arrived; empty: not known, or never by such changes
  std::optional<int> gh_inside_after;  ///< changes until GH lies in the shared window, 0: it does; empty: not on this way
  std::optional<int> kh_inside_after;  ///< the same of KH
  double most_gh_dgh = 0, most_kh_dkh = 0, most_ph = 0;  ///< the largest steps, 0 or more
  bool operator==(const GettingThere&) const = default;
};

/// `recipe` is that of `aim`, `fraction` the share of the water that one change takes, above 0 to 1. Temperature is moved by the
/// heater, at most `change_most_temperature_c` from change to change, new water matched to it. What animals and plants do to
/// hardness meanwhile is left out. No steps where the tank's or the mix's hardness is not known.
GettingThere getting_there(const SourceWater& tap, const TankWater& now, const MixAim& aim, const Recipe& recipe,
                           std::span<const std::string> salts, double fraction);

}  // namespace shoalwright
