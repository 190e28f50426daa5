// SPDX-License-Identifier: MIT
#include "rules/table.h"

namespace shoalwright {

const std::vector<RuleRow>& all_rules() {
  constexpr bool of_kinds_only = true;
  static const std::vector<RuleRow> rules = {
      {water_temperature, of_kinds_only},
      {water_ph, of_kinds_only},
      {water_gh, of_kinds_only},
      {water_kh, of_kinds_only},
      {water_unreachable, of_kinds_only},
      {water_change_shock, of_kinds_only},
      {kh_low},
      {softened_water, of_kinds_only},
      {acid, of_kinds_only},
      {tap_disinfectant, of_kinds_only},
      {private_water, of_kinds_only},
      {brackish, of_kinds_only},
      {group_size},
      {sex_ratio},
      {male_rivalry},
      {look_alike_rivalry, of_kinds_only},
      {territory},
      {temperament},
      {predation, of_kinds_only},
      {fin_nipping},
      {invertebrate_predation, of_kinds_only},
      {feeding, of_kinds_only},
      {hybrid, of_kinds_only},
      {surplus_young},
      {adult_size, of_kinds_only},
      {plant_eater, of_kinds_only},
      {legal, of_kinds_only},
      {unknown_species, of_kinds_only},
      {tank_length, of_kinds_only},
      {tank_width, of_kinds_only},
      {tank_height, of_kinds_only},
      {tank_volume},
      {swim_lane, of_kinds_only},
      {crowding},
      {substrate, of_kinds_only},
      {cover},
      {wood_needed, of_kinds_only},
      {lid, of_kinds_only},
      {current, of_kinds_only},
      {load},
      {nitrate},
      {ammonia, of_kinds_only},
      {oxygen},
      {filter},
      {cycle, of_kinds_only},
      {mature_tank, of_kinds_only},
      {heater, of_kinds_only},
      {empty, of_kinds_only},
      {unknown_input, of_kinds_only},
  };
  return rules;
}

}  // namespace shoalwright
