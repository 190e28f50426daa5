// SPDX-License-Identifier: MIT
#pragma once

#include "views/own_fields.h"

namespace shoalwright {

/// How the kind is drawn: its picture as it is now, form, fins, colours and marks. `colour`: which colour is being chosen.
/// Spots: `own.picture`, `own.look.*`, `own.colour/0..3`, `own.paint/0..23`, `own.hex`.
void draw_own_look(OwnForm& form, Stack& stack, int& colour);

}  // namespace shoalwright
