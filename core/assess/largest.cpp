// SPDX-License-Identifier: MIT
#include "assess/largest.h"

#include <algorithm>
#include <cmath>

#include "plan/check.h"
#include "rules/facts.h"
#include "rules/limits.h"
#include "rules/shares.h"
#include "stocking/floor.h"
#include "stocking/layers.h"
#include "stocking/territory.h"

namespace shoalwright {

namespace {

/// The gravest first.
std::vector<std::string> newly_raised(const std::vector<Raised>& after, const std::vector<Raised>& before) {
  std::vector<std::string> rules;
  for (const Severity severity : {Severity::harm, Severity::strain})
    for (const Raised& one : after)
      if (one.severity == severity && !known_before(one, before) &&
          std::find(rules.begin(), rules.end(), one.rule) == rules.end())
        rules.emplace_back(one.rule);
  return rules;
}

bool raises_more(const std::vector<Raised>& after, const std::vector<Raised>& before) {
  return std::any_of(after.begin(), after.end(), [&](const Raised& one) { return !known_before(one, before); });
}

/// Sums that grow with the count, in parts of what makes a strain.
struct Sums {
  double layer[3] = {}, floor = 0, load = 0, oxygen = 0;
};

/// How many fit if every sum grows in proportion, from the filling without the kind and with `count` of it.
double guessed_count(const Sums& without, const Sums& with, int count) {
  double most = most_count;
  const auto bound = [&](double before, double after) {
    if (after > before) most = std::min(most, std::floor((1 - before) / (after - before) * count + 1e-9));
  };
  for (int i = 0; i < 3; ++i) bound(without.layer[i], with.layer[i]);
  bound(without.floor, with.floor);
  bound(without.load, with.load);
  bound(without.oxygen, with.oxygen);
  return std::max(most, 0.0);
}

}  // namespace

LargestSearch::LargestSearch(const Plan& plan, const Catalog& catalog, std::vector<Kept> stock, const Volume& volume,
                             const Room& room, BodyRooms& bodies)
    : plan_(plan), catalog_(catalog), volume_(volume), bodies_(bodies), stock_(std::move(stock)), room_(room) {
  room_.groups.clear();
  stock_.reserve(stock_.size() + 1);  // what is raised points at ids in it, which must not move when a kind comes in
}

void LargestSearch::look_at_kinds(const std::vector<const Species*>& species, OfKinds& kinds) const {
  kinds.water = windows_of(plan_, species);
  const std::optional<double>& water_c = kinds.water->temperature_c.now;
  kinds.air = air_of_tank(plan_, volume_, water_c);
  if (water_c)
    for (const Species* one : species) kinds.burdens.push_back(burden_of(*one, *water_c));
}

std::vector<Raised> LargestSearch::raised(const std::vector<Kept>& stock, OfKinds& kinds) {
  std::vector<const Species*> species;
  std::vector<Demand> demands;
  for (const Kept& kept : stock) {
    species.push_back(kept.species);
    demands.push_back(demand_of(kept, bodies_));
  }
  const auto crowding = layer_crowding(demands, layer_water(room_));
  for (std::size_t i = 0; i < 3; ++i) room_.layers[i].crowding = crowding[i];
  room_.floor_crowding.reset();
  if (room_.floor_cm2 > 0 && volume_.gross_l > 0) {
    room_.sight_factor = sight_factor(territories_of(plan_, stock, bodies_));
    room_.floor_crowding = floor_wanted_cm2(stock, room_.sight_factor) / room_.floor_cm2;
  }

  const bool first = !kinds.water;
  if (first) look_at_kinds(species, kinds);
  std::optional<Burden> burden;
  if (kinds.burdens.size() == stock.size()) {
    burden.emplace();
    for (std::size_t kind = 0; kind < stock.size(); ++kind) {
      burden->feed_g_d += stock[kind].count * kinds.burdens[kind].feed_g_d;
      burden->resting_oxygen_mg_h += stock[kind].count * kinds.burdens[kind].resting_oxygen_mg_h;
    }
  }
  const Load load = load_of(plan_, burden, volume_, *kinds.water);
  const std::optional<double> rise = nitrate_rise_mg_l_d(load, volume_);
  load_index_ = rise ? load_index(*rise) : 0;
  const Air air = air_of(plan_, stock, kinds.air, burden);
  oxygen_used_ = air.dawn_mg_l ? (*air.saturation_mg_l - *air.dawn_mg_l) /
                                     (*air.saturation_mg_l - limits::oxygen_ease_mg_l + limits::oxygen_short.strain)
                               : 0;
  const Facts facts{plan_, catalog_, stock, volume_, *kinds.water, room_, bodies_, load, air};
  std::vector<Raised> all;
  std::size_t of_kinds = 0;
  for (const RuleRow& row : rules_with(catalog_)) {
    if (row.of_kinds_only && !first) {
      const std::vector<Raised>& known = kinds.raised[of_kinds++];
      all.insert(all.end(), known.begin(), known.end());
      continue;
    }
    Found found(Found::Keep::grades);
    row.rule(facts, found);
    all.insert(all.end(), found.raised().begin(), found.raised().end());
    if (row.of_kinds_only) kinds.raised.push_back(found.raised());
  }
  return all;
}

Largest LargestSearch::find(const Species& species) {
  const bool all_known = std::all_of(stock_.begin(), stock_.end(), [](const Kept& kept) { return kept.species != nullptr; });
  if (!all_known || !plan_.planting) return {};

  std::vector<Kept> others = stock_;
  std::erase_if(others, [&](const Kept& kept) { return kept.species->id == species.id; });
  const bool kept_already = others.size() < stock_.size();
  const Steps& crowded = in_view(limits::crowding, plan_.strictness);
  const auto filling = [&] {
    Sums f;
    for (std::size_t i = 0; i < 3; ++i) f.layer[i] = room_.layers[i].crowding.value_or(0) / crowded.strain;
    f.floor = room_.floor_crowding.value_or(0) / crowded.strain;
    f.load = load_index_ / limits::load.strain;
    f.oxygen = oxygen_used_;
    return f;
  };
  OfKinds kinds_without, kinds_with_it;
  const std::vector<Raised> before = raised(others, kinds_without);
  const Sums without = filling();

  if (!kept_already) stock_.push_back(wished_group(species, 1));
  Kept& own = *std::find_if(stock_.begin(), stock_.end(), [&](const Kept& kept) { return kept.species->id == species.id; });
  const Kept as_it_is = own;
  own.have = 0;
  own.males.reset();
  own.females.reset();
  const auto with = [&](int count) {
    own.count = count;
    return raised(stock_, kept_already ? kinds_ : kinds_with_it);
  };
  std::vector<Raised> over;  // at the least count so far that does not fit
  const auto fits = [&](int count) {
    std::vector<Raised> all = with(count);
    const bool fit = !raises_more(all, before);
    if (!fit) over = std::move(all);
    return fit;
  };

  Largest largest;
  const int least = std::max(species.life.group.least, 1);
  const std::vector<Raised> with_least = with(least);
  if (raises_more(with_least, before)) {
    largest.count = 0;
    largest.stopped_by = newly_raised(with_least, before);
    // A smaller group than the least may still raise nothing worse than a watch; the more of them the less likely.
    for (int count = least - 1; count > 0; --count) {
      const std::vector<Raised> fewer = with(count);
      if (!raises_more(fewer, before)) {
        largest.count = count;
        break;
      }
      const bool too_few = std::any_of(fewer.begin(), fewer.end(),
                                       [&](const Raised& one) { return one.rule == "group-size" && one.subject == species.id; });
      if (too_few) break;
      largest.stopped_by = newly_raised(fewer, before);
    }
  } else {
    int low = least, high = most_count + 1;  // low fits, high does not or is past what a plan holds
    int guess = static_cast<int>(
        std::clamp(guessed_count(without, filling(), least), static_cast<double>(least), static_cast<double>(most_count)));
    if (guess > low && !fits(guess)) {
      high = guess;
      // The guess is nearly right: step away from it before halving.
      for (int step = 1; high - low > 1; step *= 2) {
        const int down = std::max(high - step, low);
        if (down <= low) break;
        if (fits(down)) {
          low = down;
          break;
        }
        high = down;
      }
    } else {
      low = guess;
      for (int step = 1; low < most_count; step *= 2) {
        const int up = std::min(low + step, most_count);
        if (!fits(up)) {
          high = up;
          break;
        }
        low = up;
      }
    }
    while (high - low > 1 && high <= most_count) {
      const int middle = low + (high - low) / 2;
      (fits(middle) ? low : high) = middle;
    }
    largest.count = low;
    if (high <= most_count) largest.stopped_by = newly_raised(over, before);
  }

  own.count = as_it_is.count;
  own.have = as_it_is.have;
  own.males = as_it_is.males;
  own.females = as_it_is.females;
  if (!kept_already) stock_.pop_back();
  return largest;
}

Largest largest_count(const Plan& plan, const Catalog& catalog, const Species& species) {
  const std::vector<Kept> stock = resolve_stock(plan, catalog);
  const Volume volume = volume_of(plan);
  BodyRooms bodies = bodies_of(plan);
  const Room room = room_of(plan, stock, volume, bodies);
  return LargestSearch(plan, catalog, stock, volume, room, bodies).find(species);
}

}  // namespace shoalwright
