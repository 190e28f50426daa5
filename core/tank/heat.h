// SPDX-License-Identifier: MIT
#pragma once

#include <optional>

#include "plan/plan.h"
#include "tank/evaporation.h"
#include "tank/volume.h"

namespace shoalwright {

// Heat that a warm tank loses to a cooler room, through walls, bottom and top and by evaporation, and what puts it back.

/// Heat that one square metre of a wall lets through for each degree, W, from stirred water inside to still air outside. `outer`
/// is the resistance of the air outside, `extra` that of further layers, m2 K/W. ISO 6946 (outer resistances); the inner one,
/// 0.005, is common practice, no source.
double wall_loss_w_m2_k(double thickness_m, double conductivity_w_m_k, double outer_m2_k_w, double extra_m2_k_w = 0);

/// Resistance of the air outside, m2 K/W: walls, upwards, downwards. ISO 6946.
inline constexpr double air_beside_m2_k_w = 0.13, air_above_m2_k_w = 0.10, air_below_m2_k_w = 0.17;
/// Conductivity, W/m K: soda-lime glass, EN ISO 10077-2; acrylic glass from tables of the same kind.
inline constexpr double glass_w_m_k = 1.0, acrylic_w_m_k = 0.19;

/// A tank that is kept warm. Outside measures, m. It stands on 10 mm of foam and 18 mm of board (without them the floor loses
/// three times as much), both walls and bottom of glass.
struct WarmTank {
  double around_m = 0;  ///< all walls, measured along the floor
  double base_m2 = 0;
  double wetted_m = 0;  ///< height of the water
  double glass_m = 0;
  bool lid = false;  ///< of 4 mm glass, tight
  double water_c = 0, air_c = 0;
  double humidity = usual_humidity;
  double evaporates = evaporates_still;  ///< share as in tank/evaporation.h
};

/// Where the heat goes, W. Walls, bottom and top are below 0 where the room is the warmer.
struct HeatLoss {
  double wall_w = 0, bottom_w = 0, top_w = 0, evaporation_w = 0;
  double total_w() const { return wall_w + bottom_w + top_w + evaporation_w; }
};

/// Once all is steady. The layer of air under a lid is from memory (ISO 6946); an open surface has no resistance but the air's.
HeatLoss heat_loss_of(const WarmTank& tank);

/// Where the water settles without a heater, degrees C: evaporation keeps it a little under the room. `tank.water_c` is not
/// looked at.
double unheated_c(WarmTank tank);

/// Heating power for a loss, of which pumps and lamps give `gear_w`: half as much again, so that a cold night and a cold water
/// change are made up for. 0 where nothing is lost. Common practice, no source.
double heater_power_w(double loss_w, double gear_w);

/// Heaters as they are sold.
struct Heaters {
  int count = 0;
  double each_w = 0;
  double all_w() const { return count * each_w; }
  bool operator==(const Heaters&) const = default;
};

/// The fewest that give `power_w`, of equal size, rounded up to one that is sold (10 to 300 W). Two at least above 200 W: one
/// that sticks then cooks no tank, one that fails chills none. None for no power. Common practice, no
/// source.
Heaters heaters_for(double power_w);

/// Hours in which an unheated tank loses 63 % of what it is warmer than the room, from its water and the heat that it loses for
/// each degree. Gravel, which adds about a tenth, is left out. Empty where nothing is lost.
std::optional<double> cooling_hours(double water_kg, double loss_w_k);

/// Hours until water of `from_c` has cooled to `cold_c` in a room of `air_c`. 0 where it is that cold already, empty where it
/// never gets so cold.
std::optional<double> hours_until_cold(double cooling_hours, double from_c, double cold_c, double air_c);

/// What keeping a plan's water warm takes. Empty: not known because an input was not given.
struct Heat {
  std::optional<double> loss_w, heater_needed_w, evaporation_l_d;
  bool operator==(const Heat&) const = default;
};

/// Heat lost, below 0 where the room warms the tank; heaters to buy, all together, 0: none needed; water to top up a day. Every
/// shape, by its outside. Air of the plan's place at usual humidity; a lid counts as tight glass; an open surface evaporates by
/// the plan's word for it, else still without a filter and moving with one, also where the filter is not known. No gear gives
/// heat, since a plan says nothing of its power: an estimate on the safe side. None needed in a room that is as warm as the water
/// aimed at, though evaporation keeps open water a degree or two under the room. Empty without temperatures, a tank, or knowing
/// about a lid.
Heat heat_of(const Plan& plan, const Volume& volume, std::optional<double> water_c);

/// Where the plan's water settles without a heater, degrees C. Empty without the room's temperature, a tank, or knowing about a
/// lid. Kinds that thrive there need none.
std::optional<double> unheated_c(const Plan& plan, const Volume& volume);

/// Hours in a power cut until the plan's water, at `water_c`, is at `cold_c`; empty where heat_of() is, and where it never gets
/// so cold.
std::optional<double> hours_until_cold(const Plan& plan, const Volume& volume, double water_c, double cold_c);

}  // namespace shoalwright
