// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>

#include "draw/ui.h"

namespace shoalwright {

/// How long a frame may go on with work that is not awaited, ms. Little while a hand is at work, so that its frames stay quick;
/// more at other times, so that there are few, above all where each takes long to come: on a slow device, in a tab that is not
/// looked at.
inline double slice_ms(const Ui& ui) {
  const bool at_work = ui.now_s < ui.moved_s + 0.15;
  return at_work ? 4 : std::max(16.0, 800.0 * static_cast<double>(ImGui::GetIO().DeltaTime));
}

}  // namespace shoalwright
