// SPDX-License-Identifier: MIT
#include "stocking/development.h"

#include <cmath>

namespace shoalwright {

namespace {

bool is_trusted(double temperature_c, double reference_c, double threshold_c) {
  return temperature_c > threshold_c + least_over_threshold_c && std::abs(temperature_c - reference_c) <= trusted_within_c;
}

}  // namespace

std::optional<double> development_h(double reference_h, double reference_c, double temperature_c, double threshold_c) {
  if (!is_trusted(temperature_c, reference_c, threshold_c) || !(reference_h >= 0)) return std::nullopt;
  return reference_h * (reference_c - threshold_c) / (temperature_c - threshold_c);
}

std::optional<double> zebrafish_development_h(double h_at_28_5, double temperature_c) {
  // As printed: its rounded constants do not give 1 at 28.5 degrees C.
  if (!is_trusted(temperature_c, 28.5, zebrafish_threshold_c) || !(h_at_28_5 >= 0)) return std::nullopt;
  return h_at_28_5 / (0.055 * temperature_c - 0.57);
}

Range development_window_h(double hours) { return {0.8 * hours, 1.2 * hours}; }

}  // namespace shoalwright
