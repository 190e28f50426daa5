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
/// Where a value stands in it, and the value at a height.
float saw_tooth_y(const Box& box, const SawToothChart& chart, double value);
double saw_tooth_value(const Box& box, const SawToothChart& chart, float y);

/// Dissolved oxygen over a day, midnight to midnight, mg/L.
struct AirChart {
  struct Point {
    double hour = 0, value = 0;
  };
  std::vector<Point> line;
  std::vector<Point> line_now;          ///< as it is without the fish in hand, dashed; may be empty
  double lamps_on = 8, lamps_off = 18;  ///< the rest is night, shaded
  double limit = 5;
  std::string_view limit_words;  ///< "3 needs 5.0"
  double dawn = 6;               ///< the dimension arrow goes from the limit to it, when the lamps go on
  std::string_view spare;        ///< "1.1"; call colour when under
  bool under = false;
  double least = 4, most = 9;  ///< ends of the scale
};
/// In a box about 132 by 82 and wider.
void draw_air(Ui& ui, const Box& box, const AirChart& chart);

}  // namespace shoalwright
