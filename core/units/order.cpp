// SPDX-License-Identifier: MIT
#include "units/order.h"

#include <algorithm>

namespace shoalwright {

void order_pointers(std::vector<const void*>& items, const void* less, GoesBefore before) {
  std::stable_sort(items.begin(), items.end(), [=](const void* a, const void* b) { return before(less, a, b); });
}

}  // namespace shoalwright
