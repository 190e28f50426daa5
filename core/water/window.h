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
  std::string low_by, high_by;   ///< species that set the edges; the first in stock order on a tie. Set also when the ranges do not
                                 ///< meet: then they are the two species that do not meet
  bool operator==(const Window&) const = default;
};

struct Windows {
  Window temperature_c, ph, gh_dgh, kh_dkh;
  std::optional<bool> reachable;
  std::optional<double> co2_mg_l;
  bool operator==(const Windows&) const = default;
};

}  // namespace shoalwright
