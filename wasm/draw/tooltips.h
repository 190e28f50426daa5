// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "draw/ui.h"

namespace shoalwright {

/// Right after an item: a tip with its name and key after 400 ms of pointing at it, or of standing on it with the keyboard.
void tooltip(Ui& ui, const Box& anchor, const Item& of, std::string_view text, std::string_view key = {});

/// True when the item has been pointed at (or stood on) for 400 ms: draw something of your own then.
bool tooltip_due(Ui& ui, const Item& of);

}  // namespace shoalwright
