// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/measures.h"

namespace shoalwright {

enum class ThemeChoice { system, light, dark };

/// What is laid over the drawn tank.
enum class Overlay { none, crowding, clearance, cover, territory };

/// What the keeper chose on this device; never part of a plan.
struct Preferences {
  ThemeChoice theme = ThemeChoice::system;
  bool us_units = false;  ///< °F, inches, US gallons
  HardnessUnit hardness_in = HardnessUnit::degrees;
  bool nitrate_as_n = false;
  std::optional<double> ro_drain_l_per_l;  ///< litres to the drain for one of RO water by the keeper's own filter
  Overlay overlay = Overlay::none;
  bool swim = false;  ///< the fish move
  bool show_lane = true;
  bool show_numbers = true;
  std::vector<std::string> shop = {};  ///< what the keeper's shop has: species ids, as they were ticked
  bool operator==(const Preferences&) const = default;

  Measures measures() const { return {us_units, hardness_in, nitrate_as_n}; }
};

}  // namespace shoalwright
