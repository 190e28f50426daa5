// SPDX-License-Identifier: MIT
#pragma once

#include <span>

#include "plan/plan.h"

namespace shoalwright {

/// A tank as it is sold: outside measures and the glass that such a tank usually has. Common practice, no source.
struct UsualSize {
  const char* name;  ///< "54 L" by outside measures, or "20 gallon long"
  double length_cm, width_cm, height_cm;
  double glass_mm;
  bool us;  ///< sold by US gallons (nominal) and inches
};

/// Smallest first, metric tanks before those in US gallons.
std::span<const UsualSize> usual_sizes();

/// A rectangular tank by its outside measures, filled to the usual gap.
Tank box_tank(double length_cm, double width_cm, double height_cm, double glass_mm);

/// A rectangular tank of that size by its inside measures, filled to the usual gap.
Tank tank_of(const UsualSize& size);

}  // namespace shoalwright
