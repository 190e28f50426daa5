// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "plan/plan.h"

namespace shoalwright {

// The drawn terrain line of a substrate: what it rises over its slope (below it where negative) along the tank, seen from the
// front. Straight between its points, level beyond the first and the last. The bed is max(0, slope + rise) high.

/// Rise at x, cm; 0 without points.
double rise_at(const std::vector<LinePoint>& line, double x_cm);

/// Height of the slope alone at depth z from the front, cm.
double slope_cm(const Plan& plan, double z_cm);

/// The line of a tank of one inside length in one of another. It stays where it is, as pieces do; where it would not fit it is
/// squeezed, every point to the same share of the length, on tenths where no two meet there. Rises are held within
/// `most_rise_cm`.
std::vector<LinePoint> fitted(std::vector<LinePoint> line, double from_length_cm, double to_length_cm, double most_rise_cm);

/// The line with its hills cut off level at a rise, on tenths; no point of it higher, and at most two more for each hill.
std::vector<LinePoint> held_under(std::vector<LinePoint> line, double most_cm);

/// Left for right in a tank of that inside length.
std::vector<LinePoint> mirrored(const std::vector<LinePoint>& line, double length_cm);

}  // namespace shoalwright
