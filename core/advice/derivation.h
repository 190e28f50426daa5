// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "assess/assessment.h"
#include "catalog/catalog.h"
#include "plan/plan.h"

namespace shoalwright {

/// Numbers of an assessment that can be followed home.
enum class Number {
  net_volume,
  co2,
  feed,
  tan,
  plants,
  nitrate_peak,
  change_needed,
  kh_drift,
  media_needed,
  free_ammonia,
  saturation,
  night_use,
  dawn,
  heat_loss,
  heater,
  evaporation,
  top_off,
};

/// How a number comes about, in words and signs for the reader: metric.
struct Derivation {
  std::string formula;
  struct Input {
    std::string name, value;
  };
  std::vector<Input> inputs;
  std::string source;    ///< what the formula rests on
  std::string validity;  ///< where it holds, and which way it errs
};

/// Empty where the assessment does not know the number.
std::optional<Derivation> derivation_of(Number number, const Plan& plan, const Catalog& catalog, const Assessment& assessment);

}  // namespace shoalwright
