// SPDX-License-Identifier: MIT
#include "support/own_tank.h"

#include <algorithm>
#include <cmath>

#include "catalog/piece_kind.h"
#include "plan/defaults.h"
#include "stocking/body.h"
#include "stocking/load.h"
#include "tank/heat.h"
#include "tank/volume.h"

namespace shoalwright {

namespace {

double middle(const Need& need, double unknown) {
  const std::optional<Range>& best = need.ideal ? need.ideal : need.tolerated;
  return best ? (best->low + best->high) / 2 : unknown;
}

/// Length, width and height from the least of the card. Half as wide as long, wide enough to turn, high enough for fins; what the
/// litres of the card, times the group over the least group, still want is given in all directions.
Tank vessel(const Species& species, int count) {
  const double adult_cm = species.size.adult_tl_cm;
  Tank tank;
  tank.length_cm = species.needs.least_length_cm.value_or(std::max(10 * adult_cm, 30.0));
  tank.width_cm = std::max(tank.length_cm / 2, species.size.body == Body::eel ? adult_cm : 2 * adult_cm);
  tank.height_cm = std::max({tank.length_cm / 2.5, 2 * species.size.height_with_fins_cm.value_or(0) + 10, 28.0});
  const double groups = std::max(1.0, static_cast<double>(count) / std::max(species.life.group.least, 1));
  const double wanted_l = species.needs.least_volume_l.value_or(0) * groups;
  const double has_l = tank.length_cm * tank.width_cm * tank.height_cm / 1000;
  if (has_l < wanted_l) {
    const double more = std::cbrt(wanted_l / has_l);
    tank.length_cm *= more;
    tank.width_cm *= more;
    tank.height_cm *= more;
  }
  tank.glass_mm = default_glass_mm(tank.height_cm);
  tank.fill_cm = default_fill_cm(tank.height_cm);
  tank.lid = true;
  return tank;
}

SubstrateKind floor_of(const Species& species) {
  if (species.needs.substrate == "sand" || species.needs.substrate == "fine") return SubstrateKind::fine_sand;
  return SubstrateKind::smooth_gravel;
}

void add_pieces(Plan& plan, const char* kind, int count, double larger = 1) {
  const PieceKind& usual = piece_kind(kind);
  Piece piece;
  piece.kind = kind;
  piece.length_cm = larger * static_cast<double>(usual.length_cm);
  piece.depth_cm = larger * static_cast<double>(usual.depth_cm);
  piece.height_cm = std::min(larger * static_cast<double>(usual.height_cm), plan.tank.fill_cm / 2);
  plan.pieces.insert(plan.pieces.end(), static_cast<std::size_t>(count), piece);
}

/// Volumes that the filter turns over in an hour.
double turnovers(const Species& species) {
  if (species.life.current == "still") return 4;
  return species.life.current == "strong" ? 9 : 6;
}

}  // namespace

Plan own_tank(const Species& species, int count) {
  Plan plan;
  plan.tank = vessel(species, count);
  plan.place.temperature_c = 20;
  const Species::WaterNeeds& water = species.water;
  plan.source.temperature_c = middle(water.temperature_c, 24);
  plan.source.ph = middle(water.ph, 7);
  plan.source.gh_dgh = middle(water.gh_dgh, 8);
  plan.source.kh_dkh = middle(water.kh_dkh, 4);
  plan.source.nitrate_mg_l = 5;
  plan.source.disinfectant = Disinfectant::none;
  plan.water.emplace().temperature_c = plan.source.temperature_c;
  const double deep_cm = std::min(5.0, plan.tank.fill_cm * 0.1);
  plan.substrate = Substrate{.kind = floor_of(species), .front_cm = deep_cm, .back_cm = deep_cm, .other_keys = ""};

  const bool planted = species.mouth.eats_plants != "most";
  plan.planting = !planted ? Planting::none : species.life.cover == "much" ? Planting::medium : Planting::light;
  if (species.needs.wood) add_pieces(plan, "branch-low", 1);
  const int hides = std::max(species.needs.caves, species.life.active == "night" ? 1 : 0) * count;
  add_pieces(plan, "cave", std::min(hides, 24), std::clamp(species.size.adult_tl_cm / 13, 0.5, 2.0));

  Group group;
  group.species = species.id;
  group.count = group.have = count;
  plan.stock.push_back(group);
  plan.running_weeks = std::max(52, species.needs.mature_weeks);
  plan.feeding = Feeding{};
  plan.upkeep = Upkeep{.change_fraction = 0.5, .every_days = 7, .other_keys = ""};

  const Volume volume = volume_of(plan);
  Gear& gear = plan.gear.emplace();
  gear.filter_known = true;
  gear.filter = Filter{.kind = "external",
                       .flow_l_h = turnovers(species) * volume.net_l,
                       .media_l = std::max(0.5, 0.05 * volume.net_l),
                       .other_keys = ""};
  // Large fish breathe much for the surface of any tank: they get air stones too.
  gear.surface = species.size.adult_tl_cm < 40 ? SurfaceMotion::rippled : SurfaceMotion::vigorous;
  gear.heater_w = heat_of(plan, volume, plan.water->temperature_c).heater_needed_w.value_or(0);
  return plan;
}

}  // namespace shoalwright
