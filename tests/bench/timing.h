// SPDX-License-Identifier: MIT
#pragma once

#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "support/plan_files.h"

namespace shoalwright {

/// Median of many runs of `work`, which is told the number of the run, ms.
template <class Work>
double median_ms(int runs, Work work) {
  std::vector<double> ms;
  for (int i = 0; i < runs; ++i) {
    const auto start = std::chrono::steady_clock::now();
    work(i);
    ms.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
  }
  std::nth_element(ms.begin(), ms.begin() + runs / 2, ms.end());
  return ms[static_cast<std::size_t>(runs / 2)];
}

/// Prints a figure beside its budget, and whether it is within.
inline bool print(const char* what, double figure_ms, double budget_ms) {
  const bool ok = figure_ms <= budget_ms;
  std::printf("%s: %.3f ms, %g ms, %s\n", what, figure_ms, budget_ms, ok ? "ok" : "over");
  return ok;
}

/// tests/plans/bench-8-14.json; says so and is empty where it does not have its 8 groups and 14 pieces.
inline Plan bench_plan() {
  for (const NamedPlan& named : all_plans())
    if (named.name.rfind("bench-8-14", 0) == 0 && named.plan.stock.size() == 8 && named.plan.pieces.size() == 14)
      return named.plan;
  std::printf("tests/plans/bench-8-14.json is not as it should be\n");
  return {};
}

}  // namespace shoalwright
