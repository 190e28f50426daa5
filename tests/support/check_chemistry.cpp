// SPDX-License-Identifier: MIT
// Which function of the core answers which quantity of the table of water chemistry.
#include <cmath>

#include "support/check_table.h"
#include "tank/mass.h"
#include "units/convert.h"
#include "water/change.h"
#include "water/nitrogen.h"

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
      {"kh_after_nitrification",
       [](CheckInputs& in) -> CheckAnswer {
         return in.number("KH_start") - kh_drop_dkh(n_from_no3(in.number("NO3_produced_mgL")), in.number("eq_per_molN"));
       }},
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
