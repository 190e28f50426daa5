// SPDX-License-Identifier: MIT
#include "assess/tightest.h"

#include <algorithm>
#include <cmath>

#include "rules/limits.h"
#include "rules/shares.h"
#include "stocking/gas_transfer.h"
#include "stocking/least_tank.h"
#include "stocking/style.h"
#include "units/order.h"

namespace shoalwright {

namespace {

struct Scaled {
  Tightest entry;
  double share = 0;  ///< value over scale, never shown
};

using Margins = std::vector<Scaled>;

// A scale of nothing still orders: all the same, worst by value.
constexpr double least_scale = 1e-6;

void add(Margins& margins, Tightest entry, double scale) {
  const double share = entry.value / std::max(scale, least_scale);
  margins.push_back({std::move(entry), share});
}

int whole_animals(double spare, double each) {
  constexpr double most = 1e6;
  return static_cast<int>(std::clamp(std::floor(spare / each + 1e-9), -most, most));
}

std::vector<std::string> ids(const std::vector<const Kept*>& groups) {
  std::vector<std::string> names;
  for (const Kept* kept : groups) names.push_back(kept->id);
  return names;
}

void add_water(Margins& margins, const Facts& facts, const char* name, const char* unit, const Window& window,
               Need Species::WaterNeeds::*need) {
  if (window.low_by.empty()) return;
  const auto range_of = [&](const std::string& id) -> const Range& {
    const auto kept = std::find_if(facts.stock.begin(), facts.stock.end(), [&](const Kept& one) { return one.id == id; });
    return *(kept->species->water.*need).tolerated;
  };
  Tightest entry{.margin = name, .value = 0, .unit = unit, .animals = {}, .set_by = {}};
  if (!window.tolerated) {
    const Range &low = range_of(window.low_by), &high = range_of(window.high_by);
    entry.value = high.high - low.low;
    entry.set_by = {window.low_by, window.high_by};
    add(margins, std::move(entry), low.high - low.low);
    return;
  }
  if (!window.margin || !window.now) return;
  const bool by_low = *window.now - window.tolerated->low <= window.tolerated->high - *window.now;
  entry.value = *window.margin;
  entry.set_by = {by_low ? window.low_by : window.high_by};
  add(margins, std::move(entry), window.tolerated->high - window.tolerated->low);
}

void add_lane(Margins& margins, const Facts& facts) {
  const Kept* worst = nullptr;
  double worst_share = 0, spare = 0, needed = 0;
  for (const GroupRoom& group : facts.room.groups) {
    if (!(group.lane_needed_cm > 0)) continue;
    const double share = (group.lane_cm - group.lane_needed_cm) / group.lane_needed_cm;
    if (worst && share >= worst_share) continue;
    worst = &*std::find_if(facts.stock.begin(), facts.stock.end(), [&](const Kept& one) { return one.id == group.species; });
    worst_share = share;
    spare = group.lane_cm - group.lane_needed_cm;
    needed = group.lane_needed_cm;
  }
  if (worst) add(margins, {.margin = "lane_cm", .value = spare, .unit = "cm", .animals = {}, .set_by = {worst->id}}, needed);
}

// By the layers' own sums, as the findings are: fish spread over their level, so that what is spare there is spare at each of its
// depths.
void add_crowding(Margins& margins, const Facts& facts) {
  const std::optional<TightestLayer> tightest = tightest_layer(facts);
  if (!tightest) return;
  const std::vector<Part> parts = layer_parts(facts, tightest->layer);
  const Part* limiting = nullptr;
  for (const Part& part : parts)
    if (!limiting || part.amount > limiting->amount) limiting = &part;
  const double share = *facts.room.layers[tightest->layer].crowding;
  add(margins,
      {.margin = "crowding_l_cm",
       .value = tightest->open_l_cm * (1 - share),
       .unit = "L/cm",
       .animals = whole_animals(1 - share, limiting->amount / limiting->kept->count),
       .set_by = ids(main_parts(parts))},
      tightest->open_l_cm);
}

void add_floor(Margins& margins, const Facts& facts) {
  if (!facts.room.floor_crowding) return;
  const std::vector<Part> parts = floor_parts(facts);
  const Part* limiting = nullptr;
  for (const Part& part : parts)
    if (part.amount > 0 && (!limiting || part.amount > limiting->amount)) limiting = &part;
  if (!limiting) return;
  const double spare = facts.room.floor_cm2 * (1 - *facts.room.floor_crowding);
  add(margins,
      {.margin = "floor_cm2",
       .value = spare,
       .unit = "cm²",
       .animals = whole_animals(spare, limiting->amount / limiting->kept->count),
       .set_by = ids(main_parts(parts))},
      facts.room.floor_cm2);
}

void add_nitrate(Margins& margins, const Facts& facts) {
  const std::optional<double> reached = nitrate_reached_mg_l(facts.plan, facts.load, facts.volume);
  if (!reached || facts.stock.empty()) return;
  const double limit = nitrate_limit_mg_l(facts.plan), spare = limit - *reached;
  const std::vector<Part> parts = feed_parts(facts);
  double fed = 0;
  for (const Part& part : parts) fed += part.amount;
  const Part* largest = nullptr;
  for (const Part& part : parts)
    if (!largest || part.kept->count > largest->kept->count) largest = &part;
  const double climb = *reached - *facts.plan.source.nitrate_mg_l;
  Tightest entry{.margin = "nitrate_mg_l", .value = spare, .unit = "mg/L", .animals = {}, .set_by = ids(main_parts(parts))};
  if (largest && fed > 0 && climb > 0) entry.animals = whole_animals(spare, climb * largest->amount / fed / largest->kept->count);
  add(margins, std::move(entry), limit);
}

// Before dawn, over what the stock wants at all times; in the dark what is spare is spare use.
void add_dawn(Margins& margins, const Facts& facts) {
  if (!facts.air.dawn_mg_l || !facts.air.limit_mg_l) return;
  const std::vector<Part> parts = breath_parts(facts, *facts.water.temperature_c.now);
  const Part* limiting = nullptr;
  for (const Part& part : parts)
    if (part.amount > 0 && (!limiting || part.amount > limiting->amount)) limiting = &part;
  const std::optional<double> spare = spare_breath_mg_h(facts);
  if (!limiting || !spare) return;
  add(margins,
      {.margin = "dawn_mg_l",
       .value = *facts.air.dawn_mg_l - *facts.air.limit_mg_l,
       .unit = "mg/L",
       .animals = whole_animals(*spare, limiting->amount / limiting->kept->count),
       .set_by = ids(main_parts(parts))},
      *facts.air.limit_mg_l);
}

// Un-ionised ammonia of what was measured, under the trade's limit.
void add_ammonia(Margins& margins, const Facts& facts) {
  if (!facts.load.ammonia_nh3_mg_l || facts.stock.empty()) return;
  const std::vector<const Kept*> eaters = main_parts(feed_parts(facts));
  if (eaters.empty()) return;
  add(margins,
      {.margin = "ammonia_nh3_mg_l",
       .value = limits::ammonia_nh3_allowed_mg_l - *facts.load.ammonia_nh3_mg_l,
       .unit = "mg/L",
       .animals = {},
       .set_by = ids(eaters)},
      limits::ammonia_nh3_allowed_mg_l);
}

}  // namespace

std::optional<double> spare_breath_mg_h(const Facts& facts) {
  const Air& air = facts.air;
  const std::optional<double>& water_c = facts.water.temperature_c.now;
  if (!water_c || !air.saturation_mg_l || !air.limit_mg_l || !air.demand_mg_h) return std::nullopt;
  // Going through all pieces for leaves on the water is dear: what Air was reckoned from is had back from it.
  const std::optional<double> supply = air.dawn_mg_l && *air.dawn_mg_l > 0
                                           ? *air.demand_mg_h / (*air.saturation_mg_l - *air.dawn_mg_l)
                                           : oxygen_supply_l_h(facts.plan, facts.volume, *water_c);
  if (!supply) return std::nullopt;
  return largest_oxygen_use_mg_h(*air.saturation_mg_l, *supply, *air.limit_mg_l) - *air.demand_mg_h;
}

std::optional<TightestLayer> tightest_layer(const Facts& facts) {
  std::optional<TightestLayer> tightest;
  double most = 0;
  for (std::size_t i = 0; i < facts.room.layers.size(); ++i) {
    const Layer& layer = facts.room.layers[i];
    if (!layer.crowding || !(*layer.crowding > most) || !(layer.to_cm > layer.from_cm)) continue;
    most = *layer.crowding;
    tightest = TightestLayer{i, layer.open_l / (layer.to_cm - layer.from_cm)};
  }
  return tightest;
}

std::vector<Tightest> tightest_margins(const Facts& facts) {
  Margins margins;
  add_water(margins, facts, "temperature_c", "°C", facts.water.temperature_c, &Species::WaterNeeds::temperature_c);
  add_water(margins, facts, "ph", "pH", facts.water.ph, &Species::WaterNeeds::ph);
  add_water(margins, facts, "gh_dgh", "dGH", facts.water.gh_dgh, &Species::WaterNeeds::gh_dgh);
  add_water(margins, facts, "kh_dkh", "dKH", facts.water.kh_dkh, &Species::WaterNeeds::kh_dkh);
  add_lane(margins, facts);
  add_crowding(margins, facts);
  add_floor(margins, facts);
  add_nitrate(margins, facts);
  add_dawn(margins, facts);
  add_ammonia(margins, facts);
  sort_stable(margins, [](const Scaled& a, const Scaled& b) { return a.share < b.share; });
  std::vector<Tightest> entries;
  for (Scaled& one : margins) entries.push_back(std::move(one.entry));
  return entries;
}

}  // namespace shoalwright
