// SPDX-License-Identifier: MIT
#include "tank/volume.h"

#include <algorithm>

#include "tank/detail/wedge.h"
#include "tank/glass.h"
#include "tank/limits.h"
#include "tank/mass.h"
#include "tank/open_water.h"
#include "tank/placed_piece.h"
#include "tank/substrate.h"

namespace shoalwright {

double net_water_l(double area_cm2, double depth_cm, double substrate_l, double porosity, double solids_l) {
  return std::max(0.0, area_cm2 * depth_cm / 1000 - (1 - porosity) * substrate_l - solids_l);
}

double water_line_cm(const Tank& tank) { return std::clamp(tank.fill_cm, 0.0, std::max(tank.height_cm, 0.0)); }

Volume volume_of(const Plan& plan) {
  const Tank& tank = plan.tank;
  const double area = inside_area_cm2(tank);
  Volume v;
  if (!(area > 0 && tank.height_cm > 0)) return v;
  const double fill_cm = water_line_cm(tank);
  const SubstrateFacts facts = substrate_facts(plan.substrate.kind);
  v.gross_l = area * tank.height_cm / 1000;
  v.substrate_l = v.gross_l - space_over_substrate_cm3(plan, tank.height_cm) / 1000;
  // Only what lies under the water line takes room from the water or holds any in its pores.
  const double wet_substrate_l = area * fill_cm / 1000 - open_water_below_l(plan, fill_cm);
  double pieces_kg = 0;
  for (const PlacedPiece& piece : placed_pieces(plan)) {
    v.pieces_l += displaced_l(plan, piece);
    pieces_kg += piece_mass_kg(piece);
  }
  v.net_l = net_water_l(area, fill_cm, wet_substrate_l, facts.porosity, v.pieces_l);
  v.surface_cm2 = fill_cm > 0 ? area_over_substrate_cm2(plan, fill_cm) : 0;
  const Tank outside = outside_of(tank);
  Tank footprint = outside;
  footprint.glass_mm = 0;
  v.footprint_cm2 = inside_area_cm2(footprint);
  const double water_c = plan.water && plan.water->temperature_c ? *plan.water->temperature_c : weighing_temperature_c;
  v.filled_mass_kg = (1 + brace_share) * glass_mass_kg(outside) + v.net_l * water_density_kg_m3(water_c) / 1000 +
                     substrate_mass_kg(v.substrate_l, facts.porosity, facts.grain_kg_m3) + pieces_kg;
  return v;
}

}  // namespace shoalwright
