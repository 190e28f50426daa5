// SPDX-License-Identifier: MIT
#include "mend/change.h"

#include <algorithm>
#include <optional>

#include "stocking/stock.h"

namespace shoalwright {

namespace {

namespace costs {

constexpr double re_home = 20, each_re_homed = 1;
constexpr double larger_tank = 8, larger_tank_lived_in = 15;
constexpr double give_up_wish = 4, other_kind = 3, new_kind = 2;
constexpr double other_count = 1, each_animal = 0.05;
constexpr double mixed_water = 2, aim_temperature = 1;
constexpr double other_floor = 2, more_floor = 1;
constexpr double put_piece = 1, move_piece = 0.5, take_piece = 1;
constexpr double filter = 1.5, heater = 1, flow = 1, surface = 0.5;
constexpr double planting = 1, changes = 1, more_changed = 4;
constexpr double small = 0.5;

}  // namespace costs

const Kept* find(const std::vector<Kept>& stock, const std::string& id) {
  const auto at = std::find_if(stock.begin(), stock.end(), [&](const Kept& kept) { return kept.id == id; });
  return at == stock.end() ? nullptr : &*at;
}

bool lived_in(const Plan& plan) {
  return std::any_of(plan.stock.begin(), plan.stock.end(), [](const Group& group) { return group.have > 0; });
}

void add_stock(const Plan& before, const Plan& after, const Catalog& catalog, std::vector<Change>& out) {
  const std::vector<Kept> was = by_id(resolve_stock(before, catalog)), is = by_id(resolve_stock(after, catalog));
  int new_kinds = 0;
  for (const Kept& kept : is)
    if (!find(was, kept.id)) ++new_kinds;
  int in_place_of = new_kinds;  // so many kinds given up are filled by another one
  for (const Kept& kept : was) {
    const Kept* now = find(is, kept.id);
    const int count = now ? now->count : 0, have = now ? now->have : 0;
    const int homes = std::max(kept.have - have, 0);
    if (homes > 0) out.push_back({"re-home " + kept.id, costs::re_home + costs::each_re_homed * homes});
    if (count == 0) {
      if (kept.have > 0) continue;
      const bool filled = in_place_of > 0;
      if (filled) --in_place_of;
      out.push_back({(filled ? "other kind for " : "gone ") + kept.id, filled ? costs::other_kind : costs::give_up_wish});
    } else if (count - have != kept.count - kept.have) {
      const int by = count > kept.count ? count - kept.count : kept.count - count;
      out.push_back({"count " + kept.id, costs::other_count + costs::each_animal * by});
    }
    if (count > 0 && now->males && now->females && (now->males != kept.males || now->females != kept.females))
      out.push_back({"sexes " + kept.id, costs::small});
  }
  const int unpaid = std::max(in_place_of, 0);
  int nth = 0;
  for (const Kept& kept : is)
    if (!find(was, kept.id)) out.push_back({"kind " + kept.id, nth++ < unpaid ? costs::new_kind : costs::each_animal});
  const auto weeks = [](const Plan& plan) {
    std::vector<std::pair<std::string, std::optional<int>>> all;
    for (const Group& group : plan.stock) all.emplace_back(group.species, group.arrives_week);
    return all;
  };
  const auto then = weeks(after);
  for (const auto& [species, week] : weeks(before)) {
    const auto at = std::find_if(then.begin(), then.end(), [&, &id = species](const auto& one) { return one.first == id; });
    if (at != then.end() && at->second != week) out.push_back({"arrival " + species, costs::small});
  }
}

void add_pieces(const Plan& before, const Plan& after, std::vector<Change>& out) {
  const std::size_t both = std::min(before.pieces.size(), after.pieces.size());
  for (std::size_t i = 0; i < both; ++i)
    if (!(before.pieces[i] == after.pieces[i])) out.push_back({"piece " + std::to_string(i), costs::move_piece});
  for (std::size_t i = both; i < after.pieces.size(); ++i) out.push_back({"piece " + std::to_string(i), costs::put_piece});
  for (std::size_t i = both; i < before.pieces.size(); ++i) out.push_back({"piece " + std::to_string(i), costs::take_piece});
}

void add_gear(const Plan& before, const Plan& after, std::vector<Change>& out) {
  const Gear was = before.gear.value_or(Gear()), is = after.gear.value_or(Gear());
  const bool had = was.filter.has_value(), has = is.filter.has_value();
  if (had != has || (had && was.filter->kind != is.filter->kind))
    out.push_back({"filter", costs::filter});
  else if (had && was.filter->media_l != is.filter->media_l)
    out.push_back({"media", costs::flow});
  if (had && has && was.filter->flow_l_h != is.filter->flow_l_h) out.push_back({"flow", costs::flow});
  if (was.heater_w != is.heater_w) out.push_back({"heater", costs::heater});
  if (was.surface != is.surface) out.push_back({"surface", costs::surface});
}

double changed_a_week(const Plan& plan) {
  return plan.upkeep && plan.upkeep->every_days > 0 ? plan.upkeep->change_fraction * 7 / plan.upkeep->every_days : 0;
}

void add_water(const Plan& before, const Plan& after, std::vector<Change>& out) {
  const WaterAim was = before.water.value_or(WaterAim()), is = after.water.value_or(WaterAim());
  if (was.temperature_c != is.temperature_c) out.push_back({"temperature", costs::aim_temperature});
  if (was.gh_dgh != is.gh_dgh || was.kh_dkh != is.kh_dkh || was.ph != is.ph) out.push_back({"water", costs::mixed_water});
  const double more = std::max(changed_a_week(after) - changed_a_week(before), 0.0);
  if (!(before.upkeep == after.upkeep)) out.push_back({"changes", costs::changes + costs::more_changed * more});
}

}  // namespace

std::vector<Change> changes_between(const Plan& before, const Plan& after, const Catalog& catalog) {
  std::vector<Change> out;
  add_stock(before, after, catalog, out);
  Tank was = before.tank, is = after.tank;
  if (was.lid != is.lid) out.push_back({"lid", costs::small});
  was.lid = is.lid;
  if (was.fill_cm != is.fill_cm && was.length_cm == is.length_cm && was.height_cm == is.height_cm) {
    out.push_back({"filling", costs::small});
    was.fill_cm = is.fill_cm;
  }
  if (!(was == is)) out.push_back({"tank", lived_in(before) ? costs::larger_tank_lived_in : costs::larger_tank});
  if (before.substrate.kind != after.substrate.kind)
    out.push_back({"floor", costs::other_floor});
  else if (!(before.substrate == after.substrate) && was == is)
    out.push_back({"floor", costs::more_floor});
  add_pieces(before, after, out);
  add_gear(before, after, out);
  add_water(before, after, out);
  if (!(before.feeding == after.feeding)) out.push_back({"feeding", costs::small});
  if (before.planting != after.planting) out.push_back({"planting", costs::planting});
  return out;
}

double cost_of(const std::vector<Change>& changes) {
  double cost = 0;
  for (const Change& one : changes) cost += one.cost;
  return cost;
}

}  // namespace shoalwright
