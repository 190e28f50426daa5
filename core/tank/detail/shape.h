// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "plan/plan.h"

namespace shoalwright {

// What a shape knows of itself; one file a shape. All measures are inside ones unless said.

/// A strip of the inside seen from above, from z0 to z1 (front to back), whose width is straight from w0 to w1 or, with a radius,
/// the chord of a circle around `centre`. A shape is a row of slices without gaps, so areas and moments have closed forms.
struct Slice {
  double z0 = 0, z1 = 0;
  double w0 = 0, w1 = 0;
  double radius = 0, centre = 0;
};

/// Area and first moment about z = 0.
struct Moments {
  double area_cm2 = 0, moment_cm3 = 0;
};

/// The slices between two depths from the front. Empty slices where the measures span no area.
std::vector<Slice> slices_of(const Tank& tank);
Moments moments(const std::vector<Slice>& slices, double from_cm, double to_cm);

/// Chords of an arc about (x, z), counter-clockwise from one angle to the other, ends included; `steps` chords to a full circle.
void add_arc(std::vector<Point>& outline, double x, double z, double radius, double from_rad, double to_rad, int steps);

std::vector<Slice> rectangular_slices(const Tank& tank);
std::vector<Point> rectangular_outline(const Tank& tank);
Tank rectangular_grown(Tank tank, double by_cm);

std::vector<Slice> bow_front_slices(const Tank& tank);
std::vector<Point> bow_front_outline(const Tank& tank, int steps);
Tank bow_front_grown(Tank tank, double by_cm);

std::vector<Slice> cylinder_slices(const Tank& tank);
std::vector<Point> cylinder_outline(const Tank& tank, int steps);

std::vector<Slice> half_cylinder_slices(const Tank& tank);
std::vector<Point> half_cylinder_outline(const Tank& tank, int steps);

std::vector<Slice> quarter_cylinder_slices(const Tank& tank);
std::vector<Point> quarter_cylinder_outline(const Tank& tank, int steps);

std::vector<Slice> hexagon_slices(const Tank& tank);
std::vector<Point> hexagon_outline(const Tank& tank);
Tank hexagon_grown(Tank tank, double by_cm);

std::vector<Slice> pentagon_corner_slices(const Tank& tank);
std::vector<Point> pentagon_corner_outline(const Tank& tank);
Tank pentagon_corner_grown(Tank tank, double by_cm);

std::vector<Slice> prism_slices(const Tank& tank);
std::vector<Point> prism_outline(const Tank& tank);
Tank prism_grown(Tank tank, double by_cm);

}  // namespace shoalwright
