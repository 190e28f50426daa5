// SPDX-License-Identifier: MIT
#include "stocking/gas_transfer.h"

#include <algorithm>
#include <cmath>

#include "catalog/piece_kind.h"
#include "stocking/cover.h"
#include "units/power.h"
#include "water/held.h"

namespace shoalwright {

namespace {

constexpr double still_cm_h = 1.5, quiet_cm_h = 2.07, gentle_cm_h = 4, rippled_cm_h = 8, vigorous_cm_h = 15;
constexpr double ruffled_by_flow = 40;  // cm/h for one L/h over one cm2
constexpr Range schmidt_temperature_c{0, 32};

}  // namespace

double k600_cm_h(SurfaceMotion surface) {
  switch (surface) {
    case SurfaceMotion::still: return still_cm_h;
    case SurfaceMotion::quiet: return quiet_cm_h;
    case SurfaceMotion::gentle: return gentle_cm_h;
    case SurfaceMotion::rippled: return rippled_cm_h;
    case SurfaceMotion::vigorous: return vigorous_cm_h;
  }
  return still_cm_h;
}

double k600_from_wind_cm_h(double wind_m_s) { return quiet_cm_h + 0.215 * raised(std::max(wind_m_s, 0.0), 1.7); }

double k600_from_flow_cm_h(double flow_l_h, double surface_cm2) {
  if (!(flow_l_h > 0 && surface_cm2 > 0)) return quiet_cm_h;
  return std::min(vigorous_cm_h, quiet_cm_h + ruffled_by_flow * flow_l_h / surface_cm2);
}

double oxygen_schmidt(double temperature_c) {
  const double t = held_within(temperature_c, schmidt_temperature_c);
  return 1800.6 + (-120.1 + (3.7818 - 0.047608 * t) * t) * t;
}

double oxygen_transfer_cm_h(double k600_cm_h, double temperature_c, double power) {
  return k600_cm_h * raised(oxygen_schmidt(temperature_c) / 600, -power);
}

double river_transfer_cm_h(double speed_m_s, double depth_m) {
  constexpr double diffusion_m2_s = 2.1e-9, cm_h_per_m_s = 100 * 3600;
  if (!(speed_m_s > 0 && depth_m > 0)) return 0;
  return std::sqrt(diffusion_m2_s * speed_m_s / depth_m) * cm_h_per_m_s;
}

double oxygen_supply_l_h(double transfer_cm_h, double surface_cm2) { return transfer_cm_h * surface_cm2 / 1000; }

std::optional<double> settled_oxygen_mg_l(double saturation_mg_l, double supply_l_h, double use_mg_h) {
  if (!(supply_l_h > 0)) return std::nullopt;
  const double settled = saturation_mg_l - use_mg_h / supply_l_h;
  return settled >= 0 ? std::optional(settled) : std::nullopt;
}

double largest_oxygen_use_mg_h(double saturation_mg_l, double supply_l_h, double target_mg_l) {
  return (saturation_mg_l - target_mg_l) * supply_l_h;
}

double open_surface_cm2(const Plan& plan, const Volume& volume) {
  double leaves_cm2 = 0;
  for (const Piece& piece : plan.pieces) {
    const PieceKind& kind = piece_kind(piece.kind);
    if (kind.floats) leaves_cm2 += outline_cm2(kind, piece.length_cm, piece.depth_cm);
  }
  // Leaves over leaves close no more than the whole surface.
  const double open_cm2 = volume.surface_cm2 - (1 - open_under_leaves) * std::min(leaves_cm2, volume.surface_cm2);
  return open_cm2 * (plan.tank.lid.value_or(true) ? open_under_lid : 1);
}

std::optional<double> k600_of(const Plan& plan, const Volume& volume) {
  if (!plan.gear) return std::nullopt;
  if (plan.gear->surface) return k600_cm_h(*plan.gear->surface);
  if (!plan.gear->filter_known) return std::nullopt;
  if (!plan.gear->filter) return still_cm_h;
  if (!plan.gear->filter->flow_l_h) return std::nullopt;
  return k600_from_flow_cm_h(*plan.gear->filter->flow_l_h, volume.surface_cm2);
}

std::optional<double> oxygen_supply_l_h(const Plan& plan, const Volume& volume, double temperature_c) {
  const std::optional<double> k600 = k600_of(plan, volume);
  if (!k600 || !(volume.surface_cm2 > 0)) return std::nullopt;
  return oxygen_supply_l_h(oxygen_transfer_cm_h(*k600, temperature_c), open_surface_cm2(plan, volume));
}

}  // namespace shoalwright
