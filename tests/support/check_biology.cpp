// SPDX-License-Identifier: MIT
// Which function of the core answers which quantity of the table of biology and tank physics.
#include <cmath>
#include <cstdlib>

#include "stocking/body.h"
#include "stocking/crowding.h"
#include "stocking/least_tank.h"
#include "stocking/load.h"
#include "stocking/ration.h"
#include "stocking/style.h"
#include "support/check_table.h"
#include "tank/detail/shape.h"
#include "tank/glass.h"
#include "tank/mass.h"
#include "tank/volume.h"
#include "units/convert.h"

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
      {"daily dry ration",
       [](CheckInputs& in) -> CheckAnswer {
         return daily_feed_g(in.number("n"), in.number("M_g"), in.number("r25_pct"), in.number("T_C"));
       }},
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
  };
  return table;
}

}  // namespace shoalwright
