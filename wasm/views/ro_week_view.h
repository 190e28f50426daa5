// SPDX-License-Identifier: MIT
#pragma once

#include "views/pane.h"

namespace shoalwright {

/// Reverse-osmosis water that the plan's changes take in a week and what making it sends to the drain, by the usual range or by
/// the keeper's own filter. Nothing where none is taken. Spots: `load.ro`, `load.ro_drain`.
[[gnu::noinline]] void draw_ro_week(Pane& pane);

}  // namespace shoalwright
