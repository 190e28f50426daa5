// SPDX-License-Identifier: MIT
#include "app/measures.h"

#include "units/convert.h"
#include "units/text.h"

namespace shoalwright {

namespace {

std::string with_unit(const std::string& figures, const char* unit) { return figures + " " + unit; }

/// Whole degrees Fahrenheit: nothing here is known to a tenth of them.
std::string degrees(double shown, bool us) { return short_text(shown, us ? 0 : 1); }

}  // namespace

std::string Measures::temperature(double c) const { return with_unit(degrees(temperature_out(c), us), temperature_unit()); }

std::string Measures::temperatures(double low_c, double high_c) const {
  const std::string low = degrees(temperature_out(low_c), us), high = degrees(temperature_out(high_c), us);
  return with_unit(low == high ? low : low + " to " + high, temperature_unit());
}

std::string Measures::length(double cm) const { return with_unit(short_text(length_out(cm), 1), length_unit()); }

std::string Measures::volume(double l) const {
  const double shown = volume_out(l);
  return with_unit(short_text(shown, shown < (us ? 100 : 20) ? 1 : 0), volume_unit());
}

std::string Measures::size(double length_cm, double width_cm, double height_cm) const {
  std::string text;
  for (const double cm : {length_cm, width_cm, height_cm}) text += (text.empty() ? "" : " × ") + short_text(length_out(cm), 1);
  return with_unit(text, length_unit());
}

std::string Measures::mass(double kg) const {
  const double step = kg < 10 ? 0.1 : kg < 90 ? 1 : us ? 10 : 5;
  return us ? with_unit(known_text(lb_from_kg(kg), step), "lb") : with_unit(known_text(kg, step), "kg");
}

const char* Measures::hardness_unit(Hardness of) const {
  switch (hardness_in) {
    case HardnessUnit::degrees: break;
    case HardnessUnit::mg_l_caco3: return "mg/L CaCO₃";
    case HardnessUnit::mmol_l: return of == Hardness::gh ? "mmol/L" : "meq/L";
  }
  return "°dH";
}

const char* Measures::short_hardness_unit(Hardness of) const {
  return hardness_in == HardnessUnit::mg_l_caco3 ? "mg/L" : hardness_unit(of);
}

const char* Measures::hardness_name(Hardness of) const {
  const bool long_name = hardness_in == HardnessUnit::mg_l_caco3;
  return of == Hardness::gh ? (long_name ? "GH, as CaCO₃" : "GH") : (long_name ? "KH, as CaCO₃" : "KH");
}

int Measures::hardness_decimals() const {
  switch (hardness_in) {
    case HardnessUnit::degrees: break;
    case HardnessUnit::mg_l_caco3: return 0;
    case HardnessUnit::mmol_l: return 2;
  }
  return 1;
}

double Measures::hardness_step() const {
  switch (hardness_in) {
    case HardnessUnit::degrees: break;
    case HardnessUnit::mg_l_caco3: return 10;
    case HardnessUnit::mmol_l: return 0.1;
  }
  return 1;
}

std::string Measures::hardness_figure(double degrees, Hardness of) const {
  return short_text(hardness_out(degrees, of), hardness_decimals());
}

std::string Measures::hardness(double degrees, Hardness of) const {
  return with_unit(hardness_figure(degrees, of), hardness_unit(of));
}

std::string Measures::nitrate_figure(double no3_mg_l, int decimals) const {
  return short_text(nitrate_out(no3_mg_l), decimals + (nitrate_as_n ? 1 : 0));
}

std::string Measures::nitrate(double no3_mg_l, int decimals) const {
  return with_unit(nitrate_figure(no3_mg_l, decimals), nitrate_unit());
}

double Measures::temperature_out(double c) const { return us ? f_from_c(c) : c; }
double Measures::temperature_in(double shown) const { return us ? c_from_f(shown) : shown; }
double Measures::length_out(double cm) const { return us ? in_from_cm(cm) : cm; }
double Measures::length_in(double shown) const { return us ? cm_from_in(shown) : shown; }
double Measures::volume_out(double l) const { return us ? us_gal_from_l(l) : l; }
double Measures::volume_in(double shown) const { return us ? l_from_us_gal(shown) : shown; }
double Measures::nitrate_out(double no3_mg_l) const { return nitrate_as_n ? n_from_no3(no3_mg_l) : no3_mg_l; }
double Measures::nitrate_in(double shown) const { return nitrate_as_n ? no3_from_n(shown) : shown; }

double Measures::hardness_out(double degrees, Hardness of) const {
  switch (hardness_in) {
    case HardnessUnit::degrees: break;
    case HardnessUnit::mg_l_caco3: return mg_l_caco3_from_degrees(degrees);
    case HardnessUnit::mmol_l: return of == Hardness::gh ? mmol_l_from_degrees(degrees) : meq_l_from_degrees(degrees);
  }
  return degrees;
}

double Measures::hardness_back(double shown, Hardness of) const {
  switch (hardness_in) {
    case HardnessUnit::degrees: break;
    case HardnessUnit::mg_l_caco3: return degrees_from_mg_l_caco3(shown);
    case HardnessUnit::mmol_l: return of == Hardness::gh ? degrees_from_mmol_l(shown) : degrees_from_meq_l(shown);
  }
  return shown;
}

}  // namespace shoalwright
