// SPDX-License-Identifier: MIT
#pragma once

#include <utility>

#include "draw/fish/shape.h"

namespace shoalwright {

inline FinShape back_fin(float from, float to, std::vector<Vec> edge) {
  return {.at = FinAt::back, .from = from, .to = to, .edge = std::move(edge)};
}
inline FinShape belly_fin(float from, float to, std::vector<Vec> edge) {
  return {.at = FinAt::belly, .from = from, .to = to, .edge = std::move(edge)};
}
inline FinShape fixed(FinShape fin) {
  fin.grows = false;
  return fin;
}
inline FinShape pectoral(float from, float to, float y, std::vector<Vec> edge) {
  return {.at = FinAt::side, .from = from, .to = to, .edge = std::move(edge), .pectoral = true, .base_y = y, .grows = false};
}

/// Free edges of tails: forked with corners at (reach, half) and a notch, or rounded.
inline std::vector<Vec> forked(float reach, float half, float notch) {
  return {{reach, half}, {reach - 0.055f, half * 0.62f}, {notch, 0}, {reach - 0.055f, -half * 0.62f}, {reach, -half}};
}
inline std::vector<Vec> rounded(float reach, float half) {
  return {{1 + (reach - 1) * 0.45f, half * 0.98f},
          {1 + (reach - 1) * 0.86f, half * 0.72f},
          {reach, 0},
          {1 + (reach - 1) * 0.86f, -half * 0.72f},
          {1 + (reach - 1) * 0.45f, -half * 0.98f}};
}

FishShape slim_tetra_shape();
FishShape deep_tetra_shape();
FishShape hatchet_shape();
FishShape rasbora_shape();
FishShape danio_shape();
FishShape barb_shape();
FishShape goldfish_fancy_shape();
FishShape goldfish_long_shape();
FishShape livebearer_shape();
FishShape molly_shape();
FishShape corydoras_shape();
FishShape sucker_shape();
FishShape pleco_shape();
FishShape eel_loach_shape();
FishShape deep_loach_shape();
FishShape labyrinth_shape();
FishShape fighter_shape();
FishShape dwarf_cichlid_shape();
FishShape angelfish_shape();
FishShape mbuna_shape();
FishShape rainbow_thread_shape();
FishShape killi_shape();
FishShape puffer_shape();
FishShape goby_shape();

}  // namespace shoalwright
