// SPDX-License-Identifier: MIT
#pragma once

#include <span>
#include <vector>

#include "draw/scene/scene.h"

namespace shoalwright {

/// Room wanted over room open on a grid of nodes, row by row from the surface down; a node that is no water is not a number.
struct CrowdingField {
  int columns = 0, rows = 0;
  float x0_cm = 0, x1_cm = 0;          ///< of the first and the last column
  float depth0_cm = 0, depth1_cm = 0;  ///< of the first and the last row, below the waterline
  std::vector<float> nodes;
  bool operator==(const CrowdingField&) const = default;
};

/// One group in the field: where along the tank it keeps to most, how far it spreads from there, and what it wants at each depth.
struct FieldShare {
  float home_cm = 0, reach_cm = 1;
  std::vector<float> wanted_l_cm;  ///< litres per cm of depth, one value a row
};

/// Spreads what groups want along their rows. `open_l_cm` has one value a row, `open_share` one a column (1 all open, 0 all taken
/// by plants; empty: open throughout), `over` one a row: whether the level itself has less room than is wanted. A row's mean is
/// what is wanted over what is open there. Where the level has room no spot passes 0.985: the row is bent under that ceiling with
/// its mean kept, since fish spread until no spot is over; only a mean that is above the ceiling itself is held to it. Rows
/// without water are not a number. Nothing (rows 0) without two depths and a length.
CrowdingField spread_field(const std::vector<float>& depth_cm, const std::vector<float>& open_l_cm,
                           const std::vector<FieldShare>& shares, const std::vector<float>& open_share,
                           const std::vector<bool>& over, float length_cm);

/// Where a contour may carry its words, in the plan's axes.
struct ContourLabel {
  float level = 0;  ///< 0.25, 0.5, 0.75
  float x_cm = 0, depth_cm = 0;
};

/// The field made ready. Owned by the caller.
struct CrowdingCache {
  CrowdingField built_for;
  bool built = false;
  struct Line {
    int step = 0;  ///< 0 to 3: one quarter, half, three quarters, full
    std::vector<Vec> points;
  };
  std::vector<Line> lines;
  std::vector<ContourLabel> labels;
  std::vector<Vec> hatch;  ///< middles of strokes, where the value is over 1
};
bool update(CrowdingCache& cache, const CrowdingField& field);

/// Shading, contours and, where a value is over 1, hatching, over the water of the front view.
void draw_crowding(ImDrawList* list, const CrowdingCache& cache, const Scene& scene, const FrontView& view);

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
