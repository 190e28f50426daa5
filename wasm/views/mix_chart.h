// SPDX-License-Identifier: MIT
// The plane of hardness as it is drawn and dragged: KH to the right, GH up.
#pragma once

#include <algorithm>
#include <optional>
#include <string>

#include "views/water_desk.h"

namespace shoalwright {

/// The tap, the mix without salts, what the salts make of it, and what was wanted. All or none are known.
struct MixMarks {
  std::optional<HardnessPoint> tap, mix, reached, aim;
};

/// Where degrees lie on the screen.
struct MixPlot {
  Box box;
  double most_gh, most_kh;

  ImVec2 at(const HardnessPoint& p) const {
    return {box.x + static_cast<float>(p.kh_dkh / most_kh) * box.w,
            box.bottom() - static_cast<float>(p.gh_dgh / most_gh) * box.h};
  }
  HardnessPoint under(ImVec2 px) const {
    return {std::clamp((box.bottom() - px.y) / box.h, 0.0f, 1.0f) * most_gh,
            std::clamp((px.x - box.x) / box.w, 0.0f, 1.0f) * most_kh};
  }
};

/// "GH 7, KH 3.2", as the keeper counts.
std::string point_words(const Measures& measures, const HardnessPoint& at);
/// The tap, the mix and the aim as things to be dragged or moved by arrow keys; each says what it comes to as a choice of the
/// page, the tap as an edit of the plan once it is let go. Draws only rings.
void draw_mix_hands(WaterDesk& desk, const MixPlot& plot, const MixMarks& marks);

}  // namespace shoalwright
