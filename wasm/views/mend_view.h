// SPDX-License-Identifier: MIT
#pragma once

#include <memory>
#include <optional>

#include "mend/mend.h"

namespace shoalwright {

/// What the keeper sees of ways to put the plan right.
struct MendDesk {
  bool open = false;
  std::unique_ptr<MendSearch> search;  ///< of `of`
  Plan of;
  bool done = false;
  Mends found;
};

}  // namespace shoalwright
