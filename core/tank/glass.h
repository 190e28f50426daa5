// SPDX-License-Identifier: MIT
#pragma once

#include "plan/plan.h"

namespace shoalwright {

/// The inside of a tank that is given by its outside measures and `glass_mm`: every pane is as thick, the bottom too, the top is
/// open. `fill_cm` is an inside measure already; where it is 0 it becomes the inside height less the usual gap. Measures that the
/// glass eats up come back as 0. Elementary geometry.
Tank inside_of(const Tank& outside);

/// The outside measures of a tank of the plan; the way back from inside_of. `fill_cm` stays as it is.
Tank outside_of(const Tank& inside);

}  // namespace shoalwright
