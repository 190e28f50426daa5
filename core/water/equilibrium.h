// SPDX-License-Identifier: MIT
#pragma once

#include "units/range.h"

namespace shoalwright {

// Equilibrium constants of carbonic acid in fresh water (mol/kg, taken as mol/L; decimal logarithms) and what dissolved salts do
// to them. First and second dissociation, solubility of CO2 and of calcite: Plummer, L.N. & Busenberg, E. 1982. The solubilities
// of calcite, aragonite and vaterite in CO2-H2O solutions between 0 and 90 degrees C. Geochimica et Cosmochimica Acta 46:
// 1011-1040. Water itself: Nordstrom, D.K. et al. 1990. ACS Symposium Series 416, as PHREEQC (US Geological Survey) has it.
// Outside 0 to 90 degrees C they answer for the nearer edge.

inline constexpr Range equilibrium_temperature_c{0, 90};

double log10_k1(double temperature_c);       ///< CO2 = H+ + HCO3-
double log10_k2(double temperature_c);       ///< HCO3- = H+ + CO3--
double log10_k_gas(double temperature_c);    ///< CO2 in air = CO2 in water, mol/(L atm)
double log10_k_water(double temperature_c);  ///< H2O = H+ + OH-
double log10_k_calcite(double temperature_c);

/// Ions in mol/L, each counted with half the square of its charge; what activities are worked out for is held within it.
inline constexpr Range ionic_strength_mol_l{1e-6, 0.1};

/// Ionic strength of water with that hardness, mol/L: hardness beyond the alkalinity is counted as half sulphate and half
/// chloride by charge, alkalinity beyond the hardness as sodium. A plain account of charges. Held within `ionic_strength_mol_l`.
double ionic_strength_of_hardness_mol_l(double kh_dkh, double gh_dgh);

/// The same from conductivity at 25 degrees C, microsiemens a cm: 1.4e-5 of it, between what PHREEQC gives for sodium bicarbonate
/// water (1.0e-5 to 1.1e-5) and for hard water (1.35e-5 to 1.54e-5).
double ionic_strength_of_conductivity_mol_l(double conductivity_us_cm);

/// Logarithm of the activity coefficient of an ion with a single charge; 4 times that with a double one. Davies' equation (from
/// memory); its factor over temperature is a linear fit (from memory).
double log10_activity(double temperature_c, double ionic_strength);

}  // namespace shoalwright
