// SPDX-License-Identifier: MIT
#include "views/swim_view.h"

#include <algorithm>
#include <cmath>

#include "platform/platform.h"

namespace shoalwright {

namespace {

constexpr std::uint64_t seed = 7;
constexpr float narrowest = 0.25f;  // a fish seen from the front is still a fish

/// A fish of the group that swam there before.
const Swimmer* same_fish(const School& before, const std::string& species, std::size_t number) {
  for (const Swimmer& fish : before.fish)
    if (before.groups[fish.group].species == species && number-- == 0) return &fish;
  return nullptr;
}

void begin_school(const Look& look, const Plan& plan, SwimState& mine) {
  School fresh = school_of(plan, resolve_stock(plan, look.catalog), look.shown_bodies, seed);
  std::size_t number = 0, group = 0;
  for (Swimmer& fish : fresh.fish) {
    if (fish.group != group) number = 0;
    group = fish.group;
    const Swimmer* old = mine.on ? same_fish(mine.school, fresh.groups[group].species, number) : nullptr;
    ++number;
    if (!old || !is_open(fresh.room, fresh.groups[group].field, old->place)) continue;
    fish = *old;
    fish.group = static_cast<std::uint16_t>(group);
  }
  mine.school = std::move(fresh);
  mine.of = plan;
  mine.on = true;
}

}  // namespace

void swim(const Ui& ui, const Look& look, const Plan& plan, SwimState& mine, std::vector<Shoal>& shoals) {
  if (!look.preferences.swim || ui.reduced_motion || shoals.empty()) {
    mine.on = false;
    return;
  }
  if (platform::have_rest()) swim_on(look, plan, mine, shoals);
}

void swim_on(const Look& look, const Plan& plan, SwimState& mine, std::vector<Shoal>& shoals) {
  if (!mine.on || (!(mine.of == plan) && !ImGui::IsMouseDown(ImGuiMouseButton_Left))) begin_school(look, plan, mine);
  if (!platform::device().hidden) {
    step(mine.school, ImGui::GetIO().DeltaTime);
    platform::wake();
  }
  for (Shoal& shoal : shoals) {
    std::vector<DrawnAnimal> animals;
    for (const Swimmer& fish : mine.school.fish) {
      const SwimGroup& group = mine.school.groups[fish.group];
      if (group.species != shoal.species) continue;
      const float level = std::max(std::sqrt(fish.velocity.x * fish.velocity.x + fish.velocity.z * fish.velocity.z), 0.5f);
      animals.push_back({.x_cm = static_cast<double>(fish.place.x),
                         .depth_cm = plan.tank.fill_cm - static_cast<double>(fish.place.y),
                         .length_cm = static_cast<double>(group.length_cm),
                         .facing = std::copysign(std::max(std::abs(fish.heading.x), narrowest), fish.heading.x),
                         .tilt = std::clamp(fish.velocity.y / level, -0.6f, 0.6f) * 0.6f});
    }
    if (!animals.empty()) shoal.animals = std::move(animals);
  }
}

}  // namespace shoalwright
