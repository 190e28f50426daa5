// SPDX-License-Identifier: MIT
#include "assess/margin.h"

#include <algorithm>
#include <cmath>

#include "assess/tightest.h"
#include "rules/shares.h"
#include "stocking/layers.h"
#include "stocking/profile.h"

namespace shoalwright {

namespace {

int whole_animals(double spare, double each) {
  constexpr double most = 1e6;
  return static_cast<int>(std::clamp(std::floor(spare / each + 1e-9), -most, most));
}

/// Counts what is spare in the kind in hand where it has a part, else in `otherwise`.
void count_in(MarginFacts& margin, const std::vector<Part>& parts, std::string_view in_hand, const Part* otherwise,
              double spare) {
  const Part* counted = otherwise;
  for (const Part& part : parts)
    if (part.kept->id == in_hand && part.amount > 0) counted = &part;
  if (counted == nullptr || !(counted->amount > 0)) return;
  margin.kind = counted->kept->id;
  margin.animals = whole_animals(spare, counted->amount / counted->kept->count);
}

const Part* largest_of(const std::vector<Part>& parts) {
  const Part* largest = nullptr;
  for (const Part& part : parts)
    if (largest == nullptr || part.amount > largest->amount) largest = &part;
  return largest;
}

std::optional<MarginFacts> lane(const Facts& facts, const Tightest& entry) {
  for (const GroupRoom& group : facts.room.groups)
    if (group.species == entry.set_by.front()) return MarginFacts{group.lane_needed_cm, group.lane_cm, {}, {}, {}};
  return std::nullopt;
}

/// Over a centimetre of the fullest layer; its tightest depth is where most of the open water is wanted.
std::optional<MarginFacts> crowding(const Facts& facts, const Tightest& entry, std::string_view in_hand) {
  constexpr std::size_t per_layer = 12;
  const std::optional<TightestLayer> tightest = tightest_layer(facts);
  if (!tightest) return std::nullopt;
  MarginFacts margin;
  margin.there_is = tightest->open_l_cm;
  margin.wanted = margin.there_is - entry.value;
  const DepthProfile profile = depth_profile_of(facts.plan, facts.stock, facts.bodies, per_layer);
  double most = 0;
  for (std::size_t i = tightest->layer * per_layer; i < (tightest->layer + 1) * per_layer && i < profile.open_l_cm.size(); ++i) {
    if (!(profile.open_l_cm[i] > 0)) continue;
    double share = 0;
    for (const GroupProfile& group : profile.groups) share += group.wanted_l_cm[i] / profile.open_l_cm[i];
    if (!(share > most)) continue;
    most = share;
    margin.depth_cm = (static_cast<double>(i) + 0.5) * profile.step_cm;
  }
  const std::vector<Part> parts = layer_parts(facts, tightest->layer);
  count_in(margin, parts, in_hand, largest_of(parts), entry.value / margin.there_is);
  return margin;
}

MarginFacts floor_of(const Facts& facts, const Tightest& entry, std::string_view in_hand) {
  MarginFacts margin{facts.room.floor_cm2 - entry.value, facts.room.floor_cm2, {}, {}, {}};
  const std::vector<Part> parts = floor_parts(facts);
  count_in(margin, parts, in_hand, largest_of(parts), entry.value);
  return margin;
}

MarginFacts nitrate(const Facts& facts, const Tightest& entry, std::string_view in_hand) {
  const double limit = nitrate_limit_mg_l(facts.plan), climb = limit - entry.value - *facts.plan.source.nitrate_mg_l;
  MarginFacts margin{limit - entry.value, limit, {}, {}, {}};
  std::vector<Part> parts = feed_parts(facts);
  double fed = 0;
  for (const Part& part : parts) fed += part.amount;
  if (!(fed > 0) || !(climb > 0)) return margin;
  const Part* largest = nullptr;
  for (Part& part : parts) {
    part.amount *= climb / fed;
    if (largest == nullptr || part.kept->count > largest->kept->count) largest = &part;
  }
  count_in(margin, parts, in_hand, largest, entry.value);
  return margin;
}

MarginFacts dawn(const Facts& facts, std::string_view in_hand) {
  MarginFacts margin{*facts.air.limit_mg_l, *facts.air.dawn_mg_l, {}, {}, {}};
  const std::vector<Part> parts = breath_parts(facts, *facts.water.temperature_c.now);
  count_in(margin, parts, in_hand, largest_of(parts), spare_breath_mg_h(facts).value_or(0));
  return margin;
}

std::optional<MarginFacts> facts_behind(const Facts& facts, const Tightest& entry, std::string_view in_hand) {
  if (entry.margin == "lane_cm" && !entry.set_by.empty()) return lane(facts, entry);
  if (entry.margin == "crowding_l_cm") return crowding(facts, entry, in_hand);
  if (entry.margin == "floor_cm2") return floor_of(facts, entry, in_hand);
  if (entry.margin == "nitrate_mg_l" && facts.plan.source.nitrate_mg_l) return nitrate(facts, entry, in_hand);
  if (entry.margin == "dawn_mg_l" && facts.air.dawn_mg_l && facts.air.limit_mg_l) return dawn(facts, in_hand);
  return std::nullopt;
}

}  // namespace

MarginTable margin_table(const Plan& plan, const Catalog& catalog, const Assessment& assessment, std::string_view in_hand) {
  BodyRooms bodies = bodies_of(plan);
  return margin_table(plan, catalog, assessment, in_hand, bodies);
}

MarginTable margin_table(const Plan& plan, const Catalog& catalog, const Assessment& assessment, std::string_view in_hand,
                         BodyRooms& bodies) {
  const std::vector<Kept> stock = by_id(resolve_stock(plan, catalog));
  const Facts facts{plan,   catalog,         stock,         assessment.volume, assessment.water, assessment.room,
                    bodies, assessment.load, assessment.air};
  MarginTable table;
  for (const Tightest& entry : assessment.tightest)
    if (auto behind = facts_behind(facts, entry, in_hand)) table.push_back({entry.margin, std::move(*behind)});
  return table;
}

const MarginFacts* find_margin(const MarginTable& table, std::string_view margin) {
  for (const auto& [name, facts] : table)
    if (name == margin) return &facts;
  return nullptr;
}

}  // namespace shoalwright
