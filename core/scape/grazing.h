// SPDX-License-Identifier: MIT
#pragma once

#include "scape/scape.h"

namespace shoalwright {

/// Leaf faces over the floor that a plant stands on: two layers of leaves, grown over above and below. Common practice, no
/// source.
inline constexpr double leaf_faces = 4;

/// What animals that graze find growth on, cm2.
struct GrazingSurface {
  double glass_cm2 = 0;  ///< panes between substrate and water line
  double hard_cm2 = 0;   ///< wood, stone and clay in the water
  double leaf_cm2 = 0;
  double all_cm2() const { return glass_cm2 + hard_cm2 + leaf_cm2; }
};

/// Panes: exact, but for the front, which is kept clean (common practice, no source): what of the outline faces the viewer to
/// within 41 degrees. What stands against a pane is not taken off it. Hard surface: faces of solid cells in the water, those of
/// one open cell along different axes taken as one slanting face: right for what stands along the tank, within a twelfth at any
/// slope; twigs thinner than a cell are found in part only. Devices are left out. Leaves: floor under drawn plants, leaves over
/// leaves counted once, times `leaf_faces`; floating ones are left out. Without pieces only glass. `scape` is of the plan.
GrazingSurface grazing_surface_of(const Plan& plan, const Scape& scape);

}  // namespace shoalwright
