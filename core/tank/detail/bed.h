// SPDX-License-Identifier: MIT
#pragma once

#include <vector>

#include "plan/plan.h"

namespace shoalwright {

// A bed with a drawn terrain line, cut from above at the points of the line: over each piece the ground is a plane, so that areas
// and volumes of straight outlines have closed forms (the shoelace formula and its first moments). What chords leave of a curved
// pane is added as slivers of their true area, each with the ground at its centroid: a few parts in ten million are lost where
// the ground bends within one.

/// Over its outline the ground is `ground_cm` + `by_x` x + `by_z` z high before it is held at 0.
struct Facet {
  std::vector<Point> outline;
  double ground_cm = 0, by_x = 0, by_z = 0;
};

/// What lies between a chord and its curved pane.
struct Sliver {
  double area_cm2 = 0, ground_cm = 0;
};

struct Bed {
  std::vector<Facet> facets;  ///< from left to right
  std::vector<Sliver> slivers;
};

/// The bed of a plan; without facets where the measures span no tank. `steps`: chords of a full circle.
Bed bed_of(const Plan& plan, int steps = 192);

/// What of an outline lies where the ground is below a height, seen from above; may touch itself along the cut.
std::vector<Point> below(const Facet& facet, double height_cm);

/// Space between the bed and a level plane, cm3, and the area of that plane over the bed, cm2. 0 for planes not over the bottom.
double space_over_cm3(const Bed& bed, double height_cm);
double area_over_cm2(const Bed& bed, double height_cm);

/// Mean height of the bed, cm.
double mean_cm(const Bed& bed);

}  // namespace shoalwright
