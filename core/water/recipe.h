// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <span>
#include <string>
#include <vector>

#include "plan/plan.h"
#include "water/mix.h"
#include "water/mix_aim.h"

namespace shoalwright {

// The recipe for new water, worked backwards from its aim. Never an acid: reverse-osmosis water is the only thing that lowers.
//
// It is a linear programme in the share of tap water and the degrees that each sort of salt adds, with goals one after the other:
// 1. as little outside the animals' shared windows as can be (the keeper's own aim widens a window that it lies outside of),
// 2. the least miss of the aim: the sum over GH and KH, each in parts of the shared window's width, so that GH counts less where
//    the window is wide; of two that one knob cannot both meet, one is met exactly,
// 3. the least of a salt that dissolves only where there is CO2 (calcium carbonate),
// 4. the least reverse-osmosis water,
// 5. the ratio of calcium to magnesium in what is added, where the keeper has both,
// 6. the least grams: within a sort (calcium, magnesium, hydrogen carbonate) the salt that weighs least.
// Goals 1 to 4 are solved exactly on the corners where its lines cross. An aim that can be met is met to rounding (1e-9).

/// What the mix misses. `by`: reached less aimed at, above 0 when there is too much; empty: the tap's value is not known.
struct Miss {
  WaterQuantity quantity = WaterQuantity::gh;
  std::optional<double> by;
  bool operator==(const Miss&) const = default;
};

/// How far tap water is taken to swing over a year for Recipe::swing, as a share. Common practice, no source.
inline constexpr double tap_swing_share = 0.10;

/// Width of a shared window where none is known, degrees, to weigh GH against KH by. Common practice, no source.
inline constexpr double usual_gh_window_dgh = 12, usual_kh_window_dkh = 6;

struct Recipe {
  std::optional<double> ro_fraction;  ///< 0 to 1; empty: neither GH nor KH of the tap is known
  std::vector<SaltDose> salts;        ///< in the order in which the keeper has them; none of nothing
  bool slow = false;                  ///< one of them needs CO2 to dissolve
  MixedWater reached;
  std::vector<Miss> missed;  ///< GH, KH, pH; empty: the aim is met
  TapSwing swing;            ///< of the same recipe when the tap is `tap_swing_share` softer and harder
  /// Reverse-osmosis share that mixing alone would take for each; empty where it could not, or nothing is aimed at.
  std::optional<double> ro_for_gh, ro_for_kh;
  bool operator==(const Recipe&) const = default;
};

/// `salts`: ids of those that the keeper has; none when empty, since nothing that is not there can be weighed. Unknown ids add
/// nothing. What the tap lacks a value for is left as it is.
Recipe recipe_for(const SourceWater& tap, const MixAim& aim, std::span<const std::string> salts);

/// The same at that share of reverse-osmosis water, 0 to 1: only the salts are chosen.
Recipe recipe_at(const SourceWater& tap, const MixAim& aim, std::span<const std::string> salts, double ro_fraction);

/// What comes of salts and a share of reverse-osmosis water that the keeper has chosen, forwards: nothing is solved, what it
/// misses of the aim is told. `doses`: of known salts, 0 or more.
Recipe recipe_with(const SourceWater& tap, const MixAim& aim, std::span<const SaltDose> doses, double ro_fraction);

/// The three that most keepers have, by id: what to offer where the salts at hand do not do. Common practice, no source.
std::span<const std::string> usual_salts();

}  // namespace shoalwright
