// SPDX-License-Identifier: MIT
#include "water/mix.h"

#include "water/blend.h"
#include "water/carbonate.h"

namespace shoalwright {

namespace {

std::optional<double> mixed_with(double tap_share, const std::optional<double>& tap, double ro, double brought) {
  if (!tap) return std::nullopt;
  return mixed(tap_share, *tap, ro) + brought;
}

std::optional<double> scaled(const std::optional<double>& value, double factor) {
  if (!value) return std::nullopt;
  return *value * factor;
}

}  // namespace

MixedWater mixed_water(const SourceWater& tap, double ro_fraction, std::span<const SaltDose> salts, double temperature_c) {
  MixedWater water;
  SaltBrings sum;
  for (const SaltDose& dose : salts) {
    if (!dose.salt) continue;
    const SaltBrings brought = salt_brings(*dose.salt, dose.mg_l);
    sum.gh_dgh += brought.gh_dgh;
    sum.kh_dkh += brought.kh_dkh;
    water.sodium_mg_l += brought.sodium_mg_l;
    water.potassium_mg_l += brought.potassium_mg_l;
    water.sulphate_mg_l += brought.sulphate_mg_l;
    water.chloride_mg_l += brought.chloride_mg_l;
  }
  const double tap_share = 1 - ro_fraction;
  water.gh_dgh = mixed_with(tap_share, tap.gh_dgh, ro_gh_dgh, sum.gh_dgh);
  water.kh_dkh = mixed_with(tap_share, tap.kh_dkh, ro_kh_dkh, sum.kh_dkh);
  water.nitrate_mg_l = mixed_with(tap_share, tap.nitrate_mg_l, ro_nitrate_mg_l, 0);
  if (water.kh_dkh) {
    const CarbonateWater carbonate{temperature_c, *water.kh_dkh, water.gh_dgh};
    water.ph_after_standing = ph_in_air(carbonate, co2_indoors_atm);
    water.ph_in_tank = Range{ph_with_co2(carbonate, usual_tank_co2_mg_l.high), ph_with_co2(carbonate, usual_tank_co2_mg_l.low)};
  }
  return water;
}

TapSwing tap_swing(const SourceWater& tap, double ro_fraction, std::span<const SaltDose> salts, double share) {
  const auto at = [&](double factor) {
    SourceWater swung = tap;
    swung.gh_dgh = scaled(tap.gh_dgh, factor);
    swung.kh_dkh = scaled(tap.kh_dkh, factor);
    return mixed_water(swung, ro_fraction, salts, 25);  // hardness does not depend on temperature
  };
  const MixedWater low = at(1 - share), high = at(1 + share);
  TapSwing swing;
  if (low.gh_dgh && high.gh_dgh) swing.gh_dgh = Range{*low.gh_dgh, *high.gh_dgh};
  if (low.kh_dkh && high.kh_dkh) swing.kh_dkh = Range{*low.kh_dkh, *high.kh_dkh};
  return swing;
}

}  // namespace shoalwright
