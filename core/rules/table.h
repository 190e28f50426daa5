// SPDX-License-Identifier: MIT
#pragma once

#include "rules/facts.h"

namespace shoalwright {

// Every rule by its id, as rules.cpp lists them.

void water_temperature(const Facts& facts, Found& out);
void water_ph(const Facts& facts, Found& out);
void water_gh(const Facts& facts, Found& out);
void water_kh(const Facts& facts, Found& out);
void water_unreachable(const Facts& facts, Found& out);
void water_change_shock(const Facts& facts, Found& out);
void kh_low(const Facts& facts, Found& out);
void softened_water(const Facts& facts, Found& out);
void acid(const Facts& facts, Found& out);
void tap_disinfectant(const Facts& facts, Found& out);
void private_water(const Facts& facts, Found& out);
void brackish(const Facts& facts, Found& out);
void group_size(const Facts& facts, Found& out);
void sex_ratio(const Facts& facts, Found& out);
void male_rivalry(const Facts& facts, Found& out);
void look_alike_rivalry(const Facts& facts, Found& out);
void territory(const Facts& facts, Found& out);
void temperament(const Facts& facts, Found& out);
void predation(const Facts& facts, Found& out);
void fin_nipping(const Facts& facts, Found& out);
void invertebrate_predation(const Facts& facts, Found& out);
void feeding(const Facts& facts, Found& out);
void hybrid(const Facts& facts, Found& out);
void surplus_young(const Facts& facts, Found& out);
void adult_size(const Facts& facts, Found& out);
void plant_eater(const Facts& facts, Found& out);
void legal(const Facts& facts, Found& out);
void unknown_species(const Facts& facts, Found& out);
void tank_length(const Facts& facts, Found& out);
void tank_width(const Facts& facts, Found& out);
void tank_height(const Facts& facts, Found& out);
void tank_volume(const Facts& facts, Found& out);
void swim_lane(const Facts& facts, Found& out);
void crowding(const Facts& facts, Found& out);
void substrate(const Facts& facts, Found& out);
void cover(const Facts& facts, Found& out);
void wood_needed(const Facts& facts, Found& out);
void lid(const Facts& facts, Found& out);
void current(const Facts& facts, Found& out);
void load(const Facts& facts, Found& out);
void nitrate(const Facts& facts, Found& out);
void ammonia(const Facts& facts, Found& out);
void oxygen(const Facts& facts, Found& out);
void filter(const Facts& facts, Found& out);
void cycle(const Facts& facts, Found& out);
void mature_tank(const Facts& facts, Found& out);
void heater(const Facts& facts, Found& out);
void empty(const Facts& facts, Found& out);
void unknown_input(const Facts& facts, Found& out);

}  // namespace shoalwright
