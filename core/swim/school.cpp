// SPDX-License-Identifier: MIT
#include "swim/school.h"

#include <algorithm>
#include <cmath>

#include "scape/regions.h"
#include "stocking/body.h"
#include "stocking/over_depth.h"
#include "stocking/style.h"

namespace shoalwright {

namespace {

constexpr int places_tried = 60;
constexpr float fastest_cm_s = 20;  // large fish: a tank has no room for more

/// Cruising speed in body lengths a second. Common practice, no source: as fish idle about in tanks, below what they can keep up.
float cruise_bl_s(Style style) {
  switch (style) {
    case Style::darting_surface: return 2;
    case Style::active_mid: return 1.7f;
    case Style::calm_mid:
    case Style::small_livebearer: return 1.2f;
    case Style::bottom_shoal: return 0.8f;
    case Style::surface_hover:
    case Style::territorial_bottom:
    case Style::centrepiece: return 0.7f;
    case Style::grazer: return 0.5f;
    case Style::invertebrate: return 0.06f;
  }
  return 1;
}

SwimGroup group_of(const Species& species) {
  const BodySize body = body_size_of(species);
  const std::array<double, 3> shares = depth_shares(species);
  const GroupKind kind = species.life.group.kind;
  SwimGroup group;
  group.species = species.id;
  group.length_cm = static_cast<float>(body.length_cm);
  group.half_depth_cm = static_cast<float>(body.depth_cm / 2);
  group.cruise_cm_s = std::min(cruise_bl_s(species.life.style) * group.length_cm, fastest_cm_s);
  group.together = kind == GroupKind::shoal ? 1 : kind == GroupKind::loose || kind == GroupKind::colony ? 0.4f : 0;
  group.crawls = species.life.style == Style::invertebrate;
  if (group.crawls) group.together = 0;
  group.on_floor = group.crawls || shares[2] >= on_floor_share;
  const std::vector<double> depth = over_depth(shares, depth_strips / 3);
  for (std::size_t i = 0; i < depth.size(); ++i) group.depth[i] = static_cast<float>(depth[i]);
  return group;
}

/// The cells where the middle of a body can be, without corners that are cut off; where none is clear, all that are open.
std::vector<std::size_t> cells_for(const SwimRoom& room, const SwimGroup& group) {
  const std::vector<float>& clear = room.clear[group.field];
  std::vector<std::size_t> found;
  for (const float least : {group.half_depth_cm, 0.0f}) {
    Cells open;
    for (const float cm : clear) open.push_back(cm >= least && cm > 0);
    const Regions regions = regions_of(room.size, open);
    if (regions.cells.empty()) continue;
    const auto main =
        static_cast<std::int32_t>(std::max_element(regions.cells.begin(), regions.cells.end()) - regions.cells.begin());
    const std::size_t row = static_cast<std::size_t>(room.size.x);
    for (std::size_t i = 0; i + 1 < regions.row_begins.size(); ++i)
      for (std::size_t run = regions.row_begins[i]; run < regions.row_begins[i + 1]; ++run)
        for (int x = regions.runs[run].first; x <= regions.runs[run].last; ++x)
          if (regions.runs[run].region == main) found.push_back(i * row + static_cast<std::size_t>(x));
    break;
  }
  return found;
}

SwimPoint middle_of(const SwimRoom& room, std::size_t cell) {
  const std::size_t row = static_cast<std::size_t>(room.size.x), rows = static_cast<std::size_t>(room.size.z);
  const SwimPoint at{static_cast<float>(cell % row) + 0.5f, static_cast<float>(cell / row / rows) + 0.5f,
                     static_cast<float>(cell / row % rows) + 0.5f};
  return room.corner + at * room.cell_cm;
}

}  // namespace

SwimPoint any_course(Chance& chance) {
  for (;;) {
    const float x = chance.between(-1, 1), z = chance.between(-1, 1), squared = x * x + z * z;
    if (squared > 0.01f && squared < 1) return SwimPoint{x, 0, z} * (1 / std::sqrt(squared));
  }
}

float height_for(School& school, const SwimGroup& group) {
  const SwimRoom& room = school.room;
  if (group.crawls) return 0;
  const float depth_cm = 3 * room.third_cm;
  float left = school.chance.between(0, 1);
  std::size_t strip = 0;
  if (school.seeks_depth) {
    while (strip + 1 < depth_strips && left >= group.depth[strip]) left -= group.depth[strip++];
    left = school.chance.between(static_cast<float>(strip), static_cast<float>(strip + 1)) / depth_strips;
  }
  float over_cm = (1 - left) * depth_cm;  // over the mean substrate
  // Of the lowest third, floor kinds like the floor best.
  if (school.seeks_depth && group.on_floor && over_cm < room.third_cm) over_cm *= 0.45f + 0.55f * over_cm / room.third_cm;
  return room.line_cm - depth_cm + over_cm;
}

School school_of(const Plan& plan, const std::vector<Kept>& stock, const BodyRooms& bodies, std::uint64_t seed, int most) {
  School school;
  school.chance.state = seed;
  school.room = swim_room_of(plan, bodies);
  if (!school.room.size.cells()) return school;
  std::int64_t kinds = 0, animals = 0;
  for (const Kept& kept : stock)
    if (kept.species) ++kinds, animals += kept.count;
  for (const Kept& kept : stock) {
    if (!kept.species || school.fish.size() >= static_cast<std::size_t>(std::max(0, most))) continue;
    SwimGroup group = group_of(*kept.species);
    group.field = field_for(school.room, plan, bodies, 2 * group.half_depth_cm);
    const std::vector<std::size_t> cells = cells_for(school.room, group);
    // One of each group, and of the others as many in each hundred.
    const std::int64_t count = animals <= most ? kept.count
                                               : 1 + (kept.count - 1) * std::max<std::int64_t>(0, most - kinds) /
                                                         std::max<std::int64_t>(1, animals - kinds);
    const std::size_t first = school.fish.size();
    for (std::int64_t i = 0; i < count && !cells.empty(); ++i) {
      Swimmer fish;
      fish.group = static_cast<std::uint16_t>(school.groups.size());
      fish.height_cm = height_for(school, group);
      fish.until_s = school.chance.between(2, 12);
      fish.heading = fish.course = i > 0 && group.together > 0 ? school.fish[first].course : any_course(school.chance);
      // Of some places the one nearest to that depth, and a shoal not scattered over the tank.
      float least = 1e9f;
      for (int trial = 0; trial < places_tried; ++trial) {
        const SwimPoint place = middle_of(school.room, cells[school.chance.bits() % cells.size()]);
        float away = std::abs(place.y - fish.height_cm);
        if (i > 0)
          away += group.together * 0.2f *
                  (std::abs(place.x - school.fish[first].place.x) + std::abs(place.z - school.fish[first].place.z));
        if (away >= least) continue;
        least = away;
        fish.place = place;
      }
      school.fish.push_back(fish);
    }
    school.groups.push_back(std::move(group));
  }
  return school;
}

}  // namespace shoalwright
