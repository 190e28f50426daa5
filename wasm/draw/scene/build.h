// SPDX-License-Identifier: MIT
#pragma once

#include "draw/scene/scene.h"

namespace shoalwright {

// The steps of update(), each adding to one mesh of the cache.
void add_water(SceneCache& cache);
void add_rear_bank(SceneCache& cache);
void add_gear_behind(SceneCache& cache);
void add_front_sand(SceneCache& cache);
void add_gear_before(SceneCache& cache);
void add_glass_shade(SceneCache& cache);
void add_plan_floor(SceneCache& cache);

/// Where the front and the back pane are at x (z in cm), for tanks of every outline.
struct Panes {
  float front = 0, back = 0;
};
Panes panes_at(const SceneCache& cache, float x_cm);

/// Whether there is any substrate to draw.
inline bool has_bed(const Scene& scene) { return scene.front_cm > 0 || scene.back_cm > 0 || !scene.line_cm.empty(); }

/// Colours of the substrate: lit face, its foot, the bank behind, two tones of grain.
struct Ground {
  ImU32 face, foot, bank, grain_dark, grain_light;
  float grain_cm = 0.12f;
  bool pebbles = false;
};
Ground ground_of(const Scene& scene);

/// How a time of day tints all that is in the tank.
Tint tint_of(TimeOfDay time);
ImU32 toned(ImU32 colour, TimeOfDay time);

}  // namespace shoalwright
