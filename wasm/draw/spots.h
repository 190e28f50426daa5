// SPDX-License-Identifier: MIT
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "imgui.h"

namespace shoalwright {

/// Where everything that can be used stands in this frame, in the order of the Tab key. Tests aim a real mouse at it and the
/// page's text form names its controls by it.
struct Spots {
  struct Spot {
    std::string id;
    ImVec2 min, max;  ///< CSS pixels on the screen, cut to what is visible of it
    std::string label;
    bool visible = true;  ///< false: scrolled out of sight, `min` and `max` are then uncut
    bool enabled = true;
    bool cut_across = false;  ///< its left or right is out of sight: no scrolling up and down will show it whole
  };
  std::vector<Spot> list;

  void clear() { list.clear(); }
  /// The first spot of that id; null when there is none in this frame.
  const Spot* find(std::string_view id) const {
    for (const Spot& spot : list)
      if (spot.id == id) return &spot;
    return nullptr;
  }
};

}  // namespace shoalwright
