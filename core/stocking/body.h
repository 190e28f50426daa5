// SPDX-License-Identifier: MIT
#pragma once

#include "catalog/species.h"
#include "scape/body_room.h"

namespace shoalwright {

// Wet mass from length, W = a L^b.
// Reference: Froese, R., Thorson, J.T. & Reyes, R.B. 2014. A Bayesian approach for estimating length-weight relationships in
// fishes. Journal of Applied Ichthyology 30: 78-85 (priors by body shape).

/// Prior of one body shape: mean and standard deviation of log10(a), mean of b; g and cm total length.
struct LengthWeightPrior {
  double log10_a = 0, sd_log10_a = 0, b = 0;
};

LengthWeightPrior length_weight_prior(Body body);

/// Mass of one fish in g from its total length in cm (without show fins), by the prior of its body shape. Meant for 1 to 40 cm;
/// 0 where the length is not above 0.
double body_mass_g(Body body, double total_length_cm);

/// The same with a species' own a and b.
double body_mass_g(double a, double b, double total_length_cm);

/// Mass of one adult of a species in g: by its own a and b where the catalogue has them, else by the prior of its shape.
double adult_mass_g(const Species& species);

/// Height of an adult over its length where its card does not say. Common practice, no source: from outlines.
double usual_depth_share(Body body);

/// Height without fins and length of an adult, for the room that it passes through.
BodySize body_size_of(const Species& species);

/// `a` for cm where a source gives it for mm: W = a L^b with L in mm. FishBase manual, length-weight table.
double a_for_cm(double a_for_mm, double b);

/// Total length from standard length, by body shape. Common practice, no source: real species run 1.15 to 1.30.
double total_length_cm(Body body, double standard_length_cm);

/// The 95 % band from the spread of a alone, in g.
Range body_mass_band_g(Body body, double total_length_cm);

}  // namespace shoalwright
