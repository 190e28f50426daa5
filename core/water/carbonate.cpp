// SPDX-License-Identifier: MIT
#include "water/carbonate.h"

#include <algorithm>

#include "units/convert.h"
#include "units/power.h"
#include "water/equilibrium.h"
#include "water/held.h"

namespace shoalwright {

namespace {

constexpr double mg_per_mol_co2 = 1000 * (molar_c + 2 * molar_o);

/// One water with all that does not depend on its pH.
struct Balance {
  double alkalinity_eq_l = 0;
  double k1 = 0, k2 = 0, k_water = 0;
  double single = 1, twice = 1;  ///< activity coefficients by charge
};

Balance balance_of(const CarbonateWater& water) {
  const double kh = held_within(water.kh_dkh, carbonate_kh_dkh);
  const double gh = held_within(water.gh_dgh.value_or(kh), carbonate_gh_dgh);
  const double t = water.temperature_c;
  const double log10_single = log10_activity(t, ionic_strength_of_hardness_mol_l(kh, gh));
  return {.alkalinity_eq_l = meq_l_from_degrees(kh) / 1000,
          .k1 = raised(10, log10_k1(t)),
          .k2 = raised(10, log10_k2(t)),
          .k_water = raised(10, log10_k_water(t)),
          .single = raised(10, log10_single),
          .twice = raised(10, 4 * log10_single)};
}

/// At one activity of hydrogen ions.
struct Ions {
  double bicarbonate = 0, carbonate = 0;  ///< mol for each mol of CO2
  double hydroxide_less_hydrogen = 0;     ///< mol/L
};

Ions ions_at(const Balance& b, double hydrogen) {
  return {.bicarbonate = b.k1 / (hydrogen * b.single),
          .carbonate = b.k1 * b.k2 / (hydrogen * hydrogen * b.twice),
          .hydroxide_less_hydrogen = b.k_water / (hydrogen * b.single) - hydrogen / b.single};
}

double hydrogen_at(double ph) { return raised(10, -held_within(ph, carbonate_ph)); }

/// The pH where the ions carry the alkalinity; they carry more the higher it is. `co2_mol_l` tells the CO2 from the ions.
template <class Co2>
double solved_ph(const Balance& b, Co2 co2_mol_l) {
  double low = carbonate_ph.low, high = carbonate_ph.high;
  for (int halving = 0; halving < 60; ++halving) {
    const double ph = (low + high) / 2;
    const Ions ions = ions_at(b, hydrogen_at(ph));
    const double carried = co2_mol_l(ions) * (ions.bicarbonate + 2 * ions.carbonate) + ions.hydroxide_less_hydrogen;
    (carried < b.alkalinity_eq_l ? low : high) = ph;
  }
  return (low + high) / 2;
}

double ph_of(const Balance& b, double co2_mol_l) {
  return solved_ph(b, [co2_mol_l](const Ions&) { return co2_mol_l; });
}

double co2_of(const Balance& b, const Ions& ions) {
  return std::max(b.alkalinity_eq_l - ions.hydroxide_less_hydrogen, 0.0) / (ions.bicarbonate + 2 * ions.carbonate);
}

double carbon_of(double co2_mol_l, const Ions& ions) { return co2_mol_l * (1 + ions.bicarbonate + ions.carbonate); }

double mol_l_of_co2(double co2_mg_l) { return held_within(co2_mg_l, carbonate_co2_mg_l) / mg_per_mol_co2; }

double in_air_mol_l(double temperature_c, double air_co2_atm) {
  return raised(10, log10_k_gas(temperature_c)) * held_within(air_co2_atm, carbonate_air_atm);
}

}  // namespace

bool carbonate_valid(const CarbonateWater& water) {
  return is_within(water.temperature_c, equilibrium_temperature_c) && is_within(water.kh_dkh, carbonate_kh_dkh) &&
         (!water.gh_dgh || is_within(*water.gh_dgh, carbonate_gh_dgh));
}

double ph_with_co2(const CarbonateWater& water, double co2_mg_l) { return ph_of(balance_of(water), mol_l_of_co2(co2_mg_l)); }

double co2_at_ph_mg_l(const CarbonateWater& water, double ph) {
  const Balance b = balance_of(water);
  return co2_of(b, ions_at(b, hydrogen_at(ph))) * mg_per_mol_co2;
}

double co2_in_air_mg_l(double temperature_c, double air_co2_atm) {
  return in_air_mol_l(temperature_c, air_co2_atm) * mg_per_mol_co2;
}

double ph_in_air(const CarbonateWater& water, double air_co2_atm) {
  return ph_of(balance_of(water), in_air_mol_l(water.temperature_c, air_co2_atm));
}

double carbon_with_co2_mol_l(const CarbonateWater& water, double co2_mg_l) {
  const Balance b = balance_of(water);
  const double co2_mol_l = mol_l_of_co2(co2_mg_l);
  return carbon_of(co2_mol_l, ions_at(b, hydrogen_at(ph_of(b, co2_mol_l))));
}

double carbon_at_ph_mol_l(const CarbonateWater& water, double ph) {
  const Balance b = balance_of(water);
  const Ions ions = ions_at(b, hydrogen_at(ph));
  return carbon_of(co2_of(b, ions), ions);
}

double ph_with_carbon(const CarbonateWater& water, double carbon_mol_l) {
  const double carbon = carbon_mol_l > 0 ? carbon_mol_l : 0;
  return solved_ph(balance_of(water), [carbon](const Ions& ions) { return carbon / (1 + ions.bicarbonate + ions.carbonate); });
}

double co2_by_trade_rule_mg_l(double kh_dkh, double ph) {
  return 3 * held_within(kh_dkh, carbonate_kh_dkh) * raised(10, 7 - held_within(ph, carbonate_ph));
}

}  // namespace shoalwright
