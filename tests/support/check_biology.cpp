// SPDX-License-Identifier: MIT
// Which function of the core answers which quantity of the table of biology and tank physics.
#include <cmath>
#include <cstdlib>

#include "stocking/arrivals.h"
#include "stocking/body.h"
#include "stocking/crowding.h"
#include "stocking/development.h"
#include "stocking/food.h"
#include "stocking/gas_transfer.h"
#include "stocking/grazers.h"
#include "stocking/ground.h"
#include "stocking/least_tank.h"
#include "stocking/limits.h"
#include "stocking/load.h"
#include "stocking/oxygen_use.h"
#include "stocking/plant_growth.h"
#include "stocking/ration.h"
#include "stocking/style.h"
#include "stocking/swallow.h"
#include "support/check_table.h"
#include "tank/detail/shape.h"
#include "tank/glass.h"
#include "tank/heat.h"
#include "tank/mass.h"
#include "tank/volume.h"
#include "units/convert.h"
#include "water/oxygen.h"

namespace shoalwright {

namespace {

Body body_in(CheckInputs& in, const std::string& name) {
  if (name == "eel") return Body::eel;
  if (name == "elongated") return Body::elongated;
  if (name == "fusiform") return Body::fusiform;
  if (name == "short_deep") return Body::short_deep;
  if (name != "unknown") in.refuse("no body shape is called " + name);
  return Body::unknown;
}

bool yes_in(CheckInputs& in, const std::string& key) {
  const std::string word = in.text_or(key, "False");
  if (word == "True" || word == "true" || word == "1") return true;
  if (word != "False" && word != "false" && word != "0") in.refuse("input " + key + " is neither True nor False");
  return false;
}

/// Not a number stands for "no answer", which no tolerance takes.
CheckAnswer answer(const std::optional<double>& value) { return value.value_or(NAN); }

Style style_in(CheckInputs& in, const std::string& name) {
  static const std::map<std::string, Style> styles{{"darting_surface", Style::darting_surface},
                                                   {"surface_hover", Style::surface_hover},
                                                   {"calm_mid", Style::calm_mid},
                                                   {"active_mid", Style::active_mid},
                                                   {"small_livebearer", Style::small_livebearer},
                                                   {"bottom_shoal", Style::bottom_shoal},
                                                   {"territorial_bottom", Style::territorial_bottom},
                                                   {"centrepiece", Style::centrepiece},
                                                   {"grazer", Style::grazer},
                                                   {"invertebrate", Style::invertebrate}};
  const auto found = styles.find(name);
  if (found != styles.end()) return found->second;
  in.refuse("no life style is called " + name);
  return Style::calm_mid;
}

Demand demand(double count, double length_cm, Style style) {
  return {.count = count,
          .personal_l = personal_volume_l(style_facts(style).room_bl3, Body::unknown, length_cm),
          .depth = style_facts(style).depth};
}

/// "8x4.5 calm_mid + 1x7 centrepiece"
std::vector<Demand> demands_in(CheckInputs& in) {
  std::vector<Demand> stock;
  for (const std::string& part : split_text(in.text("plan"), "+")) {
    const std::size_t times = part.find('x'), blank = part.find(' ');
    if (times == std::string::npos || blank == std::string::npos || blank < times) {
      in.refuse("group \"" + part + "\" is not COUNTxLENGTH style");
      return stock;
    }
    const auto count = parse_number(part.substr(0, times)), length = parse_number(part.substr(times + 1, blank - times - 1));
    if (!count || !length) in.refuse("group \"" + part + "\" has no number");
    stock.push_back(demand(count.value_or(0), length.value_or(0), style_in(in, split_text(part, " ").back())));
  }
  return stock;
}

template <int layer>
CheckAnswer mixed_layer(CheckInputs& in) {
  const std::array<double, 3> water{in.number("V_surface"), in.number("V_mid"), in.number("V_bottom")};
  return layer_crowding(demands_in(in), {water, {}})[layer].value_or(NAN);
}

CheckAnswer busiest_layer(CheckInputs& in) {
  const double third = in.number("V_open_L") / 3;
  double worst = NAN;
  for (const auto& c :
       layer_crowding({demand(in.number("n"), in.number("L_cm"), style_in(in, in.text("style")))}, {{third, third, third}, {}}))
    worst = std::fmax(worst, c.value_or(NAN));
  return worst;
}

CheckAnswer floor_crowding(CheckInputs& in) {
  const Style style = style_in(in, in.text("style"));
  return in.number("n") * floor_need_cm2(style, Body::unknown, in.number("L_cm")) / in.number("A_cm2");
}

/// Area inside a tank that is given by its outside measures, any height.
double inner_area(Tank outside, double pane_cm) {
  outside.glass_mm = 10 * pane_cm;
  outside.height_cm = 50;
  return inside_area_cm2(inside_of(outside));
}

template <Shape shape>
CheckAnswer round_area(CheckInputs& in) {
  Tank tank;
  tank.shape = shape;
  tank.diameter_cm = 2 * in.number("r_cm");
  return inner_area(tank, in.number("t_cm"));
}

CheckAnswer bow_area(CheckInputs& in) {
  Tank tank;
  tank.shape = Shape::bow_front;
  tank.length_cm = in.number("L_cm");
  tank.width_cm = in.number("W_cm");
  tank.bow_cm = in.number("s_cm");
  return inner_area(tank, in.number("t_cm"));
}

CheckAnswer bow_radius(CheckInputs& in) {
  Tank tank;
  tank.shape = Shape::bow_front;
  tank.length_cm = in.number("chord_cm");
  tank.width_cm = 1;
  tank.bow_cm = in.number("s_cm");
  const std::vector<Slice> slices = bow_front_slices(tank);
  return slices.empty() ? NAN : slices[0].radius;
}

CheckAnswer hexagon_area(CheckInputs& in) {
  Tank tank;
  tank.shape = Shape::hexagon;
  tank.side_cm = in.number("a_cm");
  return inner_area(tank, in.number("t_cm"));
}

CheckAnswer corner_area(CheckInputs& in) {
  Tank tank;
  tank.shape = Shape::pentagon_corner;
  tank.side_cm = in.number("b_cm");
  tank.front_cm = in.number("e_cm");
  return inner_area(tank, in.number("t_cm"));
}

CheckAnswer prism_area(CheckInputs& in) {
  Tank tank;
  tank.shape = Shape::prism;
  for (const std::string& text : split_text(in.text("points_cm"), "|")) {
    const std::vector<std::string> pair = split_text(text, ",");
    const auto x = parse_number(pair.front()), z = parse_number(pair.back());
    if (pair.size() != 2 || !x || !z) in.refuse("point \"" + text + "\" is not x,y");
    tank.outline_cm.push_back({x.value_or(0), z.value_or(0)});
  }
  return inner_area(tank, in.number("t_cm"));
}

Tank box(double length_cm, double width_cm, double height_cm) {
  Tank tank;
  tank.length_cm = length_cm;
  tank.width_cm = width_cm;
  tank.height_cm = height_cm;
  return tank;
}

CheckAnswer box_gross(CheckInputs& in) {
  Plan plan;
  plan.tank = box(in.number("L_cm"), in.number("W_cm"), in.number("H_cm"));
  return volume_of(plan).gross_l;
}

CheckAnswer slope_volume(CheckInputs& in) {
  Plan plan;
  plan.substrate = {
      .kind = SubstrateKind::fine_sand, .front_cm = in.number("d_front_cm"), .back_cm = in.number("d_back_cm"), .other_keys = ""};
  plan.tank = box(in.number("L_cm"), in.number("W_cm"), 1 + std::fmax(plan.substrate.front_cm, plan.substrate.back_cm));
  return volume_of(plan).substrate_l;
}

CheckAnswer box_glass(CheckInputs& in) {
  Tank tank = box(in.number("L_cm"), in.number("W_cm"), in.number("H_cm"));
  tank.glass_mm = 10 * in.number("t_cm");
  return glass_mass_kg(tank);
}

double pressure_atm(CheckInputs& in) { return in.number_or("P_atm", 1); }

CheckAnswer saturation(CheckInputs& in) { return oxygen_saturation_mg_l(in.number("T_C"), pressure_atm(in)); }

double schmidt_power(CheckInputs& in) { return in.number_or("n", moving_surface_power); }

double supply_l_h(CheckInputs& in) {
  return oxygen_supply_l_h(oxygen_transfer_cm_h(in.number("k600"), in.number("T_C"), schmidt_power(in)), in.number("A_cm2"));
}

CheckAnswer settled_oxygen(CheckInputs& in) {
  return answer(
      settled_oxygen_mg_l(oxygen_saturation_mg_l(in.number("T_C"), pressure_atm(in)), supply_l_h(in), in.number("D_mg_h")));
}

CheckAnswer largest_oxygen_use(CheckInputs& in) {
  return largest_oxygen_use_mg_h(oxygen_saturation_mg_l(in.number("T_C"), pressure_atm(in)), supply_l_h(in), in.number("target"));
}

CheckAnswer resting_per_kg(CheckInputs& in) {
  const double mass_g = in.number("M_g");
  return resting_oxygen_mg_h(mass_g, in.number("T_C")) / mass_g * 1000;
}

CheckAnswer resting_growth(CheckInputs& in) {
  const double mass_g = in.number_or("M_g", 50), low_c = in.number("T1_C"), high_c = in.number("T2_C");
  return growth_over_10_c(resting_oxygen_mg_h(mass_g, low_c), low_c, resting_oxygen_mg_h(mass_g, high_c), high_c);
}

CheckAnswer tank_oxygen_use(CheckInputs& in) {
  const double count = in.number("n"), mass_g = body_mass_g(body_in(in, in.text_or("shape", "fusiform")), in.number("TL_cm"));
  const double resting_mg_h = count * resting_oxygen_mg_h(mass_g, in.number("T_C"));
  // The ration is that of the day: the temperature is in it.
  const double feed_g_d = count * mass_g * in.number("ration_pct") / 100;
  return oxygen_use(resting_mg_h, in.number_or("f_act", use_asleep), feed_g_d, in.number_or("protein", dry_food_protein_share))
      .total_mg_h();
}

CheckAnswer dry_ration(CheckInputs& in) {
  const double mass_g = in.number("M_g");
  return daily_feed_g(in.number("n"), mass_g, in.number_or("r25_pct", adult_ration_pct(mass_g)), in.number_or("T_C", 25));
}

CheckAnswer evaporation(CheckInputs& in) {
  return evaporation_kg_d({.area_m2 = in.number("A_m2"),
                           .water_c = in.number("Tw"),
                           .air_c = in.number("Ta"),
                           .humidity = in.number_or("RH", usual_humidity),
                           .share = in.number_or("Fa", evaporates_ruffled),
                           .air_m_s = in.number_or("V", room_air_m_s)});
}

CheckAnswer still_evaporation(CheckInputs& in) {
  return still_evaporation_kg_m2_h(in.number("Tw"), in.number("Ta"), in.number_or("RH", usual_humidity));
}

HeatLoss heat_loss(CheckInputs& in) {
  const double length_m = in.number("Lc"), width_m = in.number("Wc");
  const bool lid = yes_in(in, "lid");
  return heat_loss_of({.around_m = 2 * (length_m + width_m),
                       .base_m2 = length_m * width_m,
                       .wetted_m = in.number("Hw"),
                       .glass_m = in.number("t"),
                       .lid = lid,
                       .water_c = in.number("tw"),
                       .air_c = in.number("ta"),
                       .humidity = in.number_or("rh", usual_humidity),
                       .evaporates = in.number_or("fa", lid ? evaporates_under_glass : evaporates_still)});
}

CheckAnswer grazing(CheckInputs& in) {
  const double wanted_cm2 = grazed_cm2(in.number("n"), in.number_or("a", grazed_bl2(Style::grazer)), in.number("L_cm"));
  return answer(grazing_index(wanted_cm2, in.number_or("age_factor", 1), in.number("area_cm2")));
}

CheckAnswer swallowing(CheckInputs& in) {
  return swallow_index(in.number("Lp_cm"), {.gape_share = in.number("g"), .reach_share = in.number("lam")}, in.number("Ly_cm"),
                       in.number("delta"));
}

}  // namespace

const std::map<std::string, CheckFunction, std::less<>>& check_biology() {
  static const std::map<std::string, CheckFunction, std::less<>> table{
      {"body mass from total length",
       [](CheckInputs& in) -> CheckAnswer { return body_mass_g(body_in(in, in.text("shape")), in.number("TL_cm")); }},
      {"body mass lower 95% bound",
       [](CheckInputs& in) -> CheckAnswer { return body_mass_band_g(body_in(in, in.text("shape")), in.number("TL_cm")).low; }},
      {"body mass upper 95% bound",
       [](CheckInputs& in) -> CheckAnswer { return body_mass_band_g(body_in(in, in.text("shape")), in.number("TL_cm")).high; }},
      {"prior geometric mean a", [](CheckInputs& in) -> CheckAnswer { return body_mass_g(body_in(in, in.text("shape")), 1); }},
      {"body mass species a,b",
       [](CheckInputs& in) -> CheckAnswer { return body_mass_g(in.number("a"), in.number("b"), in.number("TL_cm")); }},
      {"body mass species a,b in mm SL",
       [](CheckInputs& in) -> CheckAnswer {
         const double b = in.number("b");
         return body_mass_g(a_for_cm(in.number("a"), b), b, in.number("SL_mm") / 10);
       }},
      {"total length from standard length",
       [](CheckInputs& in) -> CheckAnswer { return total_length_cm(body_in(in, in.text("shape")), in.number("SL_cm")); }},
      {"adult ration at 25 C", [](CheckInputs& in) -> CheckAnswer { return adult_ration_pct(in.number("M_g")); }},
      {"daily dry ration", dry_ration},
      {"personal volume",
       [](CheckInputs& in) -> CheckAnswer {
         return personal_volume_l(in.number("v0"), body_in(in, in.text_or("shape", "unknown")), in.number("L_cm"));
       }},
      {"crowding of the busiest layer, three equal layers", busiest_layer},
      {"crowding of surface layer, mixed tank", mixed_layer<0>},
      {"crowding of mid layer, mixed tank", mixed_layer<1>},
      {"crowding of bottom layer, mixed tank", mixed_layer<2>},
      {"floor crowding", floor_crowding},
      {"clear run in body lengths",
       [](CheckInputs& in) -> CheckAnswer { return run_in_lengths(in.number("run_cm"), in.number("L_cm")); }},
      {"crowding class", [](CheckInputs& in) -> CheckAnswer { return std::string(crowding_word(in.number("c"))); }},
      {"load index w", [](CheckInputs& in) -> CheckAnswer { return load_index(in.number("p_mgLd")); }},
      {"rectangular tank gross volume", box_gross},
      {"cylinder inner base area", round_area<Shape::cylinder>},
      {"half-cylinder inner base area", round_area<Shape::half_cylinder>},
      {"quarter-cylinder inner base area", round_area<Shape::quarter_cylinder>},
      {"bow-front inner base area", bow_area},
      {"bow radius", bow_radius},
      {"regular hexagon inner base area", hexagon_area},
      {"pentagonal corner inner base area", corner_area},
      {"arbitrary convex prism inner base area", prism_area},
      {"sloped substrate volume", slope_volume},
      {"net water volume",
       [](CheckInputs& in) -> CheckAnswer {
         return net_water_l(in.number("A_cm2"), in.number("hw_cm"), in.number("Vsub_L"), in.number("phi"),
                            in.number("Vrock_L") + in.number("Vwood_L"));
       }},
      {"dry substrate mass",
       [](CheckInputs& in) -> CheckAnswer {
         return substrate_mass_kg(in.number("Vsub_L"), in.number("phi"), in.number("rho_grain"));
       }},
      {"density of saturated substrate",
       [](CheckInputs& in) -> CheckAnswer {
         constexpr double l_per_m3 = 1000;
         const double porosity = in.number("n");
         return substrate_mass_kg(l_per_m3, porosity, in.number("rho_p")) + porosity * in.number("rho_f");
       }},
      {"glass mass of open rectangular tank", box_glass},
      {"footprint pressure",
       [](CheckInputs& in) -> CheckAnswer { return footprint_pressure_kpa(in.number("m_kg"), in.number("A_m2") * 1e4); }},
      {"psf in kPa", [](CheckInputs& in) -> CheckAnswer { return kpa_from_psf(in.number("psf")); }},
      {"resting O2 use per fish",
       [](CheckInputs& in) -> CheckAnswer { return resting_oxygen_mg_h(in.number("M_g"), in.number("T_C")); }},
      {"resting O2 use per mass", resting_per_kg},
      {"resting O2 of a 50 g teleost ratio 30 C to 0 C",
       [](CheckInputs& in) -> CheckAnswer {
         const double mass_g = in.number_or("M_g", 50);
         return over_resting(resting_oxygen_mg_h(mass_g, 30), resting_oxygen_mg_h(mass_g, 0));
       }},
      {"mean Q10 of resting rate between species", resting_growth},
      {"zebrafish routine to standard ratio, groups",
       [](CheckInputs& in) -> CheckAnswer { return over_resting(in.number("routine"), in.number("standard")); }},
      {"oxygen at saturation", saturation},
      {"oxygen at saturation, standard table", saturation},
      {"Schmidt number O2 in fresh water", [](CheckInputs& in) -> CheckAnswer { return oxygen_schmidt(in.number("T_C")); }},
      {"O2 transfer velocity",
       [](CheckInputs& in) -> CheckAnswer {
         return oxygen_transfer_cm_h(in.number("k600"), in.number("T_C"), schmidt_power(in));
       }},
      {"k600 from wind", [](CheckInputs& in) -> CheckAnswer { return k600_from_wind_cm_h(in.number("U10_m_s")); }},
      {"k600 from filter flow",
       [](CheckInputs& in) -> CheckAnswer { return k600_from_flow_cm_h(in.number("Q_L_h"), in.number("A_cm2")); }},
      {"O'Connor-Dobbins film coefficient",
       [](CheckInputs& in) -> CheckAnswer { return river_transfer_cm_h(in.number("U_m_s"), in.number("H_m")); }},
      {"steady-state oxygen", settled_oxygen},
      {"largest O2 demand that keeps a target", largest_oxygen_use},
      {"fish O2 per gram feed",
       [](CheckInputs& in) -> CheckAnswer {
         return oxygen_for_feed_g_g(in.number_or("GE_kJ_g", 19), in.number_or("met_frac", 0.70), in.number_or("growth_frac", 0));
       }},
      {"nitrification O2 demand", [](CheckInputs& in) -> CheckAnswer { return nitrification_oxygen_mg_h(in.number("N_mg_d")); }},
      {"tank oxygen demand, fusiform fish", tank_oxygen_use},
      {"frozen food equal to a dry ration",
       [](CheckInputs& in) -> CheckAnswer {
         return frozen_for_dry_g(in.number("dry_g"), in.number_or("dm_dry", dry_food_dry_matter),
                                 in.number_or("dm_frozen", frozen_food_dry_matter));
       }},
      {"recommended pellet diameter",
       [](CheckInputs& in) -> CheckAnswer { return pellet_mm(gape_mm(in.number("g"), in.number("L_cm"))); }},
      {"territory diameter",
       [](CheckInputs& in) -> CheckAnswer {
         const double usual_bl2 = style_facts(Style::territorial_bottom).floor_bl2;
         return ground_across_cm(in.number_or("a_BL2", usual_bl2), in.number("L_cm"));
       }},
      {"swallow index", swallowing},
      {"grazing demand over area", grazing},
      {"saturation vapour pressure", [](CheckInputs& in) -> CheckAnswer { return vapour_pressure_kpa(in.number("T_C")); }},
      {"latent heat of vaporisation", [](CheckInputs& in) -> CheckAnswer { return vaporisation_kj_kg(in.number("T_C")); }},
      {"evaporation", evaporation},
      {"unoccupied pool evaporation", still_evaporation},
      {"still-water evaporation by natural convection", still_evaporation},
      {"U-value of a wall",
       [](CheckInputs& in) -> CheckAnswer {
         return wall_loss_w_m2_k(in.number("t_m"), in.number_or("k", glass_w_m_k), in.number_or("Ro", air_beside_m2_k_w),
                                 in.number_or("extra", 0));
       }},
      {"heat loss, wall", [](CheckInputs& in) -> CheckAnswer { return heat_loss(in).wall_w; }},
      {"heat loss, bottom", [](CheckInputs& in) -> CheckAnswer { return heat_loss(in).bottom_w; }},
      {"heat loss, top", [](CheckInputs& in) -> CheckAnswer { return heat_loss(in).top_w; }},
      {"heat loss, evap", [](CheckInputs& in) -> CheckAnswer { return heat_loss(in).evaporation_w; }},
      {"heat loss, total", [](CheckInputs& in) -> CheckAnswer { return heat_loss(in).total_w(); }},
      {"heater size before rounding up",
       [](CheckInputs& in) -> CheckAnswer { return heater_power_w(in.number("Q_loss_W"), in.number_or("Q_equip_W", 0)); }},
      {"cooling time constant",
       [](CheckInputs& in) -> CheckAnswer { return answer(cooling_hours(in.number("m_water_kg"), in.number("K_W_K"))); }},
      {"development time by Kimmel rule",
       [](CheckInputs& in) -> CheckAnswer { return answer(zebrafish_development_h(in.number("h_28_5"), in.number("T_C"))); }},
      {"hatch time by threshold rule",
       [](CheckInputs& in) -> CheckAnswer {
         return answer(
             development_h(in.number("t_ref_h"), in.number("T_ref"), in.number("T_C"), in.number_or("T0", unknown_threshold_c)));
       }},
      {"best first-food width", [](CheckInputs& in) -> CheckAnswer { return first_food_um(in.number("mouth_um")); }},
      {"plant nitrogen uptake",
       [](CheckInputs& in) -> CheckAnswer {
         return plant_nitrogen_mg_d(in.number("dw_g"), in.number("rgr_d"), in.number_or("N_mg_g", plant_nitrogen_mg_g));
       }},
      {"doubling time", [](CheckInputs& in) -> CheckAnswer { return answer(doubling_days(in.number("rgr_d"))); }},
      {"feed allowed at arrival stage",
       [](CheckInputs& in) -> CheckAnswer {
         return arrival_feed_g_d(in.number("F_total"), static_cast<int>(in.number("stage")));
       }},
  };
  return table;
}

}  // namespace shoalwright
