// SPDX-License-Identifier: MIT
#pragma once

#include "stocking/spread_seen.h"

namespace shoalwright {

/// Who is where in what is shown. It follows a drag by up to a tenth of a second.
struct SpreadNow {
  int version = 0;  ///< one more each time
  Spread spread;
  SpreadSeen front, above;
};

}  // namespace shoalwright
