// SPDX-License-Identifier: MIT
// Milliseconds of the distance transform over the two grids that tests/bench/distance_ratio.py gives to scipy: "120x50x50: 2.345
// ms".
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "scape/box_grid.h"
#include "scape/distance.h"

namespace shoalwright {
namespace {

int run() {
  std::size_t reached = 0;  // so that nothing is optimised away
  for (const GridSize& size : {GridSize{120, 50, 50}, GridSize{240, 100, 100}}) {
    const Cells taken = grid_with_boxes(size, 24, 20260101);
    std::vector<double> ms;
    for (int i = 0; i < 7; ++i) {
      const auto start = std::chrono::steady_clock::now();
      reached += static_cast<std::size_t>(squared_distances(size, taken)[0]);
      ms.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    }
    std::sort(ms.begin(), ms.end());
    std::printf("%dx%dx%d: %.3f ms\n", size.x, size.z, size.y, ms[3]);
  }
  return reached > 0 ? 0 : 1;
}

}  // namespace
}  // namespace shoalwright

int main() { return shoalwright::run(); }
