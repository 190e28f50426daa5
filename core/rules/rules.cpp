// SPDX-License-Identifier: MIT
#include "rules/table.h"

namespace shoalwright {

const std::vector<Rule>& all_rules() {
  static const std::vector<Rule> rules = {
      water_temperature, water_ph,   water_gh,    water_kh,    group_size, territory, adult_size,    unknown_species,
      tank_length,       tank_width, tank_height, tank_volume, swim_lane,  crowding,  substrate,     cover,
      wood_needed,       lid,        current,     load,        nitrate,    empty,     unknown_input,
  };
  return rules;
}

}  // namespace shoalwright
