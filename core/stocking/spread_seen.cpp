// SPDX-License-Identifier: MIT
#include "stocking/spread_seen.h"

#include <algorithm>

namespace shoalwright {

namespace {

template <typename Sum>
SpreadSeen seen(const Spread& spread, int rows, Sum&& sum) {
  SpreadSeen out{spread.size.x, rows, {}};
  for (int row = 0; row < rows; ++row)
    for (int column = 0; column < spread.size.x; ++column) {
      SpotSeen spot;
      float wanted = 0, water = 0;
      sum(column, row, [&](std::size_t i) {
        if (!(spread.water_l[i] > 0)) return;
        wanted += spread.crowding[i] * spread.water_l[i];
        water += spread.water_l[i];
        spot.clear_cm = std::max(spot.clear_cm, spread.clear_cm[i]);
        spot.cover_cm = std::min(spot.cover_cm, spread.cover_cm[i]);
      });
      if (water > 0) spot.crowding = wanted / water;
      out.spots.push_back(spot);
    }
  return out;
}

template <typename Visit>
void behind(const GridSize& size, int column, int row, Visit&& visit) {
  for (int z = 0; z < size.z; ++z) visit(size.at(column, z, size.y - 1 - row));
}

template <typename Visit>
void below(const GridSize& size, int column, int row, Visit&& visit) {
  for (int y = 0; y < size.y; ++y) visit(size.at(column, size.z - 1 - row, y));
}

template <typename Spots>
std::vector<double> fish_in(const Spread& spread, Spots&& spots) {
  std::vector<double> fish;
  for (const GroupSpread& group : spread.groups) {
    fish.push_back(0);
    spots([&](std::size_t i) { fish.back() += group.fish[i]; });
  }
  return fish;
}

}  // namespace

SpreadSeen seen_from_front(const Spread& spread) {
  return seen(spread, spread.size.y, [&](int column, int row, auto&& visit) { behind(spread.size, column, row, visit); });
}

SpreadSeen seen_from_above(const Spread& spread) {
  return seen(spread, spread.size.z, [&](int column, int row, auto&& visit) { below(spread.size, column, row, visit); });
}

std::vector<double> fish_behind(const Spread& spread, int column, int row) {
  return fish_in(spread, [&](auto&& visit) { behind(spread.size, column, row, visit); });
}

std::vector<double> fish_below(const Spread& spread, int column, int row) {
  return fish_in(spread, [&](auto&& visit) { below(spread.size, column, row, visit); });
}

}  // namespace shoalwright
