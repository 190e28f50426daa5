// SPDX-License-Identifier: MIT
#pragma once

#include <array>
#include <vector>

namespace shoalwright {

/// Shares of a group over depth, one value a strip of equal height from the water line down, `per_level` to each third: around
/// the middles of the thirds by its shares, each third with just its own.
std::vector<double> over_depth(const std::array<double, 3>& shares, int per_level);

}  // namespace shoalwright
