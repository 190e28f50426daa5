// SPDX-License-Identifier: MIT
// Which function of the core answers which quantity of the table of water chemistry.
#include <algorithm>
#include <cmath>

#include "support/check_table.h"
#include "tank/mass.h"
#include "units/convert.h"
#include "water/ammonia.h"
#include "water/blend.h"
#include "water/calcite.h"
#include "water/carbonate.h"
#include "water/change.h"
#include "water/chloride.h"
#include "water/cycle.h"
#include "water/equilibrium.h"
#include "water/growth.h"
#include "water/media.h"
#include "water/nitrogen.h"
#include "water/oxygen.h"
#include "water/salts.h"

namespace shoalwright {

namespace {

/// The saw-tooth of a row; what a quantity does not need may be missing.
SawTooth changes_in(CheckInputs& in) {
  return {.rise_per_day = in.number("p"),
          .every_days = in.number_or("T_d", NAN),
          .fraction = in.number_or("f", NAN),
          .source = in.number("c_r")};
}

double or_nan(const std::optional<double>& value) { return value.value_or(NAN); }

CheckAnswer several(CheckInputs& in) {
  std::vector<double> fractions;
  for (const std::string& text : split_text(in.text("fractions"), "+")) {
    const auto fraction = parse_number(text);
    if (!fraction) in.refuse("fraction \"" + text + "\" is no number");
    fractions.push_back(fraction.value_or(0));
  }
  return after_changes(in.number("c0"), in.number("c_r"), fractions);
}

double pressure_in(CheckInputs& in) { return in.number_or("P_atm", 1); }

/// Water of a row, whose keys may end in what tells it from another. Without general hardness: as much as carbonate hardness.
CarbonateWater water_in(CheckInputs& in, const std::string& kh_key, const std::string& gh_key) {
  const double kh = in.number(kh_key);
  return {.temperature_c = in.number("T_C"), .kh_dkh = kh, .gh_dgh = in.number_or(gh_key, kh)};
}

CarbonateWater water_in(CheckInputs& in) { return water_in(in, "KH_dKH", "GH_dGH"); }
CarbonateWater tap_in(CheckInputs& in) { return water_in(in, "KH_tap", "GH_tap"); }
CarbonateWater pure_in(CheckInputs& in) { return water_in(in, "KH_ro", "GH_ro"); }

double kh_after_nitrification(CheckInputs& in) {
  return in.number("KH_start") - kh_drop_dkh(n_from_no3(in.number("NO3_produced_mgL")), in.number("eq_per_molN"));
}

/// The salt of a row, which writes it as a formula, perhaps with a word after it.
const Salt& salt_in(CheckInputs& in) {
  static const std::map<std::string, std::string, std::less<>> ids{{"CaSO4.2H2O", "calcium-sulphate-dihydrate"},
                                                                   {"CaCl2", "calcium-chloride"},
                                                                   {"CaCl2.2H2O", "calcium-chloride-dihydrate"},
                                                                   {"MgSO4.7H2O", "magnesium-sulphate-heptahydrate"},
                                                                   {"MgCl2.6H2O", "magnesium-chloride-hexahydrate"},
                                                                   {"NaHCO3", "sodium-bicarbonate"},
                                                                   {"KHCO3", "potassium-bicarbonate"},
                                                                   {"CaCO3", "calcium-carbonate"}};
  const std::string text = in.text("salt"), formula = text.substr(0, text.find(' '));
  const auto id = ids.find(formula);
  const Salt* salt = id == ids.end() ? nullptr : find_salt(id->second);
  if (salt) return *salt;
  in.refuse("salt \"" + text + "\" is not known");
  return known_salts()[0];
}

Growth growth_in_row(CheckInputs& in) { return growth_in(in.number("T_C"), in.number("DO"), in.number("pH")); }

/// New tanks by the letter that a row names.
std::optional<Cycle> scenario(const std::string& name) {
  Cycle c;
  if (name == "A" || name == "E") {  // ammonia given, no animals
    c = {.temperature_c = 26, .oxygen_mg_l = 7.3, .ph = 7.8};
    c.start = {.water = {.tan_mg_l = 2, .kh_dkh = 10}, .bacteria = name == "A" ? unseeded : lightly_seeded};
    c.dosing = CycleDosing{.below_mg_l = 0.5, .up_to_mg_l = 2};
  } else if (name == "B" || name == "D") {  // with animals
    c = {.temperature_c = 25, .oxygen_mg_l = 7.4, .ph = 7.4, .load_mg_l_d = 0.3};
    c.start = {.water = {.kh_dkh = 8}, .bacteria = lightly_seeded};
    if (name == "D")
      for (int day = 7; day <= cycle_most_days; day += 7) c.changes.push_back({.day = day, .fraction = 0.3});
    c.fresh = {.nitrate_n_mg_l = 1, .kh_dkh = 8};
  } else if (name == "C") {  // with a quarter of the media of a running filter
    c = {.temperature_c = 24, .oxygen_mg_l = 7.5, .ph = 7.6, .load_mg_l_d = 0.2};
    c.start = {.water = {.kh_dkh = 6}, .bacteria = seeded(0.25, 0.2)};
  } else {
    return std::nullopt;
  }
  return c;
}

/// The run that a row asks about, at least 75 days long.
CycleRun run_in(CheckInputs& in, int day = 0) {
  const std::optional<Cycle> cycle = scenario(in.text("scenario"));
  if (!cycle) in.refuse("scenario \"" + in.text("scenario") + "\" is not known");
  return run_cycle(cycle.value_or(Cycle{}), std::max(day, 75)).value_or(CycleRun{});
}

CycleWater day_end_in(CheckInputs& in) {
  const double day = in.number("day");
  if (!(day >= 0 && day <= cycle_most_days && day == std::floor(day))) {
    in.refuse("input day is no whole day from 0 to " + std::to_string(cycle_most_days));
    return {};
  }
  const std::size_t at = static_cast<std::size_t>(day);
  const CycleRun run = run_in(in, static_cast<int>(at));
  return at < run.day_ends.size() ? run.day_ends[at].water : CycleWater{};
}

}  // namespace

const std::map<std::string, CheckFunction, std::less<>>& check_chemistry() {
  static const std::map<std::string, CheckFunction, std::less<>> table{
      {"deg_to_mgL_CaCO3", [](CheckInputs& in) -> CheckAnswer { return mg_l_caco3_from_degrees(in.number("deg")); }},
      {"mgL_CaCO3_to_deg", [](CheckInputs& in) -> CheckAnswer { return degrees_from_mg_l_caco3(in.number("mgL")); }},
      {"deg_to_meqL", [](CheckInputs& in) -> CheckAnswer { return meq_l_from_degrees(in.number("deg")); }},
      {"dGH_to_mmolL", [](CheckInputs& in) -> CheckAnswer { return mmol_l_from_degrees(in.number("deg")); }},
      {"dKH_to_mgL_HCO3", [](CheckInputs& in) -> CheckAnswer { return mg_l_hco3_from_degrees(in.number("deg")); }},
      {"n_to_no3", [](CheckInputs& in) -> CheckAnswer { return no3_from_n(in.number("N_mgL")); }},
      {"n_to_no2", [](CheckInputs& in) -> CheckAnswer { return no2_from_n(in.number("N_mgL")); }},
      {"n_to_nh3", [](CheckInputs& in) -> CheckAnswer { return nh3_from_n(in.number("N_mgL")); }},
      {"n_to_nh4", [](CheckInputs& in) -> CheckAnswer { return nh4_from_n(in.number("N_mgL")); }},
      {"tan_from_feed", [](CheckInputs& in) -> CheckAnswer { return tan_from_feed_mg(in.number("F_g"), in.number("PC")); }},
      {"nitrate_rise_per_day",
       [](CheckInputs& in) -> CheckAnswer {
         return nitrate_from_tan_mg_l(tan_from_feed_mg(in.number("F_g"), in.number("PC")), in.number("V_L"));
       }},
      {"alkalinity_consumed_CaCO3",
       [](CheckInputs& in) -> CheckAnswer { return alkalinity_for_nitrification_mg_l(in.number("N_mgL")); }},
      {"kh_drop_full_2eq", [](CheckInputs& in) -> CheckAnswer { return kh_drop_dkh(in.number("N_mgL"), 2); }},
      {"kh_drop_net_1eq", [](CheckInputs& in) -> CheckAnswer { return kh_drop_dkh(in.number("N_mgL"), 1); }},
      {"kh_after_nitrification", [](CheckInputs& in) -> CheckAnswer { return kh_after_nitrification(in); }},
      {"ph_after_nitrification_open",
       [](CheckInputs& in) -> CheckAnswer {
         const double kh = kh_after_nitrification(in);
         return ph_in_air({.temperature_c = in.number("T_C"), .kh_dkh = kh, .gh_dgh = in.number_or("GH_dGH", kh)},
                          in.number("pCO2_atm"));
       }},
      {"do_saturation", [](CheckInputs& in) -> CheckAnswer { return oxygen_saturation_mg_l(in.number("T_C"), pressure_in(in)); }},
      {"do_percent_saturation",
       [](CheckInputs& in) -> CheckAnswer { return oxygen_percent(in.number("DO"), in.number("T_C"), pressure_in(in)); }},
      {"pressure_from_altitude", [](CheckInputs& in) -> CheckAnswer { return pressure_at_altitude_atm(in.number("h_m")); }},
      {"o2_for_nitrification_no_growth",
       [](CheckInputs& in) -> CheckAnswer { return oxygen_for_nitrification_mg(in.number("N_mgL")); }},
      {"nh4_pKa", [](CheckInputs& in) -> CheckAnswer { return ammonium_pka(in.number("T_C")); }},
      {"nh3_fraction", [](CheckInputs& in) -> CheckAnswer { return nh3_share(in.number("T_C"), in.number("pH")); }},
      {"nh3_fraction_vs_geochem", [](CheckInputs& in) -> CheckAnswer { return nh3_share(in.number("T_C"), in.number("pH")); }},
      {"nh3_n_from_tan",
       [](CheckInputs& in) -> CheckAnswer {
         return nh3_n_from_tan_mg_l(in.number("TAN_mgNL"), in.number("T_C"), in.number("pH"));
       }},
      {"tan_limit_for_nh3",
       [](CheckInputs& in) -> CheckAnswer { return tan_for_nh3_mg_l(in.number("NH3_mgL"), in.number("T_C"), in.number("pH")); }},
      {"epa_cmc_oncorhynchus_present",
       [](CheckInputs& in) -> CheckAnswer { return acute_tan_with_trout_mg_l(in.number("T_C"), in.number("pH")); }},
      {"epa_cmc_oncorhynchus_absent",
       [](CheckInputs& in) -> CheckAnswer { return acute_tan_without_trout_mg_l(in.number("T_C"), in.number("pH")); }},
      {"epa_ccc", [](CheckInputs& in) -> CheckAnswer { return chronic_tan_mg_l(in.number("T_C"), in.number("pH")); }},
      {"log10_K1", [](CheckInputs& in) -> CheckAnswer { return log10_k1(in.number("T_C")); }},
      {"log10_K2", [](CheckInputs& in) -> CheckAnswer { return log10_k2(in.number("T_C")); }},
      {"log10_KH_CO2", [](CheckInputs& in) -> CheckAnswer { return log10_k_gas(in.number("T_C")); }},
      {"log10_Kw", [](CheckInputs& in) -> CheckAnswer { return log10_k_water(in.number("T_C")); }},
      {"debye_huckel_log_gamma1",
       [](CheckInputs& in) -> CheckAnswer { return log10_activity(in.number("T_C"), in.number("I")); }},
      {"ionic_strength_from_gh_kh",
       [](CheckInputs& in) -> CheckAnswer {
         const double kh = in.number("KH_dKH");
         return ionic_strength_of_hardness_mol_l(kh, in.number_or("GH_dGH", kh));
       }},
      {"ph_from_kh_co2", [](CheckInputs& in) -> CheckAnswer { return ph_with_co2(water_in(in), in.number("CO2_mgL")); }},
      {"ph_equilibrium_air", [](CheckInputs& in) -> CheckAnswer { return ph_in_air(water_in(in), in.number("pCO2_atm")); }},
      {"co2_from_kh_ph", [](CheckInputs& in) -> CheckAnswer { return co2_at_ph_mg_l(water_in(in), in.number("pH")); }},
      {"co2_equilibrium_air",
       [](CheckInputs& in) -> CheckAnswer { return co2_in_air_mg_l(in.number("T_C"), in.number("pCO2_atm")); }},
      {"co2_trade_rule",
       [](CheckInputs& in) -> CheckAnswer { return co2_by_trade_rule_mg_l(in.number("KH_dKH"), in.number("pH")); }},
      {"calcite_SI",
       [](CheckInputs& in) -> CheckAnswer {
         return or_nan(calcite_index(water_in(in), in.number("Ca_share_of_GH"), in.number("pH"), in.number("CO2_mgL")));
       }},
      {"blend_gh",
       [](CheckInputs& in) -> CheckAnswer { return mixed(in.number("x_tap"), in.number("GH_tap"), in.number("GH_ro")); }},
      {"blend_kh",
       [](CheckInputs& in) -> CheckAnswer { return mixed(in.number("x_tap"), in.number("KH_tap"), in.number("KH_ro")); }},
      {"blend_fraction_for_target",
       [](CheckInputs& in) -> CheckAnswer { return or_nan(share_for(in.number("target"), in.number("tap"), in.number("ro"))); }},
      {"ph_blend_closed",
       [](CheckInputs& in) -> CheckAnswer {
         const Conserved tap = conserved_with_co2(tap_in(in), in.number("CO2_tap_mgL"));
         const Conserved pure = conserved_in_air(pure_in(in), in.number("pCO2_ro_atm"));
         return ph_closed(mixed(in.number("x_tap"), tap, pure), in.number("T_C"));
       }},
      // What CO2 the waters brought no longer matters.
      {"ph_blend_after_equilibration",
       [](CheckInputs& in) -> CheckAnswer {
         const double air = in.number("pCO2_atm");
         const Conserved tap = conserved_in_air(tap_in(in), air), pure = conserved_in_air(pure_in(in), air);
         return ph_after_standing(mixed(in.number("x_tap"), tap, pure), in.number("T_C"), air);
       }},
      {"ph_after_NaHCO3_closed",
       [](CheckInputs& in) -> CheckAnswer {
         const Conserved before = conserved_with_co2(water_in(in), in.number("CO2_mgL"));
         return ph_closed(with_bicarbonate(before, in.number("add_dKH")), in.number("T_C"));
       }},
      {"dose_mg_per_L_per_degree",
       [](CheckInputs& in) -> CheckAnswer {
         const Salt& salt = salt_in(in);
         return or_nan(salt_mg_l_per_dgh(salt) ? salt_mg_l_per_dgh(salt) : salt_mg_l_per_dkh(salt));
       }},
      {"dose_grams",
       [](CheckInputs& in) -> CheckAnswer {
         const Salt& salt = salt_in(in);
         const double rise = in.number("delta_deg"), water_l = in.number("V_L");
         return or_nan(salt_mg_l_per_dgh(salt) ? salt_g_for_dgh(salt, rise, water_l) : salt_g_for_dkh(salt, rise, water_l));
       }},
      {"muA_max", [](CheckInputs& in) -> CheckAnswer { return ammonia_oxidisers_fastest_d(in.number("T_C")); }},
      {"muN_max", [](CheckInputs& in) -> CheckAnswer { return nitrite_oxidisers_fastest_d(in.number("T_C")); }},
      {"K_A", [](CheckInputs& in) -> CheckAnswer { return ammonia_half_mg_l(in.number("T_C")); }},
      {"f_pH", [](CheckInputs& in) -> CheckAnswer { return growth_left_by_acid(in.number("pH")); }},
      {"muA", [](CheckInputs& in) -> CheckAnswer { return ammonia_oxidisers_growth_d(growth_in_row(in), in.number("TAN")); }},
      {"tan_steady_state_min", [](CheckInputs& in) -> CheckAnswer { return or_nan(tan_at_balance_mg_l(growth_in_row(in))); }},
      {"cycle_sim_TAN", [](CheckInputs& in) -> CheckAnswer { return day_end_in(in).tan_mg_l; }},
      {"cycle_sim_NO2N", [](CheckInputs& in) -> CheckAnswer { return day_end_in(in).nitrite_n_mg_l; }},
      {"cycle_sim_NO3N", [](CheckInputs& in) -> CheckAnswer { return day_end_in(in).nitrate_n_mg_l; }},
      {"cycle_sim_KH", [](CheckInputs& in) -> CheckAnswer { return day_end_in(in).kh_dkh; }},
      {"cycle_sim_peak_TAN", [](CheckInputs& in) -> CheckAnswer { return run_in(in).highest_tan_mg_l; }},
      {"cycle_sim_peak_NO2N", [](CheckInputs& in) -> CheckAnswer { return run_in(in).highest_nitrite_n_mg_l; }},
      {"cycle_sim_ready_day",
       [](CheckInputs& in) -> CheckAnswer {
         const std::optional<int> day = run_in(in).ready_day;
         return day ? static_cast<double>(*day) : NAN;
       }},
      {"areal_rate", [](CheckInputs& in) -> CheckAnswer { return film_uptake_mg_m2_d(in.number("S_mgL")); }},
      {"media_area_required",
       [](CheckInputs& in) -> CheckAnswer {
         return or_nan(film_needed_m2(in.number("P_mgNd"), in.number("S_mgL"), in.number_or("eta", 1)));
       }},
      {"sphere_bed_specific_area",
       [](CheckInputs& in) -> CheckAnswer { return or_nan(round_grains_m2_m3(in.number("d_mm"), in.number("porosity"))); }},
      {"chloride_to_nitrite_mass_ratio_from_molar",
       [](CheckInputs& in) -> CheckAnswer { return chloride_for_nitrite_mg_l(1, in.number("molar")); }},
      // What evaporates leaves its salts: the water that replaces it brings them as a daily rise.
      {"hardness_creep_peak_topoff",
       [](CheckInputs& in) -> CheckAnswer {
         return or_nan(settled_peak({.rise_per_day = in.number("evap_frac_per_d") * in.number("c_topoff"),
                                     .every_days = in.number("T_d"),
                                     .fraction = in.number("f"),
                                     .source = in.number("c_r")}));
       }},
      {"hardness_peak_no_topoff",
       [](CheckInputs& in) -> CheckAnswer {
         const double source = in.number("c_r");  // eps is lost over the whole interval
         return or_nan(settled_peak(
             {.rise_per_day = in.number("eps") * source, .every_days = 1, .fraction = in.number("f"), .source = source}));
       }},
      {"wc_peak_steady", [](CheckInputs& in) -> CheckAnswer { return or_nan(settled_peak(changes_in(in))); }},
      {"wc_trough_steady", [](CheckInputs& in) -> CheckAnswer { return or_nan(settled_trough(changes_in(in))); }},
      {"wc_peak_before_change_n",
       [](CheckInputs& in) -> CheckAnswer {
         return or_nan(peak_before_change(changes_in(in), in.number("c0"), static_cast<int>(in.number("n"))));
       }},
      {"wc_changes_to_within_5pct",
       [](CheckInputs& in) -> CheckAnswer {
         const std::optional<int> n = changes_to_settle(in.number("f"));
         return n ? static_cast<double>(*n) : NAN;
       }},
      {"wc_fraction_for_peak",
       [](CheckInputs& in) -> CheckAnswer { return or_nan(fraction_for_peak(changes_in(in), in.number("L"))); }},
      {"wc_interval_for_peak",
       [](CheckInputs& in) -> CheckAnswer { return or_nan(interval_for_peak(changes_in(in), in.number("L"))); }},
      {"wc_several_unequal", several},
      {"wc_peak_with_first_order_loss",
       [](CheckInputs& in) -> CheckAnswer { return or_nan(settled_peak_with_loss(changes_in(in), in.number("k"))); }},
      {"water_density", [](CheckInputs& in) -> CheckAnswer { return water_density_kg_m3(in.number("T_C")); }},
      {"water_mass",
       [](CheckInputs& in) -> CheckAnswer { return in.number("V_L") / 1000 * water_density_kg_m3(in.number("T_C")); }},
  };
  return table;
}

}  // namespace shoalwright
