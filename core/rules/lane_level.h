// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <vector>

#include "rules/facts.h"

namespace shoalwright {

/// A terrain line with its hills cut off, and what that does.
struct LaneLevelling {
  double by_cm = 0;  ///< so much lower at the highest
  std::vector<LinePoint> line;
  double lane_cm = 0;  ///< the lane afterwards
};

/// Whether a hill of the terrain line ends a lane.
bool ends_at_hill(const Facts& facts, const Lane& lane, const BodySize& body);

/// The least that the hills of the terrain line have to be cut off, in whole cm, so that a body has a lane of the first of
/// `wanted_cm` that can be had. Empty where there is no line, where it is pinned, or where cutting off does not help.
std::optional<LaneLevelling> least_lane_levelling(const Facts& facts, const BodySize& body, std::size_t level,
                                                  const std::vector<double>& wanted_cm);

/// That line as a patch of the canonical plan.
std::vector<PatchStep> level_edits(const Plan& plan, const LaneLevelling& levelling);

}  // namespace shoalwright
