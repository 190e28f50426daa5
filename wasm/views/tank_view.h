// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/scene/profile.h"
#include "draw/scene/scene.h"
#include "draw/ui.h"
#include "views/overlay_view.h"
#include "views/piece_edit.h"
#include "views/shoals.h"
#include "views/swim_view.h"
#include "views/terrain_edit.h"
#include "views/zoom.h"

namespace shoalwright {

/// What the drawn tank keeps: tessellated scene and field, the places of the animals, the depth profile, and which shoal the
/// pointer is over.
struct TankState {
  SceneCache scene;
  OverlayState overlay, overlay_above;
  PointerRest rest, rest_above;
  Zoom zoom, zoom_above;
  Plan placed;  ///< the plan whose animals these are
  std::vector<Shoal> shoals;
  SwimState swim;
  Plan profiled;  ///< the plan that the profiles below are of
  Plan profiled_before;
  ProfilePicture profile;
  PieceEdit pieces;
  TerrainEdit terrain;
  std::string lifted;  ///< species of the group that is being dragged out
};

/// The group whose lane falls shortest of what it wants, or has least to spare; null: none wants one.
const GroupRoom* tightest_lane(const Room& room);

/// The lane that is drawn: that of this group, else that of the middle layer.
const Lane& shown_lane(const Room& room);

/// Front elevation to scale, nearer by the wheel, with its tool row, and the depth profile beside the glass. Spots: `tool.*`,
/// `tank.front`, `tank.fish/<species>`.
void draw_tank_front(Ui& ui, const Look& look, const Box& box, TankState& mine, Actions& out);

/// The tank from above, in the same cm. Spot: `tank.above`.
void draw_tank_above(Ui& ui, const Look& look, const Box& box, TankState& mine, Actions& out);

}  // namespace shoalwright
