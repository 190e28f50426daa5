// SPDX-License-Identifier: MIT
#pragma once

#include <string>

#include "plan/plan.h"

namespace shoalwright {

/// Density of soda-lime glass, kg/m3. EN ISO 10077-2, table of materials (from memory).
inline constexpr double glass_kg_m3 = 2500;
/// Braces and silicone, as a share of the panes. Common practice, no source.
inline constexpr double brace_share = 0.03;

/// Mass of the bare panes of an open tank from its outside measures, kg: the bottom over the whole footprint, the walls standing
/// on it.
double glass_mass_kg(const Tank& outside);

/// Dry mass of a substrate of `bulk_l` litres, pores and grains, kg.
double substrate_mass_kg(double bulk_l, double porosity, double grain_kg_m3);

/// Density of air-free fresh water at 1 atm, kg/m3, 0 to 40 degrees C (held there). Tanaka, M., Girard, G., Davis, R., Peuto, A.
/// & Bignell, N. 2001. Recommended table for the density of water between 0 C and 40 C. Metrologia 38: 301-309.
double water_density_kg_m3(double temperature_c);

/// Mean pressure on the floor under the footprint, kPa, at standard gravity. 0 where there is no footprint.
double footprint_pressure_kpa(double mass_kg, double footprint_cm2);

/// One line for the paper and the screen by mass alone. Never a verdict: design loads of floors are averages over a room, and any
/// water deeper than 20 cm exceeds them under its own feet, so only who knows the floor can judge. Common practice, no source.
std::string floor_caution(double filled_mass_kg);

}  // namespace shoalwright
