// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/scene/profile.h"
#include "draw/ui.h"
#include "views/tank_view.h"

namespace shoalwright {

/// Keeps scene and profile of `mine` in step with what is shown; works only when that has changed.
void update_pictures(const Look& look, const std::vector<Kept>& stock, Theme theme, TankState& mine);

/// The depth profile beside the glass, on the glass's own scale: `water_y` and `px_per_cm` are those of the front view.
void draw_profile(Ui& ui, const Look& look, const Box& box, float water_y, float px_per_cm, const ProfilePicture& profile);

}  // namespace shoalwright
