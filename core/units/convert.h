// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

// Conversions between what the keeper reads and the metric units inside. Any finite value is taken.
// References (from memory): Thompson, A. & Taylor, B.N. 2008. Guide for the use of the International System of Units. NIST
// Special Publication 811, appendix B (inch, US gallon of 231 cubic inches, avoirdupois pound and degree Fahrenheit are exact by
// definition; pound per square foot); standard gravity of the 3rd General Conference on Weights and Measures (1901); IUPAC
// abridged standard atomic weights. One degree of hardness is 10 mg CaO in a litre by definition.

inline constexpr double cm_per_in = 2.54;
inline constexpr double l_per_us_gal = 231 * cm_per_in * cm_per_in * cm_per_in / 1000;

constexpr double cm_from_in(double in) { return in * cm_per_in; }
constexpr double in_from_cm(double cm) { return cm / cm_per_in; }
constexpr double l_from_us_gal(double us_gal) { return us_gal * l_per_us_gal; }
constexpr double us_gal_from_l(double l) { return l / l_per_us_gal; }
/// 1 kg = 1/0.45359237 lb.
inline constexpr double kg_per_lb = 0.45359237;
constexpr double kg_from_lb(double lb) { return lb * kg_per_lb; }
constexpr double lb_from_kg(double kg) { return kg / kg_per_lb; }

/// A difference of temperature has no offset.
constexpr double c_difference_from_f(double difference_f) { return difference_f / 1.8; }
constexpr double f_difference_from_c(double difference_c) { return difference_c * 1.8; }

/// Pressure of one pound-force on a square foot.
inline constexpr double standard_gravity_m_s2 = 9.80665;
inline constexpr double kpa_per_psf = kg_per_lb * standard_gravity_m_s2 / (144 * cm_per_in * cm_per_in * 1e-4) / 1000;
constexpr double kpa_from_psf(double psf) { return psf * kpa_per_psf; }
constexpr double psf_from_kpa(double kpa) { return kpa / kpa_per_psf; }

constexpr double c_from_f(double temperature_f) { return (temperature_f - 32) / 1.8; }
constexpr double f_from_c(double temperature_c) { return temperature_c * 1.8 + 32; }

// Molar masses in g/mol.
inline constexpr double molar_h = 1.008, molar_c = 12.011, molar_n = 14.007, molar_o = 15.999, molar_ca = 40.078;
inline constexpr double molar_cao = molar_ca + molar_o, molar_caco3 = molar_ca + molar_c + 3 * molar_o;

// Hardness: degrees (general and carbonate alike), mmol/L of divalent ions, meq/L, mg/L counted as calcium carbonate ("ppm").
inline constexpr double mmol_l_per_degree = 10 / molar_cao;
inline constexpr double meq_l_per_degree = 2 * mmol_l_per_degree;
inline constexpr double mg_l_caco3_per_degree = mmol_l_per_degree * molar_caco3;
constexpr double mmol_l_from_degrees(double degrees) { return degrees * mmol_l_per_degree; }
constexpr double degrees_from_mmol_l(double mmol_l) { return mmol_l / mmol_l_per_degree; }
constexpr double meq_l_from_degrees(double degrees) { return degrees * meq_l_per_degree; }
constexpr double degrees_from_meq_l(double meq_l) { return meq_l / meq_l_per_degree; }
constexpr double mg_l_caco3_from_degrees(double degrees) { return degrees * mg_l_caco3_per_degree; }
constexpr double degrees_from_mg_l_caco3(double mg_l) { return mg_l / mg_l_caco3_per_degree; }
/// Carbonate hardness as hydrogen carbonate.
constexpr double mg_l_hco3_from_degrees(double degrees) {
  return meq_l_from_degrees(degrees) * (molar_h + molar_c + 3 * molar_o);
}

// Nitrogen: mg/L of the ion (as test kits read) and mg/L of the nitrogen in it.
inline constexpr double no3_per_n = (molar_n + 3 * molar_o) / molar_n;
inline constexpr double no2_per_n = (molar_n + 2 * molar_o) / molar_n;
inline constexpr double nh3_per_n = (molar_n + 3 * molar_h) / molar_n;
inline constexpr double nh4_per_n = (molar_n + 4 * molar_h) / molar_n;
constexpr double no3_from_n(double n_mg_l) { return n_mg_l * no3_per_n; }
constexpr double n_from_no3(double no3_mg_l) { return no3_mg_l / no3_per_n; }
constexpr double no2_from_n(double n_mg_l) { return n_mg_l * no2_per_n; }
constexpr double n_from_no2(double no2_mg_l) { return no2_mg_l / no2_per_n; }
constexpr double nh3_from_n(double n_mg_l) { return n_mg_l * nh3_per_n; }
constexpr double n_from_nh3(double nh3_mg_l) { return nh3_mg_l / nh3_per_n; }
constexpr double nh4_from_n(double n_mg_l) { return n_mg_l * nh4_per_n; }
constexpr double n_from_nh4(double nh4_mg_l) { return nh4_mg_l / nh4_per_n; }

}  // namespace shoalwright
