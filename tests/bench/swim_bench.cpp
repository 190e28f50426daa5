// SPDX-License-Identifier: MIT
// How long the fish of the bench plan take to swim on: each figure beside its budget.
#include <cstdio>

#include "stocking/layers.h"
#include "swim/school.h"
#include "timing.h"

namespace shoalwright {
namespace {

int run() {
  Plan plan = bench_plan();
  for (Group& group : plan.stock) group.count *= 20;  // more than are ever drawn
  const std::vector<Kept> stock = resolve_stock(plan, the_catalog());
  const BodyRooms bodies = bodies_of(plan);
  School school;
  bool ok = print("bring 200 fish into the bench plan",
                  median_ms(21, [&](int) { school = school_of(plan, stock, bodies, 1, 200); }), 100);
  if (school.fish.size() < 190) {
    std::printf("fewer than 190 fish swim\n");
    return 1;
  }
  // A frame of a sixtieth of a second has 16.7 ms for everything.
  ok &= print("one step of 200 fish", median_ms(1201, [&](int) { step(school, 1.0f / 60); }), 2);
  // The dearest case for the looking round: all of one kind.
  plan.stock.resize(1);
  plan.stock[0].count = 200;
  school = school_of(plan, resolve_stock(plan, the_catalog()), bodies, 1, 200);
  ok &= print("one step of one shoal of 200", median_ms(1201, [&](int) { step(school, 1.0f / 60); }), 2);
  return ok ? 0 : 1;
}

}  // namespace
}  // namespace shoalwright

int main() { return shoalwright::run(); }
