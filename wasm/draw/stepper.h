// SPDX-License-Identifier: MIT
#pragma once

#include <string_view>

#include "draw/ui.h"

namespace shoalwright {

struct StepperLook {
  float height = 28;
  float value_width = 26;
  bool less = true;  ///< whether − would do anything
  bool more = true;
};

float stepper_width(const StepperLook& look = {});

/// − n +. Returns −1, 0 or +1. One stop of the Tab key; + and − on the keyboard step as well.
/// Spots: `id`, `id/less`, `id/more`.
int stepper(Ui& ui, std::string_view id, ImVec2 at, std::string_view value, std::string_view label, const StepperLook& look = {});

/// The same for a number that can also be typed: pressing Enter or the figures opens a text field over them.
struct NumberLook {
  std::string_view unit;  ///< behind the figures: "L", "°C"
  int decimals = 0;
  double least = 0;
  double most = 1e6;
  double step = 1;
  float height = 28;
  float value_width = 64;
  bool enabled = true;
};
float number_width(const NumberLook& look);
/// True when `value` has changed (already held within least and most). A typed text that is no number changes nothing.
bool number_stepper(Ui& ui, std::string_view id, ImVec2 at, double& value, std::string_view label, const NumberLook& look);

}  // namespace shoalwright
