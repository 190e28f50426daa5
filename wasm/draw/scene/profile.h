// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "draw/palette.h"

namespace shoalwright {

/// Litres per cm of depth. Every curve has one value a depth; `key` is the plate number of the group.
struct ProfileShare {
  int key = 1;
  bool held = false;  ///< previewed, drawn paler
  std::vector<float> wanted_l_cm;
};
struct ProfilePicture {
  std::vector<float> depth_cm;  ///< rising, below the waterline
  std::vector<float> open_l_cm;
  std::vector<ProfileShare> shares;  ///< stacked in this order from the axis
  std::vector<float> before_l_cm;    ///< sum as it is now, empty unless something is held
  int tightest = -1;                 ///< index of the tightest depth, -1 when there is none
};

/// Where the profile stands: the axis (value 0) at x, the waterline at y.
struct ProfileView {
  float x = 0, y = 0, px_per_cm = 1, px_per_l_cm = 1;
};

/// Places for what the caller writes: number discs, the figure at the tightest mark, ends of the axis.
struct ProfileLayout {
  struct Disc {
    int key = 1;
    ImVec2 at;
  };
  std::vector<Disc> discs;
  ImVec2 tightest_from, tightest_to;  ///< wanted and open at the tightest depth
  float spare_l_cm = 0;               ///< there; negative when over
  float bottom_y = 0;
};
ProfileLayout draw_depth_profile(ImDrawList* list, const ProfilePicture& profile, const ProfileView& view,
                                 const Palette& colours);

/// A scale for the profile: the largest round number of L/cm that holds every curve, at least 1.
float profile_top_l_cm(const ProfilePicture& profile);

}  // namespace shoalwright
