// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "catalog/species.h"
#include "plan/plan.h"

namespace shoalwright {

/// The shared window of one quantity over the stock. Adding a species never widens it. Empty where the ranges do not meet, and
/// where no species has a range.
struct Window {
  std::optional<Range> tolerated, ideal;
  std::optional<double> now;     ///< what the tank has: its aim, else its source
  std::optional<double> margin;  ///< signed distance of `now` to the nearer tolerated edge, positive inside
  std::string low_by, high_by;   ///< species that set the edges; the first in stock order on a tie. Set also when the ranges do
                                 ///< not meet: then they are the two species that do not meet
  bool operator==(const Window&) const = default;
};

struct Windows {
  Window temperature_c, ph, gh_dgh, kh_dkh;
  std::optional<bool> reachable;
  std::optional<double> co2_mg_l;
  bool operator==(const Windows&) const = default;
};

/// The shared windows over `stock`: one entry a group in stock order, null for a species that is not known (it sets no edge). A
/// quantity that a species says nothing about does not bind it. `ideal` lies inside `tolerated`: where a species gives no ideal
/// range, its tolerated one counts. `now` is the aim; where there is none, the source for pH and hardness, and for temperature
/// the middle of the shared ideal window, else of the tolerated one (tap temperature says nothing about a tank). `reachable` and
/// `co2_mg_l` stay empty: reach.h.
Windows windows_of(const Plan& plan, const std::vector<const Species*>& stock);

}  // namespace shoalwright
