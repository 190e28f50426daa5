// SPDX-License-Identifier: MIT
#include "units/text.h"

#include <algorithm>
#include <cmath>
#include <cstdlib>

#include "units/power.h"
#include "units/shortest.h"

namespace shoalwright {

namespace {

/// `exponent` from -9 to 15 comes from the table; beyond it only what is far from a keeper's numbers.
double power_of_ten(int exponent) {
  static constexpr double power[] = {1e-9, 1e-8, 1e-7, 1e-6, 1e-5, 1e-4, 1e-3, 1e-2, 1e-1, 1e0,  1e1,  1e2, 1e3,
                                     1e4,  1e5,  1e6,  1e7,  1e8,  1e9,  1e10, 1e11, 1e12, 1e13, 1e14, 1e15};
  if (exponent >= -9 && exponent <= 15) return power[exponent + 9];
  return raised(10, exponent);
}

/// As std::round for what is not below 0; a call of it is slow in WASM.
double nearest(double value) {
  const double below = std::floor(value);
  return value - below >= 0.5 ? below + 1 : below;
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

/// Beyond what a double holds to the unit: the figures that are known, then zeros.
std::string all_figures(double value) {
  std::string text = shortest(value);
  const std::size_t e = text.find('e');
  if (e == std::string::npos) return text;
  const std::size_t power = static_cast<std::size_t>(std::atoi(text.c_str() + e + 1));
  const bool point = text.find('.') != std::string::npos;
  const std::size_t decimals = point ? e - text.find('.') - 1 : 0;
  text.resize(e);
  if (point) text.erase(text.find('.'), 1);
  return text + std::string(power - decimals, '0');
}

}  // namespace

std::string fixed_text(double value, int decimals) {
  if (!std::isfinite(value)) return "-";
  decimals = std::clamp(decimals, 0, 9);
  const double scaled = nearest(std::abs(value) * power_of_ten(decimals));
  if (!(scaled < 1e17)) return all_figures(value);
  std::string text = std::to_string(static_cast<long long>(scaled));
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
