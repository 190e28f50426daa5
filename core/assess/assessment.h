// SPDX-License-Identifier: MIT
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "notebook/finding.h"
#include "stocking/air.h"
#include "stocking/load.h"
#include "stocking/room.h"
#include "tank/heat.h"
#include "tank/volume.h"
#include "water/window.h"

namespace shoalwright {

/// How far one margin is from its limit. `value` is signed, in `unit`, negative when over; `animals`: how many more of the
/// limiting kind fit, where that makes sense.
struct Tightest {
  std::string margin;  ///< key of FORMATS section 3
  double value = 0;
  std::string unit;
  std::optional<int> animals;
  std::vector<std::string> set_by;
  bool operator==(const Tightest&) const = default;
};

/// What follows from a plan and a catalogue (FORMATS section 3).
struct Assessment {
  Volume volume;
  Windows water;
  Room room;
  Load load;
  Air air;
  Heat heat;
  std::vector<Finding> findings;   ///< by severity, rule, species
  std::vector<Tightest> tightest;  ///< worst first
  std::vector<std::string> cautions;
  bool operator==(const Assessment&) const = default;
};

}  // namespace shoalwright
