// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

enum class ThemeChoice { system, light, dark };

/// What is laid over the drawn tank.
enum class Overlay { none, crowding, clearance, cover, territory };

/// What the keeper chose on this device; never part of a plan.
struct Preferences {
  ThemeChoice theme = ThemeChoice::system;
  bool us_units = false;  ///< °F, inches, US gallons
  Overlay overlay = Overlay::none;
  bool swim = false;  ///< the fish move
  bool show_lane = true;
  bool show_numbers = true;
  bool operator==(const Preferences&) const = default;
};

}  // namespace shoalwright
