// SPDX-License-Identifier: MIT
#include "stocking/oxygen_use.h"

#include <algorithm>

#include "catalog/piece_kind.h"
#include "stocking/cover.h"
#include "stocking/limits.h"
#include "stocking/ration.h"
#include "tank/volume.h"
#include "units/convert.h"
#include "units/power.h"
#include "water/held.h"
#include "water/nitrogen.h"
#include "water/oxygen.h"

namespace shoalwright {

namespace {

constexpr Range resting_temperature_c{0, 40};
constexpr double kj_per_g_oxygen = 13.6;
constexpr double decay_g_g = 0.25;
constexpr double dark_plant_mg_g_h = 1;
constexpr double light_g_m2 = 15, medium_g_m2 = 40, dense_g_m2 = 80;
constexpr double h_per_day = 24;

}  // namespace

double resting_oxygen_mg_h(double mass_g, double temperature_c) {
  if (!(mass_g > 0)) return 0;
  const double kelvin = held_within(temperature_c, resting_temperature_c) + 273.15;
  const double mmol_h_at_50_g = natural_power(15.7 - 5020 / kelvin);
  return 2 * molar_o * mmol_h_at_50_g * raised(mass_g / 50, 0.80);
}

double over_resting(double rate, double resting) { return resting > 0 ? rate / resting : 0; }

double growth_over_10_c(double low, double low_c, double high, double high_c) {
  return raised(high / low, 10 / (high_c - low_c));
}

double oxygen_for_feed_g_g(double gross_energy_kj_g, double usable_share, double growth_share) {
  return gross_energy_kj_g * usable_share * (1 - growth_share) / kj_per_g_oxygen;
}

double nitrification_oxygen_mg_h(double n_mg_d) { return oxygen_for_nitrification_mg(n_mg_d) / h_per_day; }

double decay_oxygen_mg_h(double feed_g_d) { return decay_g_g * 1000 * feed_g_d / h_per_day; }

double dark_plant_oxygen_mg_h(double dry_g) { return dark_plant_mg_g_h * dry_g; }

double planting_dry_g_m2(Planting planting) {
  switch (planting) {
    case Planting::none: return 0;
    case Planting::light: return light_g_m2;
    case Planting::medium: return medium_g_m2;
    case Planting::dense: return dense_g_m2;
  }
  return 0;
}

std::optional<double> plants_dry_g(const Plan& plan) {
  if (!plan.planting) return std::nullopt;
  const double floor_cm2 = inside_area_cm2(plan.tank);
  double drawn_cm2 = 0;
  for (const Piece& piece : plan.pieces) {
    const PieceKind& kind = piece_kind(piece.kind);
    if (kind.leaf && !kind.floats)
      drawn_cm2 += static_cast<double>(kind.filled) * outline_cm2(kind, piece.length_cm, piece.depth_cm);
  }
  const double dry_g = (planting_dry_g_m2(*plan.planting) * floor_cm2 + medium_g_m2 * drawn_cm2) * 1e-4;
  return std::min(dry_g, dense_g_m2 * floor_cm2 * 1e-4);
}

std::optional<double> plants_dark_oxygen_mg_h(const Plan& plan) {
  const std::optional<double> dry_g = plants_dry_g(plan);
  if (!dry_g) return std::nullopt;
  return dark_plant_oxygen_mg_h(*dry_g);
}

OxygenUse oxygen_use(double resting_mg_h, double activity, double feed_g_d, double protein_share) {
  return {.fish_mg_h = resting_mg_h * activity,
          .nitrification_mg_h = nitrification_oxygen_mg_h(tan_from_feed_mg(feed_g_d, protein_share)),
          .decay_mg_h = decay_oxygen_mg_h(feed_g_d)};
}

std::optional<OxygenUse> night_oxygen_use(const Plan& plan, std::optional<double> plants_mg_h,
                                          const std::optional<Burden>& burden) {
  if (!plants_mg_h || !burden || (burden->feed_g_d > 0 && !plan.feeding)) return std::nullopt;
  const double ration = plan.feeding ? ration_factor(plan.feeding->ration) : 1;
  OxygenUse use = oxygen_use(burden->resting_oxygen_mg_h, use_asleep, burden->feed_g_d * ration, dry_food_protein_share);
  use.plants_mg_h = *plants_mg_h;
  return use;
}

std::optional<OxygenUse> night_oxygen_use(const Plan& plan, const std::vector<Kept>& stock, double temperature_c) {
  return night_oxygen_use(plan, plants_dark_oxygen_mg_h(plan), burden_of(stock, temperature_c));
}

OxygenUse after_meal(OxygenUse night) {
  night.fish_mg_h *= use_after_meal / use_asleep;
  night.plants_mg_h = 0;
  return night;
}

}  // namespace shoalwright
