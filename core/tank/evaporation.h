// SPDX-License-Identifier: MIT
#pragma once

namespace shoalwright {

// Water that leaves a tank as vapour.

/// Share of what an open, ruffled surface evaporates. Still and moving are measured (see evaporation_kg_d), the others common
/// practice, no source.
inline constexpr double evaporates_under_glass = 0.10, evaporates_under_mesh = 0.40, evaporates_still = 0.65,
                        evaporates_moving = 0.75, evaporates_ruffled = 1.0;
/// Air over a tank in a room, m/s, and how damp it is where nobody has measured it, 0 to 1. Common practice, no source.
inline constexpr double room_air_m_s = 0.1, usual_humidity = 0.5;

/// Pressure of saturated water vapour, kPa, -40 to 50 degrees C (held there), within 0.4 %. Alduchov, O.A. & Eskridge, R.E. 1996.
/// Improved Magnus form approximation of saturation vapor pressure. Journal of Applied Meteorology 35: 601-609 (constants from
/// memory).
double vapour_pressure_kpa(double temperature_c);

/// Heat that evaporating 1 kg of water takes, kJ, 0 to 50 degrees C (held there). Straight line through tables of steam (from
/// memory).
double vaporisation_kj_kg(double temperature_c);

/// Water over which air stands.
struct WetSurface {
  double area_m2 = 0;
  double water_c = 0, air_c = 0;
  double humidity = usual_humidity;  ///< of the air, 0 to 1
  double share = 1;                  ///< one of the shares above
  double air_m_s = room_air_m_s;
};

/// Water evaporated in a day, kg (as good as L); 0 where vapour would rather settle. The pool equation W = (95 + 0.425 v)(pw -
/// pa) / Y, in lb/h ft2, ft/min, inHg and Btu/lb, turned into metric units. Smith, Loef & Jones 1998, ASHRAE Transactions 104,
/// measured 74 % of it over undisturbed pools: `evaporates_moving`; the relation below gives 63 % over still water.
double evaporation_kg_d(const WetSurface& surface);

/// The same by natural convection over still water, kg/m2/h: a cross-check, driven by how much lighter damp warm air is than that
/// of the room; 0 where it is not lighter, or where vapour would rather settle. Sea-level pressure. After Shah (equation from
/// memory; it gives 0.1353 where his table has 0.136, at 28 degrees C in air of 28 degrees C and 50 %).
double still_evaporation_kg_m2_h(double water_c, double air_c, double humidity);

}  // namespace shoalwright
