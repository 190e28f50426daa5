// SPDX-License-Identifier: MIT
// Metric numbers of the core as text in the keeper's units, and back. The only place where the app knows US units, and other
// counts of hardness and nitrate than the core's.
#pragma once

#include <string>

namespace shoalwright {

/// How hardness is counted: degrees; mg/L counted as calcium carbonate; mmol/L, which are of calcium and magnesium for GH, and
/// meq/L of alkalinity for KH.
enum class HardnessUnit { degrees, mg_l_caco3, mmol_l };
enum class Hardness { gh, kh };

struct Measures {
  bool us = false;
  HardnessUnit hardness_in = HardnessUnit::degrees;
  bool nitrate_as_n = false;  ///< else as NO3, as inside

  /// With a space and the unit: "25 °C", "77 °F"; "45 cm", "17.7 in"; "132 L", "34.9 gal".
  std::string temperature(double c) const;
  std::string length(double cm) const;
  std::string volume(double l) const;
  /// "24 to 27 °C".
  std::string temperatures(double low_c, double high_c) const;
  /// "90 × 45 × 45 cm".
  std::string size(double length_cm, double width_cm, double height_cm) const;
  std::string mass(double kg) const;
  /// "7 °dH", "125 mg/L CaCO₃", "1.25 mmol/L"; the figure alone. No decimals that no kit tells.
  std::string hardness(double degrees, Hardness of) const;
  std::string hardness_figure(double degrees, Hardness of) const;
  /// "40 mg/L", "9 mg/L N"; the figure alone, with so many decimals as NO3.
  std::string nitrate(double no3_mg_l, int decimals = 0) const;
  std::string nitrate_figure(double no3_mg_l, int decimals = 0) const;

  const char* temperature_unit() const { return us ? "°F" : "°C"; }
  const char* length_unit() const { return us ? "in" : "cm"; }
  const char* volume_unit() const { return us ? "gal" : "L"; }
  const char* hardness_unit(Hardness of) const;
  /// Where there is little room, and the name of a field that then says the rest: "mg/L", "GH, as CaCO₃".
  const char* short_hardness_unit(Hardness of) const;
  const char* hardness_name(Hardness of) const;
  const char* nitrate_unit() const { return nitrate_as_n ? "mg/L N" : "mg/L"; }
  /// "Nitrate, NO₃": the name of a field says which it asks for.
  const char* nitrate_name() const { return nitrate_as_n ? "Nitrate, as N" : "Nitrate, NO₃"; }
  /// Decimals of a hardness, and what one press of an arrow key moves it by, in the keeper's unit.
  int hardness_decimals() const;
  double hardness_step() const;

  /// For number fields: the value in the keeper's unit, and the way back.
  double temperature_out(double c) const;
  double temperature_in(double shown) const;
  double length_out(double cm) const;
  double length_in(double shown) const;
  double volume_out(double l) const;
  double volume_in(double shown) const;
  double hardness_out(double degrees, Hardness of) const;
  double hardness_back(double shown, Hardness of) const;
  double nitrate_out(double no3_mg_l) const;
  double nitrate_in(double shown) const;
};

}  // namespace shoalwright
