// SPDX-License-Identifier: MIT
#pragma once

#include "units/range.h"

namespace shoalwright {

// Oxygen dissolved in fresh water under moist air. Benson, B.B. & Krause, D. 1984. The concentration and isotopic fractionation
// of oxygen dissolved in freshwater and seawater in equilibrium with the atmosphere. Limnology and Oceanography 29: 620-632; the
// same equation in Standard Methods 4500-O. Salts of fresh water (below 1 g/L) lower it by 0.6 % or less and are left out.

inline constexpr Range oxygen_temperature_c{0, 40}, oxygen_pressure_atm{0.5, 1.1}, pressure_altitude_m{-1000, 11000};

/// Whether the equations hold there; outside they answer for the nearer edge.
bool oxygen_valid(double temperature_c, double pressure_atm);

/// Oxygen at saturation, mg/L. `pressure_atm` is that of the place itself, not the forecast's, which is told as if at the sea.
double oxygen_saturation_mg_l(double temperature_c, double pressure_atm = 1);

/// Oxygen in % of saturation. Above 100 where plants give it off.
double oxygen_percent(double oxygen_mg_l, double temperature_c, double pressure_atm = 1);

/// Pressure of the air at an altitude, atm; held within `pressure_altitude_m`. International standard atmosphere, troposphere
/// (from memory).
double pressure_at_altitude_atm(double altitude_m);

/// Oxygen that bacteria take to turn ammonia nitrogen into nitrate, mg for mg of nitrogen, when none goes into growth: NH4+ +
/// 2 O2. Stoichiometry; with growth somewhat less.
double oxygen_for_nitrification_mg(double n_mg);

}  // namespace shoalwright
