// SPDX-License-Identifier: MIT
#include "views/shoals.h"

#include <algorithm>
#include <cmath>

#include "draw/geometry.h"
#include "tank/terrain.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

constexpr int most_drawn = 60;
constexpr double layer_spread = 0.09;  // of the depth: a little tighter than the profile, so that a shoal reads as one

/// The water that fish swim in, as the front view shows it.
struct Water {
  double length_cm, depth_cm;
  const Plan* hilly = nullptr;  ///< where a terrain line is drawn

  /// Over a hill there is less of it.
  double depth_at(double x_cm) const {
    if (!hilly) return depth_cm;
    const double ground_cm = substrate_height_cm(*hilly, x_cm, inside_width_cm(hilly->tank) / 2);
    return std::clamp(hilly->tank.fill_cm - ground_cm, 0.0, depth_cm);
  }
};

Water water_of(const Plan& plan) {
  return {inside_length_cm(plan.tank), std::max(0.0, plan.tank.fill_cm - mean_substrate_cm(plan)),
          has_line(plan) ? &plan : nullptr};
}

/// The i-th number of the van der Corput sequence of a base: evenly spread for every length of its beginning.
double spread(int i, int base) {
  double value = 0, share = 1;
  for (int n = i + 1; n > 0; n /= base) {
    share /= base;
    value += share * (n % base);
  }
  return value;
}

/// Rough inverse of the normal distribution, good enough for a picture: the logistic one with the same spread.
double normal_at(double share) { return std::log(static_cast<float>(share / (1 - share))) * 0.55; }

double height_of(const Species& species) {
  if (species.size.height_with_fins_cm) return *species.size.height_with_fins_cm;
  return species.size.adult_tl_cm * species.size.body_depth_share.value_or(0.28) * 1.3;
}

/// Depth of the i-th animal: its layer by the shares of its kind, then around the middle of that layer.
double depth_share(const Species& species, int i) {
  double share = spread(i, 3), before = 0;
  for (int layer = 0; layer < 3; ++layer) {
    const double weight = species.life.depth[layer];
    if (share < before + weight || layer == 2) {
      const double inside = weight > 0 ? std::clamp((share - before) / weight, 0.03, 0.97) : 0.5;
      return (1 + 2 * layer) / 6.0 + layer_spread * normal_at(inside);
    }
    before += weight;
  }
  return 0.5;
}

/// Kinds of the floor rest on it in the drawing, some nearer to the front pane than others.
bool lives_on_floor(const Species& species) { return species.life.depth[2] >= 0.6; }

double resting_depth_cm(const Plan& plan, const Species& species, double x_cm, int i) {
  const double middle_cm = has_line(plan) ? slope_cm(plan, inside_width_cm(plan.tank) / 2) : mean_substrate_cm(plan);
  const double ground_cm = std::max(0.0, plan.substrate.front_cm + (middle_cm - plan.substrate.front_cm) * spread(i, 5) +
                                             rise_at(plan.substrate.line_cm, x_cm));
  return plan.tank.fill_cm - ground_cm - height_of(species) * 0.42;
}

void keep_inside(const Water& water, const Species& species, DrawnAnimal& animal) {
  const double half = animal.length_cm / 2, tall = height_of(species) / 2;
  animal.x_cm =
      std::clamp(animal.x_cm, std::min(half + 1, water.length_cm / 2), std::max(water.length_cm - half - 1, water.length_cm / 2));
  const double depth_cm = water.depth_at(animal.x_cm);
  animal.depth_cm =
      std::clamp(animal.depth_cm, std::min(tall + 0.5, depth_cm / 2), std::max(depth_cm - tall * 0.75, depth_cm / 2));
}

