// SPDX-License-Identifier: MIT
#include "rules/table.h"

namespace shoalwright {

namespace {

constexpr bool of_kinds_only = true;

/// The first rules are those that a first look at the planner needs. The others come with the second of the page's two files:
/// each stands in wasm/rest.txt too. Where several stop a group from growing, the first of the list is named.
constexpr RuleRow rules[] = {
    {water_temperature, of_kinds_only},
    {water_ph, of_kinds_only},
    {water_gh, of_kinds_only},
    {water_kh, of_kinds_only},
    {group_size},
    {territory},
    {tank_length, of_kinds_only},
    {tank_width, of_kinds_only},
    {tank_height, of_kinds_only},
    {tank_volume},
    {swim_lane, of_kinds_only},
    {crowding},
    {cover},
    {load},
    {nitrate},
    {oxygen},
    {tap_disinfectant, of_kinds_only},
    {empty, of_kinds_only},

    {water_unreachable, of_kinds_only},
    {water_change_shock, of_kinds_only},
    {kh_low},
    {softened_water, of_kinds_only},
    {acid, of_kinds_only},
    {private_water, of_kinds_only},
    {brackish, of_kinds_only},
    {sex_ratio},
    {male_rivalry},
    {look_alike_rivalry, of_kinds_only},
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
    {substrate, of_kinds_only},
    {wood_needed, of_kinds_only},
    {lid, of_kinds_only},
    {current, of_kinds_only},
    {ammonia, of_kinds_only},
    {filter},
    {cycle, of_kinds_only},
    {mature_tank, of_kinds_only},
    {heater, of_kinds_only},
    {unknown_input, of_kinds_only},
};
constexpr std::size_t first_rules = 18;

}  // namespace

std::span<const RuleRow> all_rules() { return rules; }

std::span<const RuleRow> rules_with(const Catalog& catalog) {
  return std::span(rules).first(catalog.whole ? std::size(rules) : first_rules);
}

}  // namespace shoalwright
