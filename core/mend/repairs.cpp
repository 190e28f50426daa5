// SPDX-License-Identifier: MIT
#include "mend/repairs.h"

#include <algorithm>
#include <string_view>

#include "advice/tank_for.h"
#include "assess/largest.h"
#include "catalog/plural.h"
#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/larger_tank.h"
#include "share/patch.h"
#include "share/plan_json.h"
#include "tank/glass.h"
#include "units/json.h"

namespace shoalwright {

namespace {

bool is_grave(Severity severity) { return severity == Severity::harm || severity == Severity::strain; }

// Kinds that take each other for rivals keep apart in a tank that is large enough.
bool short_of_room(std::string_view rule) { return asks_for_room(rule) || rule == "look-alike-rivalry"; }

/// Whether a patch leads to a plan that pins allow, and which.
std::optional<Plan> led_to(const Plan& plan, const std::vector<PatchStep>& edits) {
  Result<Plan> after = apply_patch(plan, edits);
  if (!after || !keeps_what_is_pinned(plan, *after)) return std::nullopt;
  return std::move(after.value());
}

/// Whether all of them were there before, as grave and as much.
bool known_before(const std::vector<Grade>& grades, const std::vector<Grade>& before) {
  return std::all_of(grades.begin(), grades.end(), [&](const Grade& one) { return known_before(one, before); });
}

class Gathering {
 public:
  /// `grades` are those of the plan.
  Gathering(const Plan& plan, const Catalog& catalog, BodyRooms& bodies, std::vector<Grade> grades)
      : plan_(plan), catalog_(catalog), bodies_(bodies), grades_(std::move(grades)) {}

  void add(std::string says, std::vector<PatchStep> edits) {
    if (edits.empty()) return;
    const bool there = std::any_of(repairs_.begin(), repairs_.end(), [&](const Repair& repair) { return repair.edits == edits; });
    if (!there) repairs_.push_back({std::move(says), std::move(edits)});
  }

  void add_fewer(const Kept& kept, std::optional<int> most) {
    if (most && *most > 0 && *most < kept.count) add(say_count(kept, *most), set_count(plan_, kept, *most));
    add(say_leave_out({&kept}), leave_out(plan_, {&kept}));
  }

  /// The most like kind that would raise nothing new in its place; only for what does not swim yet.
  void add_like_kind(const Kept& kept) {
    constexpr std::size_t most_tried = 12;
    if (kept.have > 0 || kept.lines.size() != 1 || leave_out(plan_, {&kept}).empty()) return;
    for (const Species* kind : like_kinds(plan_, catalog_, *kept.species, most_tried)) {
      const int least = std::max(kind->life.group.least, 1);
      const int count = std::clamp(kept.count, least, std::max(kind->life.group.good, least));
      const std::string line = "/stock/" + std::to_string(kept.lines.front());
      std::string id;
      append_quoted(id, kind->id);
      std::vector<PatchStep> edits = {{"replace", line + "/species", id}, {"replace", line + "/count", std::to_string(count)}};
      const Group& group = plan_.stock[static_cast<std::size_t>(kept.lines.front())];
      if (group.males) edits.push_back({"replace", line + "/males", "null"});
      if (group.females) edits.push_back({"replace", line + "/females", "null"});
      const std::optional<Plan> after = led_to(plan_, edits);
      if (!after || !known_before(grades_of(*after, catalog_, bodies_), grades_)) continue;
      const auto group_of = [](int animals, const Species& species) {
        return animals == 1 ? "a " + name_for(species, 1) : std::to_string(animals) + " " + name_for(species, animals);
      };
      add("Take " + group_of(count, *kind) + " instead of " + (kept.count == 1 ? "the " : std::to_string(kept.count) + " ") +
              name_for(*kept.species, kept.count),
          edits);
      return;
    }
  }

  /// The smallest usual tank, nowhere smaller, where room is no longer short; where none will do, nothing.
  void add_larger_tank(std::span<const Finding> grave) {
    if (std::none_of(grave.begin(), grave.end(), [](const Finding& one) { return short_of_room(one.rule); })) return;
    const Tank now = outside_of(plan_.tank);
    for (const UsualSize& size : usual_sizes()) {
      if (size.us || !nowhere_smaller(size, now)) continue;
      std::vector<PatchStep> edits = exchange_tank(plan_, tank_of(size));
      if (edits.empty()) return;
      const std::optional<Plan> after = led_to(plan_, edits);
      if (!after || plan_json(*after) == plan_json(plan_)) continue;
      const std::vector<Grade> grades = grades_of(*after, catalog_, bodies_);
      if (std::any_of(grades.begin(), grades.end(), [](const Grade& one) { return short_of_room(one.rule); })) continue;
      add(say_take(size), std::move(edits));
      return;
    }
  }

  std::vector<Repair> take() { return std::move(repairs_); }

 private:
  const Plan& plan_;
  const Catalog& catalog_;
  BodyRooms& bodies_;
  const std::vector<Grade> grades_;
  std::vector<Repair> repairs_;
};

}  // namespace

bool keeps_what_is_pinned(const Plan& before, const Plan& after) {
  if (before.fixed.empty()) return true;
  if (before.fixed.size() != after.fixed.size()) return false;  // what is pinned moves along, it does not go
  const std::string was = plan_json(before), is = plan_json(after);
  for (std::size_t i = 0; i < before.fixed.size(); ++i)
    if (json_at(was, before.fixed[i]) != json_at(is, after.fixed[i])) return false;
  return true;
}

std::vector<Repair> repairs_of(const Plan& plan, const Catalog& catalog, BodyRooms& bodies, RepairsOf extent) {
  const std::vector<Kept> stock = resolve_stock(plan, catalog);
  const Reckoned all = reckon(plan, stock, bodies);
  const Facts facts = facts_of(plan, catalog, all, bodies);
  std::vector<Finding> grave = findings_of(facts, Found::Keep::findings);
  std::erase_if(grave, [](const Finding& one) { return !is_grave(one.severity); });
  LargestSearch largest(plan, catalog, all.stock, all.volume, all.room, bodies);

  Gathering repairs(plan, catalog, bodies, grades_of(facts));
  for (const Finding& one : grave) repairs.add(one.remedy, one.edits);
  for (const Kept& kept : all.stock) {
    const bool named = std::any_of(grave.begin(), grave.end(), [&](const Finding& one) {
      return std::find(one.species.begin(), one.species.end(), kept.id) != one.species.end();
    });
    const bool anybody = std::any_of(grave.begin(), grave.end(), [](const Finding& one) { return one.species.empty(); });
    if (!named && !anybody) continue;
    repairs.add_fewer(kept, kept.species ? largest.find(*kept.species).count : std::nullopt);
    if (named && kept.species && extent == RepairsOf::all) repairs.add_like_kind(kept);
  }
  if (extent == RepairsOf::all) repairs.add_larger_tank(grave);
  return repairs.take();
}

}  // namespace shoalwright
