// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <vector>

#include "plan/plan.h"
#include "units/range.h"
#include "water/salts.h"

namespace shoalwright {

// New water made of tap water, reverse-osmosis water and salts, worked out forwards. Mass balance; elementary.

/// Reverse-osmosis water is counted as free of GH, KH and nitrate. A membrane lets 2 to 5 % of what its tap water holds through:
/// under the step of any test kit (common practice, no source).
inline constexpr double ro_gh_dgh = 0, ro_kh_dkh = 0, ro_nitrate_mg_l = 0;

/// CO2 of a tank without added CO2, mg/L: animals breathe, so more than the air alone would give. Common practice, no source.
inline constexpr Range usual_tank_co2_mg_l{2, 5};

/// So much of a salt in each litre of new water; `salt` is one of known_salts().
struct SaltDose {
  const Salt* salt = nullptr;
  double mg_l = 0;
  bool operator==(const SaltDose&) const = default;
};

/// What the mix comes to. Empty: the tap's value, and with it the mix's, is not known. Ions: what the salts bring, not what the
/// tap holds besides.
struct MixedWater {
  std::optional<double> gh_dgh, kh_dkh;
  std::optional<double> nitrate_mg_l;  ///< as NO3
  double sodium_mg_l = 0, potassium_mg_l = 0, sulphate_mg_l = 0, chloride_mg_l = 0;
  std::optional<double> ph_after_standing;  ///< in balance with the air of a room that is lived in
  std::optional<Range> ph_in_tank;          ///< at the usual CO2 of a tank
  bool operator==(const MixedWater&) const = default;
};

/// `ro_fraction` is held within 0 to 1; temperature as in carbonate.h. All of each salt counts as dissolved.
MixedWater mixed_water(const SourceWater& tap, double ro_fraction, std::span<const SaltDose> salts, double temperature_c);

/// GH or KH of the same mix when the tap's own is `share` lower and higher; empty where the tap's is not known.
struct TapSwing {
  std::optional<Range> gh_dgh, kh_dkh;
  bool operator==(const TapSwing&) const = default;
};
TapSwing tap_swing(const SourceWater& tap, double ro_fraction, std::span<const SaltDose> salts, double share);

}  // namespace shoalwright
