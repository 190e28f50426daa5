// SPDX-License-Identifier: MIT
#include "stocking/swallow.h"

#include <algorithm>

namespace shoalwright {

std::optional<Swallower> swallower_of(std::string_view eater) {
  if (eater == "hunter") return Swallower{.gape_share = 0.20, .reach_share = 0.46};
  if (eater == "opportunist") return Swallower{.gape_share = 0.12, .reach_share = 0.33};
  if (eater == "micropredator") return Swallower{.gape_share = 0.07, .reach_share = 0.20};
  if (eater == "small-mouth") return Swallower{.gape_share = 0.06, .reach_share = 0.20};
  if (eater == "picker") return Swallower{.gape_share = 0.04, .reach_share = 0.10};
  if (eater == "grazer") return Swallower{};
  return std::nullopt;
}

double swallow_index(double predator_cm, const Swallower& swallower, double prey_cm, double prey_depth_share) {
  if (!(prey_cm > 0 && prey_depth_share > 0)) return 0;
  const double by_gape = swallower.gape_share / prey_depth_share, by_reach = swallower.reach_share;
  return std::min(by_gape, by_reach) * predator_cm / prey_cm;
}

}  // namespace shoalwright
