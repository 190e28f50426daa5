// SPDX-License-Identifier: MIT
#include "views/tank_picture.h"

#include <algorithm>

#include "platform/platform.h"
#include "stocking/profile.h"
#include "tank/placed_piece.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

std::vector<float> sum_of(const DepthProfile& profile) {
  std::vector<float> sum(profile.open_l_cm.size(), 0);
  for (const GroupProfile& group : profile.groups)
    for (std::size_t i = 0; i < sum.size(); ++i) sum[i] += float(group.wanted_l_cm[i]);
  return sum;
}

}  // namespace

Scene scene_of(const Plan& plan, Theme theme) {
  const bool filter = plan.gear && plan.gear->filter_known && plan.gear->filter;
  const double flow = filter ? plan.gear->filter->flow_l_h.value_or(300) : 0;
  return {.theme = theme,
          .outline_cm = inside_outline(plan.tank),
          .height_cm = plan.tank.height_cm,
          .fill_cm = plan.tank.fill_cm,
          .glass_mm = plan.tank.glass_mm,
          .front_cm = plan.substrate.front_cm,
          .back_cm = plan.substrate.back_cm,
          .line_cm = plan.substrate.line_cm,
          .contours = has_line(plan) && platform::have_rest(),
          .substrate = plan.substrate.kind,
          .pieces = with_places(plan),
          .lid = plan.tank.lid.value_or(false),
          .lamp = true,
          .heater = plan.gear && plan.gear->heater_w.value_or(0) > 0,
          .filter = filter,
          .stream = std::clamp(flow / 900, 0.2, 1.0)};
}

ProfilePicture profile_picture(const Plan& shown, const std::vector<Kept>& stock, const BodyRooms& bodies, const Plan* before,
                               const Catalog& catalog, int held_number) {
  const DepthProfile profile = depth_profile_of(shown, stock, bodies);
  ProfilePicture picture;
  for (std::size_t i = 0; i < profile.open_l_cm.size(); ++i) {
    picture.depth_cm.push_back(float((double(i) + 0.5) * profile.step_cm));
    picture.open_l_cm.push_back(float(profile.open_l_cm[i]));
  }
  for (std::size_t k = 0; k < stock.size(); ++k) {
    const auto group = std::find_if(profile.groups.begin(), profile.groups.end(),
                                    [&](const GroupProfile& g) { return g.species == stock[k].id; });
    if (group == profile.groups.end()) continue;
    ProfileShare share{.key = int(k) + 1, .held = int(k) + 1 == held_number, .wanted_l_cm = {}};
    for (const double wanted : group->wanted_l_cm) share.wanted_l_cm.push_back(float(wanted));
    picture.shares.push_back(std::move(share));
  }
  if (before) picture.before_l_cm = sum_of(depth_profile_of(*before, resolve_stock(*before, catalog), bodies));
  const std::vector<float> wanted = sum_of(profile);
  float worst = 0;
  for (std::size_t i = 0; i < wanted.size(); ++i)
    if (picture.open_l_cm[i] > 0 && wanted[i] / picture.open_l_cm[i] > worst) {
      worst = wanted[i] / picture.open_l_cm[i];
      picture.tightest = int(i);
    }
  if (picture.before_l_cm.size() != picture.depth_cm.size()) picture.before_l_cm.clear();
  return picture;
}

}  // namespace shoalwright
