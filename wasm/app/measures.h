// SPDX-License-Identifier: MIT
// Metric numbers of the core as text in the keeper's units, and back. The only place where the app knows US units.
#pragma once

#include <string>

namespace shoalwright {

struct Measures {
  bool us = false;

  /// With a space and the unit: "25 °C", "77 °F"; "45 cm", "17.7 in"; "132 L", "34.9 gal".
  std::string temperature(double c) const;
  std::string length(double cm) const;
  std::string volume(double l) const;
  /// "24 to 27 °C".
  std::string temperatures(double low_c, double high_c) const;
  /// "90 × 45 × 45 cm".
  std::string size(double length_cm, double width_cm, double height_cm) const;
  std::string mass(double kg) const;

  const char* temperature_unit() const { return us ? "°F" : "°C"; }
  const char* length_unit() const { return us ? "in" : "cm"; }
  const char* volume_unit() const { return us ? "gal" : "L"; }

  /// For number fields: the value in the keeper's unit, and the way back.
  double temperature_out(double c) const;
  double temperature_in(double shown) const;
  double length_out(double cm) const;
  double length_in(double shown) const;
  double volume_out(double l) const;
  double volume_in(double shown) const;
};

}  // namespace shoalwright
