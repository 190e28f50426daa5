// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <optional>
#include <vector>

#include "advice/meetings.h"
#include "draw/layout.h"
#include "draw/text.h"

namespace shoalwright {

/// What the keeper sees of who meets whom.
struct MeetingsDesk {
  bool open = false;
  std::optional<Plan> of;  ///< what was looked at
  Meetings found;
  int pointed = -1;  ///< meeting whose arc or words the pointer was on in the last frame
};

/// A group on its level: one dot for each animal, those that find no place told by a figure.
struct Capsule {
  Box box;
  std::size_t row = 0;  ///< 0, 2, 4, 6 the lanes from the surface down, 1, 3, 5 the lines between them
  int dots = 0, more = 0;
};

/// Capsules in the order of the groups, none over another, and the lanes behind them. Rows wrap where they are full.
struct MeetingsLayout {
  std::vector<Capsule> capsules;
  std::array<Box, 4> lanes{};
  float height = 0;
};
MeetingsLayout meetings_layout(const Pen& pen, const std::vector<MeetingGroup>& groups, ImVec2 at, float width);

}  // namespace shoalwright
