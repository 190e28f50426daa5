// SPDX-License-Identifier: MIT
#include "stocking/spill.h"

#include <algorithm>

namespace shoalwright {

double crowding_of(const std::vector<Demand>& stock, const std::vector<Spilled>& spilled, const LayerWater& water,
                   std::size_t level) {
  double sum = 0;
  for (std::size_t g = 0; g < stock.size(); ++g)
    if (const double open = open_l(stock[g], water, level); spilled[g].count[level] > 0 && open > 0)
      sum += spilled[g].count[level] * stock[g].personal_l / open;
  return sum;
}

std::vector<Spilled> spilled(const std::vector<Demand>& stock, const LayerWater& water) {
  std::vector<Spilled> all;
  for (const Demand& demand : stock) {
    Spilled one;
    for (std::size_t level = 0; level < 3; ++level) one.count[level] = demand.count * demand.depth[level];
    all.push_back(one);
  }
  for (std::size_t level = 0; level < 3; ++level) {
    const double full = crowding_of(stock, all, water, level);
    if (!(full > 1)) continue;
    for (std::size_t g = 0; g < stock.size(); ++g) {
      const Demand& demand = stock[g];
      double over = all[g].count[level] * (1 - 1 / full);
      std::array<bool, 3> tried{};
      tried[level] = true;
      for (int other = 0; other < 2 && over > 0; ++other) {
        std::size_t best = level;
        for (std::size_t to = 0; to < 3; ++to)
          if (!tried[to] && demand.depth[to] > 0 && (best == level || demand.depth[to] > demand.depth[best])) best = to;
        if (best == level) break;
        tried[best] = true;
        const double spare = (1 - crowding_of(stock, all, water, best)) * open_l(demand, water, best) / demand.personal_l;
        const double moved = std::clamp(spare, 0.0, over);
        all[g].count[best] += moved;
        all[g].count[level] -= moved;
        over -= moved;
      }
      all[g].without_room += over;
    }
  }
  return all;
}

}  // namespace shoalwright
