// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "advice/shelf_list.h"
#include "mend/repairs.h"
#include "stocking/stock.h"
#include "units/order.h"

namespace shoalwright {

namespace {

// What sets a kind apart from another in a keeper's eyes. Common practice, no source.
constexpr double other_level = 1.0, other_size = 1.0, other_shelf = 0.6, other_form = 0.4, other_company = 0.4;
constexpr double smallest_share = 0.5, largest_share = 1.6;

double unlikeness(const Species& one, const Species& other) {
  double sum = other_size * std::abs(std::log(other.size.adult_tl_cm / one.size.adult_tl_cm));
  for (std::size_t i = 0; i < 3; ++i) sum += other_level * std::abs(one.life.depth[i] - other.life.depth[i]) / 2;
  if (one.group != other.group) sum += other_shelf;
  if (one.look.form != other.look.form) sum += other_form;
  if (one.life.group.kind != other.life.group.kind) sum += other_company;
  return sum;
}

}  // namespace

std::vector<const Species*> like_kinds(const Plan& plan, const Catalog& catalog, const Species& species, std::size_t most) {
  struct Like {
    double unlike;
    const Species* kind;
  };
  const std::vector<Kept> stock = resolve_stock(plan, catalog);
  std::vector<Like> all;
  for (const Species* kind : shelf_kinds(plan, catalog)) {
    const double share = kind->size.adult_tl_cm / species.size.adult_tl_cm;
    const bool here = std::any_of(stock.begin(), stock.end(), [&](const Kept& kept) { return kept.id == kind->id; });
    if (here || kind->id == species.id || kind->kind != species.kind || !(share >= smallest_share && share <= largest_share))
      continue;
    all.push_back({unlikeness(species, *kind), kind});
  }
  sort_stable(all, [](const Like& a, const Like& b) { return a.unlike < b.unlike; });
  std::vector<const Species*> kinds;
  for (const Like& one : all) {
    if (kinds.size() == most) break;
    kinds.push_back(one.kind);
  }
  return kinds;
}

}  // namespace shoalwright
