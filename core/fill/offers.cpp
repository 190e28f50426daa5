// SPDX-License-Identifier: MIT
#include "fill/offers.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <string_view>

#include "stocking/encounter.h"
#include "stocking/floor.h"

namespace shoalwright {

namespace {

enum : std::size_t { surface, mid, bottom, floor_room, food, breath };

Shared shared_in(const Reckoned& all) {
  Shared sum{};
  for (std::size_t i = 0; i < 3; ++i) sum[i] = all.room.layers[i].crowding.value_or(0);
  sum[floor_room] = all.room.floor_crowding.value_or(0);
  sum[food] = all.load.feed_g_d.value_or(0);
  sum[breath] = all.air.demand_mg_h.value_or(0);
  return sum;
}

Reckoned reckoned_with(FillPlan& fill, const std::vector<std::pair<const Species*, int>>& groups) {
  std::vector<Kept> stock = fill.now.stock;
  for (const auto& [species, count] : groups) stock.push_back(wished_group(*species, count));
  return reckon(fill.plan, std::move(stock), fill.now.volume, fill.bodies);
}

std::array<bool, 4> levels_of(const Species& species) { return levels_in_order(swim_levels(species)); }

/// 10 in the middle of every range that is known, 0 at an edge of one.
int water_tenths(const Windows& water, const Species& species) {
  double worst = 1;
  const auto look = [&](const std::optional<double>& now, const Need& need) {
    if (!now || !need.tolerated || !(need.tolerated->high > need.tolerated->low)) return;
    const Range& range = *need.tolerated;
    worst = std::min(worst, 2 * std::min(*now - range.low, range.high - *now) / (range.high - range.low));
  };
  look(water.temperature_c.now, species.water.temperature_c);
  look(water.ph.now, species.water.ph);
  look(water.gh_dgh.now, species.water.gh_dgh);
  return static_cast<int>(std::floor(10 * std::clamp(worst, 0.0, 1.0) + 0.5));
}

int tenths_for_sort(const Species& species) {
  if (species.kind == "snail") return 0;
  return species.kind == "shrimp" ? 10 : 20;
}

bool shows_one(const FillPlan& fill) {
  return std::any_of(fill.now.stock.begin(), fill.now.stock.end(),
                     [](const Kept& kept) { return kept.species && is_show_fish(*kept.species); });
}

int tenths_for_kind(const FillPlan& fill, const Species& species) {
  const std::array<bool, 4> levels = levels_of(species);
  std::array<bool, 4> used{};
  for (const Kept& kept : fill.now.stock)
    for (std::size_t i = 0; i < 4; ++i) used[i] = used[i] || (kept.species && levels_of(*kept.species)[i]);
  bool wished = false, fresh = false;
  for (std::size_t i = 0; i < 4; ++i) {
    wished = wished || (levels[i] && fill.wishes.levels[i]);
    fresh = fresh || (levels[i] && !used[i]);
  }
  bool colourful = false;
  const std::array<bool, colour_count> colours = colours_of(species);
  for (std::size_t i = 0; i < colours.size(); ++i) colourful = colourful || (colours[i] && fill.wishes.colours[i]);
  return tenths_for_sort(species) + water_tenths(fill.now.water, species) + 10 * wished + 10 * colourful +
         (fill.now.stock.empty() ? 0 : 10 * fresh) + (is_show_fish(species) && !shows_one(fill) ? 20 : 0);
}

std::optional<std::size_t> shared_by(std::string_view rule, const FillPlan& fill, const FillOffer& offer) {
  if (const std::optional<std::size_t> shared = same_for_all(rule)) return shared;
  if (rule == "nitrate") return food;
  if (rule != "crowding-bottom") return std::nullopt;
  // It speaks of the layer or of the floor: told apart only where one of them has room.
  constexpr double room_to = 0.9;
  const auto after = [&](std::size_t i) { return fill.taken[i] + (offer.largest + 1) * offer.takes[i]; };
  if (after(bottom) <= room_to && after(floor_room) > room_to) return floor_room;
  if (after(floor_room) <= room_to && after(bottom) > room_to) return bottom;
  return std::nullopt;
}

}  // namespace

std::optional<std::size_t> same_for_all(std::string_view rule) {
  if (rule == "crowding-top") return surface;
  if (rule == "crowding-mid") return mid;
  if (rule == "load") return food;
  if (rule == "oxygen") return breath;
  return std::nullopt;
}

FillPlan fill_plan(const Plan& plan, const Catalog& catalog, BodyRooms known) {
  FillPlan fill{.plan = plan, .catalog = catalog, .wishes = wishes_of(plan), .now = {}, .before = {}, .bodies = std::move(known)};
  fill.now = reckon(plan, resolve_stock(plan, catalog), fill.bodies);
  fill.taken = shared_in(fill.now);
  fill.before = grades_of(facts_of(plan, catalog, fill.now, fill.bodies));
  return fill;
}

std::vector<Grade> raised_by(FillPlan& fill, const std::vector<std::pair<const Species*, int>>& groups) {
  const Reckoned all = reckoned_with(fill, groups);
  std::vector<Grade> grades = grades_of(facts_of(fill.plan, fill.catalog, all, fill.bodies));
  std::erase_if(grades, [&](const Grade& one) { return known_before(one, fill.before); });
  return grades;
}

bool is_show_fish(const Species& species) {
  constexpr int most = 3;
  return species.kind == "fish" && species.life.group.good <= most && species.mouth.eater != "grazer";
}

std::optional<FillOffer> offer_of(FillPlan& fill, LargestSearch& largest, const Species& species) {
  const Largest found = largest.find(species);
  FillOffer offer{.species = &species, .least = std::max(species.life.group.least, 1), .stopped_by = found.stopped_by};
  if (found.count.value_or(0) < offer.least) return std::nullopt;
  const int good = std::max(species.life.group.good, offer.least);
  offer.largest = *found.count;
  offer.most = std::min(offer.largest, good);
  offer.for_kind = tenths_for_kind(fill, species);
  offer.for_each = static_cast<int>(std::floor(30.0 / good + 0.5));
  const Shared after = shared_in(reckoned_with(fill, {{&species, offer.least}}));
  for (std::size_t i = 0; i < shared_count; ++i) offer.takes[i] = std::max(after[i] - fill.taken[i], 0.0) / offer.least;
  // Holders of ground spare each other some where they do not see each other, and who breathes air asks little of the water.
  offer.takes_at_least = offer.takes;
  if (holds_floor(species)) offer.takes_at_least[floor_room] = 0;
  if (species.life.air_breather) offer.takes_at_least[breath] = 0;
  const std::vector<std::string>& must = fill.wishes.must;
  offer.must = std::find(must.begin(), must.end(), species.id) != must.end();
  offer.show = is_show_fish(species);
  return offer;
}

std::vector<std::pair<std::size_t, double>> capacities_of(const FillPlan& fill, const std::vector<FillOffer>& offers) {
  struct Met {
    std::string_view rule;
    std::size_t shared;
    double fits = 0, over = std::numeric_limits<double>::infinity();
  };
  constexpr std::string_view rules[] = {"crowding-top", "crowding-mid", "crowding-bottom", "load", "nitrate", "oxygen"};
  std::vector<Met> all;
  for (const std::string_view rule : rules)
    for (std::size_t i = 0; i < shared_count; ++i) all.push_back({rule, i});
  const auto each_met = [&](auto use) {
    for (const FillOffer& offer : offers)
      for (Met& met : all) {
        const bool stopped = std::find(offer.stopped_by.begin(), offer.stopped_by.end(), met.rule) != offer.stopped_by.end();
        if (stopped && offer.takes_at_least[met.shared] > 0 && shared_by(met.rule, fill, offer) == met.shared) use(met, offer);
      }
  };
  each_met([](Met& met, const FillOffer& offer) { met.fits = std::max(met.fits, offer.largest * offer.takes[met.shared]); });
  each_met([](Met& met, const FillOffer& offer) {
    const double over = (offer.largest + 1) * offer.takes[met.shared];
    if (over > met.fits) met.over = std::min(met.over, over);
  });
  std::vector<std::pair<std::size_t, double>> capacities;
  for (const Met& met : all)
    if (met.over < std::numeric_limits<double>::infinity()) capacities.emplace_back(met.shared, met.over);
  return capacities;
}

}  // namespace shoalwright
