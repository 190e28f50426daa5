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

double Measures::temperature_out(double c) const { return us ? f_from_c(c) : c; }
double Measures::temperature_in(double shown) const { return us ? c_from_f(shown) : shown; }
double Measures::length_out(double cm) const { return us ? in_from_cm(cm) : cm; }
double Measures::length_in(double shown) const { return us ? cm_from_in(shown) : shown; }
double Measures::volume_out(double l) const { return us ? us_gal_from_l(l) : l; }
double Measures::volume_in(double shown) const { return us ? l_from_us_gal(shown) : shown; }

}  // namespace shoalwright
