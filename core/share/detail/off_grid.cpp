// SPDX-License-Identifier: MIT
#include "share/detail/off_grid.h"

#include <cmath>

#include "units/convert.h"

namespace shoalwright {

namespace {

constexpr double furthest = 1e14;

constexpr double tens[] = {1, 10, 100, 1000, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};

std::optional<OffGrid> exact(Scale scale, int decimals, double steps, double value) {
  if (!(std::fabs(steps) < furthest)) return std::nullopt;
  const OffGrid number{.scale = scale, .decimals = decimals, .steps = std::llround(steps)};
  return value_of(number) == value ? std::optional(number) : std::nullopt;
}

}  // namespace

double value_of(const OffGrid& number) {
  const auto steps = static_cast<double>(number.steps);
  switch (number.scale) {
    case Scale::inch_16: return cm_from_in(steps / 16);
    case Scale::fahrenheit_10: return c_from_f(steps / 10);
    case Scale::ppm_10: return degrees_from_mg_l_caco3(steps / 10);
    case Scale::us_gallon_10: return l_from_us_gal(steps / 10);
    case Scale::decimal: break;
  }
  return steps / tens[number.decimals];
}

std::optional<OffGrid> off_grid_of(double value) {
  if (!(std::fabs(value) < furthest)) return std::nullopt;
  if (const auto inches = exact(Scale::inch_16, 0, in_from_cm(value) * 16, value)) return inches;
  for (int decimals = 1; decimals <= 4; ++decimals)
    if (const auto few = exact(Scale::decimal, decimals, value * tens[decimals], value)) return few;
  if (const auto degrees = exact(Scale::fahrenheit_10, 0, f_from_c(value) * 10, value)) return degrees;
  if (const auto ppm = exact(Scale::ppm_10, 0, mg_l_caco3_from_degrees(value) * 10, value)) return ppm;
  if (const auto gallons = exact(Scale::us_gallon_10, 0, us_gal_from_l(value) * 10, value)) return gallons;
  for (int decimals = 5; decimals <= 9; ++decimals)
    if (const auto many = exact(Scale::decimal, decimals, value * tens[decimals], value)) return many;
  return std::nullopt;
}

}  // namespace shoalwright
