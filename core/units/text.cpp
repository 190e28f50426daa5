// SPDX-License-Identifier: MIT
#include "units/text.h"

#include <algorithm>
#include <cmath>
#include <cstdio>

namespace shoalwright {

namespace {

double power_of_ten(int exponent) {
  double power = 1;
  for (int i = 0; i < std::abs(exponent); ++i) power *= 10;
  return exponent < 0 ? 1 / power : power;
}

/// Decimals that a step of 1, 2, 2.5 or 5 times a power of ten needs; -1 where it is no such step.
int decimals_of_step(double step) {
  if (!(step >= 1e-9 && step <= 1e9)) return -1;
  for (int exponent = -9; exponent <= 9; ++exponent) {
    const double unit = power_of_ten(exponent);
    for (const double mantissa : {1.0, 2.0, 2.5, 5.0}) {
      if (std::abs(step - mantissa * unit) > 1e-9 * step) continue;
      return std::clamp(mantissa == 2.5 ? 1 - exponent : -exponent, 0, 9);
    }
  }
  return -1;
}

}  // namespace

std::string fixed_text(double value, int decimals) {
  if (!std::isfinite(value)) return "-";
  decimals = std::clamp(decimals, 0, 9);
  const double scaled = std::round(std::abs(value) * power_of_ten(decimals));
  char digits[330];
  if (!(scaled < 1e17)) {  // beyond what a double holds to the unit: no decimals are known
    std::snprintf(digits, sizeof digits, "%.0f", value);
    return digits;
  }
  std::snprintf(digits, sizeof digits, "%.0f", scaled);
  std::string text = digits;
  if (decimals > 0) {
    const std::size_t places = static_cast<std::size_t>(decimals);
    if (text.size() <= places) text.insert(0, places + 1 - text.size(), '0');
    text.insert(text.size() - places, ".");
  }
  if (value < 0 && scaled > 0) text.insert(0, "-");
  return text;
}

std::string short_text(double value, int decimals) {
  std::string text = fixed_text(value, decimals);
  if (text.find('.') == std::string::npos) return text;
  while (text.back() == '0') text.pop_back();
  if (text.back() == '.') text.pop_back();
  return text;
}

std::string known_text(double value, double known_to) {
  int decimals = decimals_of_step(known_to);
  if (decimals < 0) {
    decimals = 0;
    known_to = 1;
  }
  return fixed_text(std::round(value / known_to) * known_to, decimals);
}

std::string significant_text(double value, int digits) {
  if (!std::isfinite(value)) return "-";
  if (value == 0) return "0";
  digits = std::clamp(digits, 1, 15);
  const auto decimals_at = [digits](double v) { return digits - 1 - static_cast<int>(std::floor(std::log10(std::abs(v)))); };
  const auto rounded_at = [](double v, int decimals) {
    return decimals >= 0 ? std::round(v * power_of_ten(decimals)) / power_of_ten(decimals)
                         : std::round(v / power_of_ten(-decimals)) * power_of_ten(-decimals);
  };
  int decimals = decimals_at(value);
  const double rounded = rounded_at(value, decimals);
  if (rounded != 0) decimals = decimals_at(rounded);  // 9.97 to two digits is 10, not 10.0
  return fixed_text(rounded, std::max(decimals, 0));
}

}  // namespace shoalwright
