// SPDX-License-Identifier: MIT
// crowding-top, crowding-mid, crowding-bottom: room and floor wanted by the whole stock over what is there.
#include <algorithm>
#include <cmath>

#include "notebook/say.h"
#include "rules/edits.h"
#include "rules/floor_told.h"
#include "rules/lane_move.h"
#include "rules/limits.h"
#include "rules/shares.h"
#include "rules/table.h"
#include "rules/tell.h"
#include "stocking/limits.h"
#include "stocking/spill.h"
#include "units/power.h"

namespace shoalwright {

namespace {

constexpr const char* layer_rules[] = {"crowding-top", "crowding-mid", "crowding-bottom"};
constexpr const char* layer_names[] = {"Surface", "Middle", "Bottom"};

Severity not_on_a_guess(const Plan& plan, Severity severity) {
  return unless_assumed(plan, unless_tank_assumed(plan, severity),
                        {"/tank/fill_cm", "/substrate/kind", "/substrate/front_cm", "/substrate/back_cm", "/planting"});
}

/// Part of a crowding that holds whatever shape kinds of unknown shape have: an eel shape wants the least room for its length.
double certain_part(const std::vector<Part>& parts) {
  double all = 0, certain = 0;
  for (const Part& part : parts) {
    all += part.amount;
    certain += part.amount * (part.kept->species->size.body == Body::unknown ? raised(eel_length_share, room_length_power) : 1);
  }
  return all > 0 ? certain / all : 1;
}

/// A shape that nobody gave makes no strain: what would be one is a watch, unless it is one for every shape.
/// `parts` is asked only then, since a search over counts grades often.
template <class Parts>
std::optional<Severity> grade_of(double share, const Steps& steps, Parts parts) {
  const std::optional<Severity> severity = grade(rounded(share), steps);
  if (!severity || *severity >= Severity::watch) return severity;
  const std::optional<Severity> certain = grade(rounded(share * certain_part(parts())), steps);
  return certain && *certain < Severity::watch ? certain : Severity::watch;
}

/// What becomes of those for whom a level is full.
std::string spilling(const Facts& facts, std::size_t layer) {
  std::vector<Demand> demands;
  for (const Kept& kept : facts.stock) demands.push_back(demand_of(kept, facts.bodies));
  const std::vector<Spilled> after = spilled(demands, layer_water(facts.room));
  double moved = 0;
  for (std::size_t g = 0; g < demands.size(); ++g)
    moved += std::max(0.0, demands[g].count * demands[g].depth[layer] - after[g].count[layer]);
  const int whole = static_cast<int>(moved + 1e-9);
  return whole > 0 ? " At other levels " + std::to_string(whole) + " of them find room." : " No other level has room for them.";
}

/// The solid piece that takes most of a level, where that is a tenth of its water or more.
std::string in_the_way(const Facts& facts, std::size_t layer) {
  const Scape& scape = facts.bodies.scape();
  const WaterLevel& level = facts.bodies.levels()[layer];
  std::vector<double> taken_l(scape.pieces.size(), 0);
  const TankGrid& grid = scape.grid;
  const double cell_l = grid.cell_cm * grid.cell_cm * grid.cell_cm / 1000;
  for (std::size_t cell = 0; cell < scape.solid.size(); ++cell) {
    if (!scape.solid[cell] || grid.taken[cell]) continue;
    const double y_cm =
        grid.y_cm(static_cast<double>(cell / (static_cast<std::size_t>(grid.size.x) * static_cast<std::size_t>(grid.size.z))));
    if (y_cm >= level.low_cm && y_cm < level.high_cm) taken_l[scape.solid[cell] - 1u] += cell_l;
  }
  const auto most = std::max_element(taken_l.begin(), taken_l.end());
  if (most == taken_l.end() || *most < 0.1 * facts.room.layers[layer].water_l) return "";
  return " " + capital(piece_words(facts.plan, static_cast<std::size_t>(most - taken_l.begin()))) + " takes " +
         amount(*most, *most < 20 ? 1 : 0, "L") + " of it.";
}

void tell_layer(const Facts& facts, std::size_t layer, Severity severity, Finding& finding) {
  const Layer& room = facts.room.layers[layer];
  const std::vector<Part> parts = layer_parts(facts, layer);
  const std::vector<const Kept*> named = main_parts(parts);
  concern(finding, named);
  const double wanted_l = *room.crowding * room.open_l;
  if (severity == Severity::note)
    finding.text = std::string(layer_names[layer]) + " level is full";
  else
    finding.text =
        std::string(layer_names[layer]) + " level over by " + amount(wanted_l - room.open_l, wanted_l < 20 ? 1 : 0, "L");
  finding.why = "Grown up, the stock wants " + amount(wanted_l, wanted_l < 20 ? 1 : 0, "L") + " there and " +
                amount(room.open_l, room.open_l < 20 ? 1 : 0, "L") + " are open; most of it is wanted by " + names_of(named) +
                ".";
  if (severity == Severity::note) {
    finding.remedy = "Add nothing more at this level";
    return;
  }
  finding.why += in_the_way(facts, layer) + spilling(facts, layer);
  remedy_by_fewer(facts, parts, goal_of(in_view(limits::crowding, facts.plan.strictness)) / *room.crowding, in_proportion,
                  finding);
}

}  // namespace

void crowding(const Facts& facts, Found& out) {
  const Plan& plan = facts.plan;
  if (!facts.stock.empty() && !(facts.room.open_l > 0)) {
    out.add("crowding-mid", not_on_a_guess(plan, Severity::harm), "", 0, [](Finding& finding) {
      finding.text = "No open water over the substrate";
      finding.why = "At this filling and depth of substrate nothing is left to swim in.";
      finding.remedy = "Fill higher, or lower the substrate";
    });
    return;
  }
  const Steps& steps = in_view(limits::crowding, plan.strictness);
  std::optional<Severity> of_floor;
  if (facts.room.floor_crowding && !parts_of(facts, Holders::no).empty()) {
    of_floor = grade_of(*facts.room.floor_crowding, steps, [&] { return floor_parts(facts); });
    if (of_floor) of_floor = unless_floor_assumed(plan, *of_floor);
  }
  for (std::size_t layer = 0; layer < 3; ++layer) {
    const std::optional<double>& share = facts.room.layers[layer].crowding;
    std::optional<Severity> severity = share ? grade_of(*share, steps, [&] { return layer_parts(facts, layer); }) : std::nullopt;
    if (severity) severity = not_on_a_guess(plan, *severity);
    const bool bottom = layer == 2;
    if (bottom && of_floor &&
        (!severity || *of_floor < *severity || (*of_floor == *severity && *facts.room.floor_crowding > *share)))
      out.add(layer_rules[layer], *of_floor, "", *facts.room.floor_crowding,
              [&](Finding& finding) { tell_floor(facts, Holders::no, *of_floor, finding); });
    else if (severity)
      out.add(layer_rules[layer], *severity, "", *share, [&](Finding& finding) { tell_layer(facts, layer, *severity, finding); });
  }
}

}  // namespace shoalwright
