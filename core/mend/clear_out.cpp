// SPDX-License-Identifier: MIT
#include "mend/clear_out.h"

#include <algorithm>
#include <tuple>

#include "mend/repairs.h"
#include "rules/edits.h"
#include "share/patch.h"

namespace shoalwright {

namespace {

int harms_in(const std::vector<Grade>& grades) {
  return static_cast<int>(
      std::count_if(grades.begin(), grades.end(), [](const Grade& one) { return one.severity == Severity::harm; }));
}

/// The plan without these kinds; empty where one of them is pinned.
std::optional<Cleared> without(const Plan& plan, const Catalog& catalog, const std::vector<std::string>& kinds) {
  const std::vector<Kept> stock = by_id(resolve_stock(plan, catalog));
  std::vector<const Kept*> leaving;
  for (const Kept& kept : stock)
    if (std::find(kinds.begin(), kinds.end(), kept.id) != kinds.end()) leaving.push_back(&kept);
  Cleared cleared{.plan = plan, .edits = leave_out(plan, leaving), .says = {say_leave_out(leaving)}};
  if (leaving.empty() || cleared.edits.empty()) return std::nullopt;
  Result<Plan> after = apply_patch(plan, cleared.edits);
  if (!after || !keeps_what_is_pinned(plan, *after)) return std::nullopt;
  cleared.plan = std::move(after.value());
  return cleared;
}

}  // namespace

std::optional<Cleared> clear_out(const Plan& plan, const Catalog& catalog, BodyRooms& bodies) {
  std::vector<std::string> gone;
  std::optional<Cleared> now;
  for (;;) {
    const Plan& at = now ? now->plan : plan;
    if (harms_in(grades_of(at, catalog, bodies)) == 0) break;
    std::optional<std::tuple<int, std::size_t, int, std::string>> best;
    for (const Kept& kept : by_id(resolve_stock(at, catalog))) {
      std::vector<std::string> kinds = gone;
      kinds.push_back(kept.id);
      const std::optional<Cleared> less = without(plan, catalog, kinds);
      if (!less) continue;
      const std::vector<Grade> grades = grades_of(less->plan, catalog, bodies);
      std::tuple<int, std::size_t, int, std::string> order(harms_in(grades), grades.size(), kept.have, kept.id);
      if (!best || order < *best) best = std::move(order);
    }
    if (!best) return std::nullopt;
    gone.push_back(std::get<3>(*best));
    now = without(plan, catalog, gone);
  }
  for (std::size_t i = 0; i < gone.size() && gone.size() > 1;) {
    std::vector<std::string> fewer = gone;
    fewer.erase(fewer.begin() + static_cast<std::ptrdiff_t>(i));
    std::optional<Cleared> less = without(plan, catalog, fewer);
    if (less && harms_in(grades_of(less->plan, catalog, bodies)) == 0) {
      gone = std::move(fewer);
      now = std::move(less);
    } else {
      ++i;
    }
  }
  return now;
}

}  // namespace shoalwright
