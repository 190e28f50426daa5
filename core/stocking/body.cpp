// SPDX-License-Identifier: MIT
#include "stocking/body.h"

#include <cmath>

#include "units/power.h"

namespace shoalwright {

LengthWeightPrior length_weight_prior(Body body) {
  switch (body) {
    case Body::eel: return {-2.99, 0.175, 3.06};
    case Body::elongated: return {-2.41, 0.171, 3.12};
    case Body::fusiform: return {-1.95, 0.173, 3.04};
    case Body::short_deep: return {-1.70, 0.175, 3.01};
    case Body::unknown: return {-2.00, 0.313, 3.04};
  }
  return {};
}

double body_mass_g(double a, double b, double total_length_cm) {
  if (!(total_length_cm > 0)) return 0;
  return a * raised(total_length_cm, b);
}

double body_mass_g(Body body, double total_length_cm) {
  const LengthWeightPrior prior = length_weight_prior(body);
  return body_mass_g(raised(10, prior.log10_a), prior.b, total_length_cm);
}

double adult_mass_g(const Species& species) {
  const Species::Size& size = species.size;
  if (size.length_weight) return body_mass_g((*size.length_weight)[0], (*size.length_weight)[1], size.adult_tl_cm);
  return body_mass_g(size.body, size.adult_tl_cm);
}

double a_for_cm(double a_for_mm, double b) { return a_for_mm * raised(10, b); }

double total_length_cm(Body body, double standard_length_cm) {
  switch (body) {
    case Body::eel: return 1.05 * standard_length_cm;
    case Body::elongated: return 1.18 * standard_length_cm;
    case Body::fusiform: return 1.22 * standard_length_cm;
    case Body::short_deep: return 1.28 * standard_length_cm;
    case Body::unknown: return 1.22 * standard_length_cm;
  }
  return standard_length_cm;
}

Range body_mass_band_g(Body body, double total_length_cm) {
  const double mass_g = body_mass_g(body, total_length_cm);
  const double factor = raised(10, 1.96 * length_weight_prior(body).sd_log10_a);
  return {mass_g / factor, mass_g * factor};
}

double usual_depth_share(Body body) {
  switch (body) {
    case Body::eel: return 0.08;
    case Body::elongated: return 0.16;
    case Body::fusiform: return 0.25;
    case Body::short_deep: return 0.40;
    case Body::unknown: return 0.25;
  }
  return 0.25;
}

BodySize body_size_of(const Species& species) {
  const double length_cm = species.size.adult_tl_cm;
  return {length_cm * species.size.body_depth_share.value_or(usual_depth_share(species.size.body)), length_cm};
}

}  // namespace shoalwright
