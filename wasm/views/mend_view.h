// SPDX-License-Identifier: MIT
#pragma once

#include "mend/mend.h"
#include "views/slices.h"

namespace shoalwright {

/// What the keeper sees of ways to put the plan right.
struct MendDesk {
  bool open = false;
  SlicedSearch<MendSearch> work;
  Mends found;
};

}  // namespace shoalwright
