// SPDX-License-Identifier: MIT
#include "tank/mass.h"

#include <algorithm>

#include "tank/glass.h"
#include "tank/limits.h"
#include "tank/volume.h"
#include "units/convert.h"
#include "units/text.h"

namespace shoalwright {

double glass_mass_kg(const Tank& outside) {
  Tank whole = outside;
  whole.glass_mm = 0;  // the outline of the outside itself
  const Tank inside = inside_of(outside);
  const double pane_cm = outside.glass_mm / 10;
  if (!(pane_cm > 0)) return 0;
  const double outer_cm2 = inside_area_cm2(whole), wall_cm2 = outer_cm2 - inside_area_cm2(inside);
  return glass_kg_m3 * (outer_cm2 * pane_cm + wall_cm2 * inside.height_cm) * 1e-6;
}

double substrate_mass_kg(double bulk_l, double porosity, double grain_kg_m3) {
  return (1 - porosity) * grain_kg_m3 * bulk_l / 1000;
}

double water_density_kg_m3(double temperature_c) {
  const double t = std::clamp(temperature_c, 0.0, 40.0);
  const double off_peak = t - 3.983035;
  return 999.974950 * (1 - off_peak * off_peak * (t + 301.797) / (522528.9 * (t + 69.34881)));
}

double footprint_pressure_kpa(double mass_kg, double footprint_cm2) {
  return footprint_cm2 > 0 ? mass_kg * standard_gravity_m_s2 / (footprint_cm2 * 1e-4) / 1000 : 0;
}

std::string floor_caution(double filled_mass_kg) {
  const std::string mass = known_text(filled_mass_kg, filled_mass_kg < mass_placement_kg ? 1 : 5);
  if (filled_mass_kg < mass_placement_kg)
    return "Filled, the tank weighs about " + mass + " kg, like a grown person; the stand must be level and made for it.";
  if (filled_mass_kg < mass_engineer_kg)
    return "Filled, the tank weighs about " + mass +
           " kg. Stand it against a load-bearing wall, across the joists, on a level stand; on an upper or old timber floor, "
           "ask a structural engineer and your local code before filling.";
  return "Filled, the tank weighs about " + mass + " kg. Ask a structural engineer and your local code before filling.";
}

}  // namespace shoalwright
