// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "catalog/species.h"
#include "plan/plan.h"
#include "units/range.h"
#include "water/window.h"

namespace shoalwright {

enum class WaterQuantity { temperature, ph, gh, kh };

/// Common practice, no source.
inline constexpr double usual_temperature_c = 25;

/// What one quantity of the new water is meant to be. An aim is met exactly or missed; without one any point of the window will
/// do; without either the quantity is free.
struct AxisAim {
  std::optional<double> aim;
  std::optional<Range> window;  ///< what all animals tolerate
  bool operator==(const AxisAim&) const = default;
};

/// What a recipe works towards. pH follows from KH and CO2: it is looked at, never steered by.
struct MixAim {
  AxisAim gh_dgh, kh_dkh, ph;
  std::optional<double> temperature_c;  ///< empty: nobody has said; pH is then told for `usual_temperature_c`
  double ca_mg_ratio = 3;               ///< calcium to magnesium, by number (as in degrees of GH), of what the salts add
  double most_co2_mg_l = 20;
  bool operator==(const MixAim&) const = default;
};

/// A point of the window that was not aimed at keeps this much from its edges, degrees: the step in which hardness is told, so
/// that an edge is not met to the last drop. Common practice, no source.
inline constexpr double edge_in_hand_dh = 0.1;

/// The plan's own aim. Where it has none, the nearest point of the shared window, which costs the least; temperature costs
/// nothing to choose and is the middle of the shared window (Windows::now).
MixAim planned_aim(const Plan& plan, const Windows& windows);

/// The middle of what suits all: of the shared ideal range, else of the shared tolerated one. Where the windows do not meet the
/// quantity is free. pH is only looked at.
MixAim middle_aim(const Plan& plan, const Windows& windows);

/// The point of the shared windows that needs the least reverse-osmosis water: whatever the plan aims at.
MixAim least_ro_aim(const Plan& plan, const Windows& windows);

/// The middle of one kind's ideal range, else of what it tolerates.
MixAim aim_for_kind(const Plan& plan, const Windows& windows, const Species& species);

}  // namespace shoalwright
