// SPDX-License-Identifier: MIT
#pragma once

#include "app/look.h"
#include "draw/ui.h"

namespace shoalwright {

/// The years of the stock as a row to choose from, at the right of `box`; returns how much of its width is used. Spots:
/// `years/0..3`.
[[gnu::noinline]] float draw_years(Ui& ui, const Look& look, const Box& box, Actions& out);

}  // namespace shoalwright
