// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string_view>
#include <utility>
#include <vector>

#include "draw/marks.h"
#include "draw/ui.h"

namespace shoalwright {

/// One kind of fish on a water bar: lives in `tolerated`, thrives in `ideal`.
struct WaterBarRow {
  int number = 1;
  double tolerated[2] = {0, 0};
  double ideal[2] = {0, 0};
};

/// A quantity of the water, one thin row a kind, and the window that suits all.
struct WaterBar {
  std::string_view name;    ///< "GH"
  std::string_view window;  ///< "4 to 12 °dH", in the reader's unit; what to say when there is none
  double from = 0, to = 1;  ///< ends of the axis
  std::vector<double> ticks;
  std::vector<WaterBarRow> rows;
  std::optional<std::pair<double, double>> shared;      ///< the window; none: no band
  std::optional<std::pair<double, double>> shared_now;  ///< as it is without the fish in hand: dashed outline
  std::optional<std::pair<double, double>> gap;         ///< between two that do not meet, where there is no window: hatched
  std::optional<double> today;
  std::optional<double> aim;
  std::string_view message;       ///< one line beneath; empty: none
  std::optional<Severity> grade;  ///< of the message, and of the aim where there is one, else of today
  float row_height = 11;
  int tick_decimals = 0;
};

float water_bar_height(const WaterBar& bar);
/// Where a value stands in a bar drawn there, and the value at a place; both held within the axis.
float water_bar_x(ImVec2 at, float width, const WaterBar& bar, double value);
double water_bar_value(ImVec2 at, float width, const WaterBar& bar, float x);
/// Draws it and returns its height. Spot: `id`, read out as its name, window and message.
float water_bar(Ui& ui, std::string_view id, ImVec2 at, float width, const WaterBar& bar);

}  // namespace shoalwright
