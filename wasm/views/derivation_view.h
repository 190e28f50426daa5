// SPDX-License-Identifier: MIT
#pragma once

#include "advice/derivation.h"
#include "views/pane.h"

namespace shoalwright {

/// Where a number of what is shown comes from: formula, inputs, where it holds, source. Nothing where there is no number.
[[gnu::noinline]] void draw_derivation(Pane& pane, Number number);

}  // namespace shoalwright
