// SPDX-License-Identifier: MIT
#include "share/detail/off_grid.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

#include "support/dice.h"
#include "units/convert.h"

namespace shoalwright {
namespace {

TEST(OffGrid, FindsTheUnitThatAValueWasReadIn) {
  const std::pair<double, Scale> rows[] = {
      {cm_from_in(29.5), Scale::inch_16},
      {cm_from_in(17.75), Scale::inch_16},
      {c_from_f(72), Scale::fahrenheit_10},
      {degrees_from_mg_l_caco3(71.6), Scale::ppm_10},
      {l_from_us_gal(200), Scale::us_gallon_10},
      {7.35, Scale::decimal},
      {4.0124, Scale::decimal},
      {12.3456789, Scale::decimal},
  };
  for (const auto& [value, scale] : rows) {
    const std::optional<OffGrid> number = off_grid_of(value);
    ASSERT_TRUE(number) << value;
    EXPECT_EQ(number->scale, scale) << value;
    EXPECT_EQ(value_of(*number), value);
  }
}

TEST(OffGrid, NeverGivesAnotherDouble) {
  Dice dice(7);
  for (int i = 0; i < 20000; ++i) {
    const double wild = dice.real(-1000, 1000);
    const double neighbour = std::nextafter(std::round(wild * 100) / 100, 1e9);
    for (const double value : {wild, neighbour, cm_from_in(std::round(wild)), c_from_f(std::round(wild))})
      if (const std::optional<OffGrid> number = off_grid_of(value)) {
        EXPECT_EQ(value_of(*number), value);
      }
  }
}

TEST(OffGrid, OfWhatIsNoNumberIsNothing) {
  EXPECT_FALSE(off_grid_of(std::numeric_limits<double>::quiet_NaN()));
  EXPECT_FALSE(off_grid_of(std::numeric_limits<double>::infinity()));
  EXPECT_FALSE(off_grid_of(1e300));
  EXPECT_FALSE(off_grid_of(3.141592653589793));
}

}  // namespace
}  // namespace shoalwright
