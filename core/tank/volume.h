// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "plan/plan.h"

namespace shoalwright {

/// What the vessel holds.
struct Volume {
  double gross_l = 0;         ///< inside, to the rim
  double net_l = 0;           ///< water in the filled tank: pores of the substrate count, its solids do not
  double substrate_l = 0;     ///< bulk volume of the substrate, pores and grains
  double pieces_l = 0;        ///< water that the solids of the pieces displace
  double footprint_cm2 = 0;   ///< outside
  double surface_cm2 = 0;     ///< free water surface
  double filled_mass_kg = 0;  ///< glass, water, substrate and stones; no stand, no gear
  bool operator==(const Volume&) const = default;
};

/// Analytic for every shape; the wedge of the substrate is exact too, and with a terrain line in straight tanks. All 0 where the
/// measures span no tank. The fill is held within the inside height. The filled mass has 3 % of the glass for braces and
/// silicone, and water weighed at the aim's temperature, else 25 degrees C.
Volume volume_of(const Plan& plan);

/// Water in a tank, L: floor area x depth less the grains of the substrate under it (its pores hold water) and the solids of
/// pieces.
double net_water_l(double area_cm2, double depth_cm, double substrate_l, double porosity, double solids_l);

/// The inside outline seen from above, counter-clockwise, x left to right, z front to back from the foremost point; curves as
/// chords. `steps` is the number of chords of a full circle. Empty when the tank has no area.
std::vector<Point> inside_outline(const Tank& tank, int steps = 96);

/// Height of the water over the inside bottom, held within 0 and the rim, cm.
double water_line_cm(const Tank& tank);

/// Inside area seen from above in cm2, closed form; 0 where the measures span none.
double inside_area_cm2(const Tank& tank);

/// Extent of the inside seen from the front (left to right) and from the side (front to back), cm.
double inside_length_cm(const Tank& tank);
double inside_width_cm(const Tank& tank);

/// Substrate height at x from the left and z from the front, cm; its mean over the floor; and a height that it is nowhere below.
double substrate_height_cm(const Plan& plan, double x_cm, double z_cm);
double mean_substrate_cm(const Plan& plan);
double lowest_substrate_cm(const Plan& plan);

/// Whether a terrain line is drawn on a substrate.
bool has_line(const Plan& plan);

}  // namespace shoalwright
