// SPDX-License-Identifier: MIT
#include "rules/lane_level.h"

#include <algorithm>
#include <cmath>

#include "plan/check.h"
#include "rules/edits.h"
#include "stocking/layers.h"
#include "tank/terrain.h"

namespace shoalwright {

namespace {

constexpr const char* pointer = "/substrate/line_cm";

double highest_cm(const std::vector<LinePoint>& line) {
  double most = line.front().rise_cm;
  for (const LinePoint& point : line) most = std::max(most, point.rise_cm);
  return most;
}

double lowest_cm(const std::vector<LinePoint>& line) {
  double least = line.front().rise_cm;
  for (const LinePoint& point : line) least = std::min(least, point.rise_cm);
  return least;
}

}  // namespace

bool ends_at_hill(const Facts& facts, const Lane& lane, const BodySize& body) {
  const Plan& plan = facts.plan;
  if (!has_line(plan) || lane.circuit || lane.path.size() != 2) return false;
  const double cell_cm = facts.bodies.scape().grid.cell_cm, bottom_cm = lane.height_cm - body.depth_cm / 2 - cell_cm;
  for (const bool second : {false, true}) {
    const Point &end = lane.path[second ? 1 : 0], &other = lane.path[second ? 0 : 1];
    const double length = std::max(std::hypot(end.x_cm - other.x_cm, end.z_cm - other.z_cm), 1e-6);
    const double ahead = (body.depth_cm / 2 + cell_cm) / length;
    const double x_cm = end.x_cm + (end.x_cm - other.x_cm) * ahead, z_cm = end.z_cm + (end.z_cm - other.z_cm) * ahead;
    const bool inside = x_cm > 0 && x_cm < inside_length_cm(plan.tank) && z_cm > 0 && z_cm < inside_width_cm(plan.tank);
    if (inside && rise_at(plan.substrate.line_cm, x_cm) > 0 && substrate_height_cm(plan, x_cm, z_cm) > bottom_cm) return true;
  }
  return false;
}

std::optional<LaneLevelling> least_lane_levelling(const Facts& facts, const BodySize& body, std::size_t level,
                                                  const std::vector<double>& wanted_cm) {
  if (!has_line(facts.plan) || is_fixed(facts.plan, pointer)) return std::nullopt;
  const std::vector<LinePoint>& line = facts.plan.substrate.line_cm;
  const double top_cm = highest_cm(line);
  const int most_cm = static_cast<int>(std::ceil(top_cm - lowest_cm(line) - 1e-9));
  Plan plan = facts.plan;
  BodyRooms bodies;
  const auto levelled = [&](int by_cm) {
    const double most_rise_cm = std::max(top_cm - by_cm, lowest_cm(line));
    plan.substrate.line_cm = held_under(line, most_rise_cm);
    // Hills cut off have more points than before, which a plan may not be able to hold.
    if (plan.substrate.line_cm.size() > most_line_points) return LaneLevelling{};
    update(bodies, plan);
    return LaneLevelling{top_cm - most_rise_cm, plan.substrate.line_cm, bodies.lane(body, level).cm};
  };
  if (most_cm < 1) return std::nullopt;
  const LaneLevelling all = levelled(most_cm);
  for (const double wanted : wanted_cm) {
    if (!(all.lane_cm >= wanted)) continue;
    // A lower hill is taken to be never more in the way.
    LaneLevelling enough = all;
    int short_of = 0, at = most_cm;
    while (at - short_of > 1) {
      const int between = short_of + (at - short_of) / 2;
      LaneLevelling there = levelled(between);
      if (there.lane_cm >= wanted) {
        at = between;
        enough = std::move(there);
      } else {
        short_of = between;
      }
    }
    return enough;
  }
  return std::nullopt;
}

std::vector<PatchStep> level_edits(const Plan& plan, const LaneLevelling& levelling) {
  return set_value(plan, pointer, line_json(levelling.line));
}

}  // namespace shoalwright
