// SPDX-License-Identifier: MIT
#pragma once

#include "scape/grazing.h"
#include "stocking/spread_seen.h"
#include "stocking/territory.h"

namespace shoalwright {

/// Who is where in what is shown, whose ground is whose, and what there is to graze. It follows a drag by up to a tenth of a
/// second.
struct SpreadNow {
  bool wanted = false;  ///< somebody has looked for it
  int version = 0;      ///< one more each time
  Spread spread;
  SpreadSeen front, above;
  Territories territories;
  GrazingSurface grazing;
};

}  // namespace shoalwright
