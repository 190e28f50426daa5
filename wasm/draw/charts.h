// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <vector>

#include "draw/ui.h"

namespace shoalwright {

/// Nitrate as it rises between changes and falls with each: straight pieces between points in weeks and mg/L.
struct SawToothChart {
  struct Point {
    double week = 0, value = 0;
  };
  std::vector<Point> line;
  std::vector<Point> line_now;  ///< as it is without the fish in hand, dashed; may be empty
  double weeks = 8;
  double most = 40;  ///< top of the scale
  double ceiling = 30;
  std::string_view ceiling_words;  ///< "ceiling 30"
  double source = 0;               ///< of the water that is filled in, a dotted line
  std::vector<double> ticks;
  std::string_view spare;  ///< "about 9 spare"; call colour when over
  bool over = false;
  double peak_week = 7;  ///< where the dimension arrow stands
  double peak = 0;
};
/// In a box about 176 by 82.
void draw_saw_tooth(Ui& ui, const Box& box, const SawToothChart& chart);

}  // namespace shoalwright
