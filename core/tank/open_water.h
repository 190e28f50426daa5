// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "plan/plan.h"

namespace shoalwright {

/// Open water over the substrate and below `height_cm` above the inside bottom, L; pore water does not count, pieces do not
/// either. Exact for the wedge of the substrate under every shape, and with a drawn terrain line to a millionth under curved
/// panes (tank/detail/bed.h). Heights past the water line count as the water line.
double open_water_below_l(const Plan& plan, double height_cm);
/// The same at many heights.
std::vector<double> open_water_below_l(const Plan& plan, const std::vector<double>& heights_cm);

/// The part of the inside outline (seen from above, as inside_outline) where the substrate lies below `height_cm`. A slope cuts
/// it by a straight line from left to right. Empty where nothing is open. Hills and valleys of a terrain line are part of the
/// scape, as pieces are: here the slope alone counts, as high in the mean as the bed.
std::vector<Point> open_outline(const Plan& plan, double height_cm, int steps = 96);

/// Longest straight run inside an outline: from left to right, from front to back, or along or across its longest side (for a
/// prism that stands askew). Runs from corner to corner are not counted: a fish does not turn in a corner, and keepers measure
/// along panes.
double longest_run_cm(const std::vector<Point>& outline);

}  // namespace shoalwright
