// SPDX-License-Identifier: MIT
// How long an assessment of the bench plan takes: each figure beside its budget.
#include "assess/assess.h"
#include "stocking/layers.h"
#include "stocking/spread.h"
#include "timing.h"

namespace shoalwright {
namespace {

int run() {
  Plan plan = bench_plan();
  if (plan.stock.empty()) return 1;
  const Catalog& catalog = the_catalog();
  std::size_t findings = 0;  // so that nothing is optimised away
  bool ok = true;
  BodyRooms bodies;  // kept, as the planner keeps it
  ok &= print("assess the bench plan from nothing",
              median_ms(301, [&](int) { findings += assess(plan, catalog).findings.size(); }), 6);
  ok &= print("assess after a change of count",
              median_ms(301,
                        [&](int i) {
                          plan.stock[0].count = 6 + i % 12;
                          findings += assess(plan, catalog, bodies).findings.size();
                        }),
              2);
  ok &= print("assess after moving a piece",
              median_ms(301,
                        [&](int i) {
                          plan.pieces[0].x_cm = 20 + i % 40;
                          findings += assess(plan, catalog, bodies).findings.size();
                        }),
              3);
  // What is laid over the tank may follow a drag by 100 ms.
  const std::vector<Kept> stock = resolve_stock(plan, catalog);
  update(bodies, plan);
  ok &= print("who is where in the bench plan",
              median_ms(101, [&](int) { findings += spread_of(plan, stock, bodies).groups.size(); }), 20);
  Plan large = plan;
  large.tank.length_cm = 200;
  large.tank.width_cm = large.tank.height_cm = 60;
  large.tank.fill_cm = 56;
  BodyRooms wide = bodies_of(large);
  ok &= print("the same in 200 x 60 x 60 cm",
              median_ms(31, [&](int) { findings += spread_of(large, stock, wide).groups.size(); }), 50);
  BodyRooms kept;
  ok &= print("assess 200 x 60 x 60 cm after moving a piece",
              median_ms(61,
                        [&](int i) {
                          large.pieces[0].x_cm = 20 + i % 40;
                          findings += assess(large, catalog, kept).findings.size();
                        }),
              30);
  for (const NamedPlan& named : all_plans())
    if (named.name.rfind("overstocked", 0) == 0)
      ok &= print("assess the plan with the most findings",
                  median_ms(301, [&](int) { findings += assess(named.plan, catalog).findings.size(); }), 6);
  return ok && findings > 0 ? 0 : 1;
}

}  // namespace
}  // namespace shoalwright

int main() { return shoalwright::run(); }
