// SPDX-License-Identifier: MIT
#include "stocking/least_tank.h"

#include <algorithm>

#include "stocking/crowding.h"
#include "stocking/limits.h"
#include "stocking/style.h"

namespace shoalwright {

double lane_needed_cm(const Species& species) {
  const double lane_bl = style_facts(species.life.style).lane_bl;
  if (!(lane_bl > 0)) return 0;
  return (species.size.body == Body::eel ? eel_lane_bl : lane_bl) * species.size.adult_tl_cm;
}

LeastTank least_tank_of(const Species& species) {
  LeastTank least;
  least.run_cm = lane_needed_cm(species);
  least.run_least_cm = lane_harm_below * least.run_cm;
  if (species.life.style != Style::invertebrate) {
    const double length = room_length_cm(species.size.body, species.size.adult_tl_cm);
    least.width_cm = width_quiet_from * length;
    least.width_least_cm = width_harm_below * length;
  }
  const std::optional<double>& height = species.size.height_with_fins_cm;
  if (height && *height >= tall_from * species.size.adult_tl_cm) {
    least.height_cm = height_quiet_from * *height;
    least.height_least_cm = height_strain_below * *height;
  }
  least.length_cm = species.needs.least_length_cm;
  least.volume_l = species.needs.least_volume_l;
  return least;
}

double bearable_lane_cm(const Species& species) {
  const double by_style = lane_watch_from * lane_needed_cm(species);
  const std::optional<double>& card = species.needs.least_length_cm;
  return card && *card > 0 ? std::min(by_style, lane_of_least_tank * *card) : by_style;
}

double run_in_lengths(double run_cm, double length_cm) { return length_cm > 0 ? run_cm / length_cm : 0; }

}  // namespace shoalwright
