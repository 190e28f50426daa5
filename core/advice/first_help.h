// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalog/catalog.h"
#include "plan/plan.h"
#include "rules/limits.h"

namespace shoalwright {

// First help for animals that swim already in a tank whose filter does not carry them yet.

/// Free ammonia, mg/L as NH3, that animals are to be kept under: Ornamental Aquatic Trade Association, water quality criteria
/// 2008 (value from memory).
inline constexpr double help_nh3_mg_l = limits::ammonia_nh3_allowed_mg_l;

/// Nitrite, mg/L as NO2 (the same criteria, from memory), and where the water holds under `help_chloride_mg_l` of chloride, which
/// is what protects gills from it: the limits of the rule. Chloride that is not known counts as little here, where animals are in
/// need.
inline constexpr double help_nitrite_mg_l = limits::nitrite_steps_mg_l(false).strain,
                        help_nitrite_low_chloride_mg_l = limits::nitrite_steps_mg_l(true).strain,
                        help_chloride_mg_l = limits::nitrite_little_chloride_mg_l;

/// Most of the water to change at once, and how many days ahead are told. Common practice, no source.
inline constexpr double help_most_at_once = limits::change_largest;
inline constexpr int help_days = 14;
/// A change that is made at all takes at least this share, days of clean tests before the next animal. Common practice, no
/// source.
inline constexpr double help_least_at_once = 0.1;
inline constexpr int help_clean_days = 2;

enum class HelpState {
  nobody_swims,  ///< no animal is there: nothing to do
  not_measured,  ///< animals are there; `tests_first` says what is to be tested
  within_limits,
  act
};

/// One change of water. Ammonia as free NH3, nitrite as NO2, mg/L; empty: not measured.
struct HelpChange {
  int day = 0;  ///< 0: today
  double litres = 0;
  std::optional<double> nh3_before_mg_l, nh3_after_mg_l, nitrite_before_mg_l, nitrite_after_mg_l;
  bool operator==(const HelpChange&) const = default;
};

struct FirstHelp {
  HelpState state = HelpState::nobody_swims;
  std::optional<double> nh3_mg_l, nitrite_mg_l;
  double nh3_limit_mg_l = help_nh3_mg_l, nitrite_limit_mg_l = help_nitrite_low_chloride_mg_l;
  std::optional<double> ammonia_rise_mg_l_d;  ///< total, as N, that the animals there give off; empty: not known
  std::vector<HelpChange> changes;            ///< today's first, at most one a day
  bool tap_frees_ammonia = false;        ///< by its higher pH, more than thinning out takes away; no changes: better none with it
  bool hardness_jumps = false;           ///< today's change moves GH or KH by more than one change should (getting_there.h)
  std::vector<std::string> tests_first;  ///< "ammonia", "nitrite", "pH"
  std::vector<std::string> says;         ///< steps in the order in which to take them
  bool operator==(const FirstHelp&) const = default;
};

/// From what was measured: total ammonia, nitrite, pH, temperature. Where pH was not measured the tap's counts. Today's change
/// brings both under their limits, at most half at once. The days after are worked out for a filter that takes up nothing yet and
/// animals fed as before, which is the safe assumption; new water holds no ammonia and no nitrite. Chloride: as measured
/// (plan/more_keys.h).
FirstHelp first_help(const Plan& plan, const Catalog& catalog);

}  // namespace shoalwright
