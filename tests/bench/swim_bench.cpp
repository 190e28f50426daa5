// SPDX-License-Identifier: MIT
// How long the fish of the bench plan take to swim on: each figure beside its budget.
#include <algorithm>
#include <chrono>
#include <cstdio>
#include <vector>

#include "stocking/layers.h"
#include "support/plan_files.h"
#include "swim/school.h"

namespace shoalwright {
namespace {

/// Median of many runs, ms.
template <class Work>
double median_ms(int runs, Work work) {
  std::vector<double> ms;
  for (int i = 0; i < runs; ++i) {
    const auto start = std::chrono::steady_clock::now();
    work();
    ms.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
  }
  std::nth_element(ms.begin(), ms.begin() + runs / 2, ms.end());
  return ms[static_cast<std::size_t>(runs / 2)];
}

bool print(const char* what, double figure_ms, double budget_ms) {
  const bool ok = figure_ms <= budget_ms;
  std::printf("%s: %.3f ms, %g ms, %s\n", what, figure_ms, budget_ms, ok ? "ok" : "over");
  return ok;
}

int run() {
  Plan plan;
  for (const NamedPlan& named : all_plans())
    if (named.name.rfind("bench-8-14", 0) == 0) plan = named.plan;
  for (Group& group : plan.stock) group.count *= 20;  // more than are ever drawn
  const std::vector<Kept> stock = resolve_stock(plan, the_catalog());
  const BodyRooms bodies = bodies_of(plan);
  School school;
  bool ok =
      print("bring 200 fish into the bench plan", median_ms(21, [&] { school = school_of(plan, stock, bodies, 1, 200); }), 100);
  if (school.fish.size() < 190 || plan.pieces.size() != 14) {
    std::printf("tests/plans/bench-8-14.json is not as it should be\n");
    return 1;
  }
  // A frame of a sixtieth of a second has 16.7 ms for everything.
  ok &= print("one step of 200 fish", median_ms(1201, [&] { step(school, 1.0f / 60); }), 2);
  // The dearest case for the looking round: all of one kind.
  plan.stock.resize(1);
  plan.stock[0].count = 200;
  school = school_of(plan, resolve_stock(plan, the_catalog()), bodies, 1, 200);
  ok &= print("one step of one shoal of 200", median_ms(1201, [&] { step(school, 1.0f / 60); }), 2);
  return ok ? 0 : 1;
}

}  // namespace
}  // namespace shoalwright

int main() { return shoalwright::run(); }
