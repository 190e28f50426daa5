// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

/// Food a day, g, for which animals may have come in once stage 1, 2, ... of the arrivals has settled, while nothing is known of
/// what the filter clears: a quarter more of `all_g_d` with each stage. 0 before the first. Common practice, no source.
double arrival_feed_g_d(double all_g_d, int stage);

}  // namespace shoalwright
