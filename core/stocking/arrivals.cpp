// SPDX-License-Identifier: MIT
#include "stocking/arrivals.h"

#include <algorithm>

namespace shoalwright {

double arrival_feed_g_d(double all_g_d, int stage) { return std::clamp(0.25 * stage, 0.0, 1.0) * all_g_d; }

}  // namespace shoalwright
