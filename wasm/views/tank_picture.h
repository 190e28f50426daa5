// SPDX-License-Identifier: MIT
// From a plan to what the drawing kit draws: the scene, the depth profile.
#pragma once

#include "app/look.h"
#include "draw/scene/profile.h"
#include "draw/scene/scene.h"
#include "stocking/stock.h"

namespace shoalwright {

Scene scene_of(const Plan& plan, Theme theme);

/// Of `shown`; `before` gives the dashed line, null when nothing is held. `held_number` is the plate of the kind in hand, 0:
/// none.
ProfilePicture profile_picture(const Plan& shown, const std::vector<Kept>& stock, const BodyRooms& bodies, const Plan* before,
                               const Catalog& catalog, int held_number);

}  // namespace shoalwright
