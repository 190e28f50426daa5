// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "draw/ui.h"

namespace shoalwright {

/// A card in the middle of `window` with one sentence and a way back. True when it was answered (button or Escape).
/// Spots: `notice`, `notice/back`.
bool draw_notice(Ui& ui, const Box& window, std::string_view heading, std::string_view sentence);

}  // namespace shoalwright
