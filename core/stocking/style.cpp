// SPDX-License-Identifier: MIT
#include "stocking/style.h"

#include <algorithm>

namespace shoalwright {

StyleFacts style_facts(Style style) {
  switch (style) {
    case Style::darting_surface: return {.room_bl3 = 32, .depth = {0.60, 0.30, 0.10}, .lane_bl = 15};
    case Style::surface_hover: return {.room_bl3 = 27, .depth = {0.85, 0.12, 0.03}, .lane_bl = 8};
    case Style::calm_mid: return {.room_bl3 = 27, .depth = {0.15, 0.60, 0.25}, .lane_bl = 10};
    case Style::active_mid: return {.room_bl3 = 32, .depth = {0.30, 0.50, 0.20}, .lane_bl = 15};
    case Style::small_livebearer: return {.room_bl3 = 27, .depth = {0.40, 0.40, 0.20}, .lane_bl = 10};
    case Style::bottom_shoal: return {.room_bl3 = 8, .depth = {0.05, 0.10, 0.85}, .lane_bl = 8, .floor_bl2 = 8};
    case Style::territorial_bottom:
      return {.room_bl3 = 8, .depth = {0.05, 0.15, 0.80}, .lane_bl = 6, .floor_bl2 = 25, .holds_floor = true};
    case Style::centrepiece: return {.room_bl3 = 40, .depth = {0.40, 0.45, 0.15}, .lane_bl = 5};
    case Style::grazer: return {.room_bl3 = 8, .depth = {0.20, 0.35, 0.45}, .lane_bl = 6};
    case Style::invertebrate: return {.room_bl3 = 2, .depth = {0.05, 0.15, 0.80}};
  }
  return {};
}

std::array<double, 3> depth_shares(const Species& species) {
  const std::array<double, 3>& own = species.life.depth;
  const double sum = own[0] + own[1] + own[2];
  if (!(sum > 0)) return style_facts(species.life.style).depth;
  return {own[0] / sum, own[1] / sum, own[2] / sum};
}

std::size_t main_layer(const std::array<double, 3>& depth) {
  return static_cast<std::size_t>(std::max_element(depth.begin(), depth.end()) - depth.begin());
}

}  // namespace shoalwright