/// Pushed away from those placed before, most along the tank, since every kind keeps to its depth.
void move_clear(const Water& water, const Species& species, const std::vector<Shoal>& others, const std::vector<DrawnAnimal>& own,
                DrawnAnimal& animal) {
  const auto push = [&](const DrawnAnimal& other) {
    const double want_x = (animal.length_cm + other.length_cm) * 0.5, want_y = want_x * 0.42;
    const double dx = animal.x_cm - other.x_cm, dy = animal.depth_cm - other.depth_cm;
    const double near = (dx * dx) / (want_x * want_x) + (dy * dy) / (want_y * want_y);
    if (near >= 1) return;
    const double by = 1 - std::sqrt(near);
    animal.x_cm += (dx >= 0 ? 1 : -1) * want_x * by * 0.6;
    animal.depth_cm += (dy >= 0 ? 1 : -1) * want_y * by * 0.35;
  };
  for (int round = 0; round < 14; ++round) {
    for (const Shoal& shoal : others)
      for (const DrawnAnimal& other : shoal.animals) push(other);
    for (const DrawnAnimal& other : own) push(other);
    keep_inside(water, species, animal);
  }
}

Shoal place(const Plan& plan, const Species& species, int count, double home_cm, const std::vector<Shoal>& others) {
  const Water water = water_of(plan);
  const double numbers[] = {double(species.id.size()), species.size.adult_tl_cm};
  Dice dice{seed_of(numbers, species.id.c_str())};
  const double reach =
      std::min(water.length_cm * 0.42, species.size.adult_tl_cm * (1.2 + 1.1 * std::sqrt(double(std::min(count, most_drawn)))));
  Shoal shoal{.species = species.id, .card = &species, .animals = {}};
  for (int i = 0; i < std::min(count, most_drawn); ++i) {
    DrawnAnimal animal{.x_cm = home_cm + reach * (2 * spread(i, 2) - 1),
                       .depth_cm = depth_share(species, i) * water.depth_cm,
                       .length_cm = species.size.adult_tl_cm,
                       .facing = dice.next() < 0.78f ? -1.0f : 1.0f,
                       .tilt = dice.between(-0.12f, 0.12f)};
    keep_inside(water, species, animal);
    move_clear(water, species, others, shoal.animals, animal);
    if (lives_on_floor(species) && spread(i, 3) > 1 - species.life.depth[2]) {
      animal.tilt *= 0.3f;
      animal.depth_cm = resting_depth_cm(plan, species, animal.x_cm, i);
    }
    shoal.animals.push_back(animal);
  }
  return shoal;
}

}  // namespace

std::vector<Shoal> place_shoals(const Plan& plan, const std::vector<Kept>& stock) {
  std::vector<Shoal> shoals;
  const double length_cm = inside_length_cm(plan.tank);
  for (std::size_t i = 0; i < stock.size(); ++i) {
    const Kept& kept = stock[i];
    if (!kept.species) {
      shoals.push_back({.species = kept.id, .card = nullptr, .animals = {}});
      continue;
    }
    // Homes alternate around the middle, where the picture is open.
    static constexpr double homes[] = {0.53, 0.46, 0.62, 0.28, 0.40, 0.70, 0.34, 0.58};
    shoals.push_back(place(plan, *kept.species, kept.count, length_cm * homes[i % std::size(homes)], shoals));
  }
  return shoals;
}

bool same_places(const Plan& a, const Plan& b) {
  // Cards of its own belong to one plan, and the picture points at them.
  if (!a.own_species.empty() || !b.own_species.empty()) return a == b;
  return a.tank == b.tank && a.substrate == b.substrate && a.stock == b.stock;
}

Shoal place_held(const Plan& plan, const Species& species, int count, double x_cm, const std::vector<Shoal>& others) {
  return place(plan, species, count, x_cm, others);
}

SwimBand swim_band(const Plan& plan, const Species& species) {
  const double depth_cm = water_of(plan).depth_cm;
  int first = 2, last = 0;
  for (int layer = 0; layer < 3; ++layer)
    if (species.life.depth[layer] >= 0.2) {
      first = std::min(first, layer);
      last = std::max(last, layer);
    }
  if (first > last) return {0, depth_cm};
  const double top = first == 0 ? 0 : (1 + 2 * first) / 6.0 - 0.12, bottom = last == 2 ? 1 : (1 + 2 * last) / 6.0 + 0.12;
  return {top * depth_cm, bottom * depth_cm};
}

}  // namespace shoalwright
