// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

/// A closed interval of one quantity, low <= high, in the unit that the name of the member says.
struct Range {
  double low = 0, high = 0;
  bool operator==(const Range&) const = default;
};

}  // namespace shoalwright
