// SPDX-License-Identifier: MIT
#include "advice/shelf.h"

#include <algorithm>
#include <array>
#include <string_view>
#include <tuple>

#include "rules/tank_fit.h"
#include "stocking/encounter.h"
#include "stocking/layers.h"
#include "stocking/least_tank.h"
#include "tank/volume.h"
#include "water/window.h"

namespace shoalwright {

namespace {

using Measure = ShelfLimit::Measure;

// A shared temperature that loses less than this is not worth a word: no home thermometer tells it.
constexpr double window_word_c = 0.5;
// Every kind that fits comes before every kind that does not.
constexpr double fits_from = -0.9;

bool grave(Severity severity) { return severity == Severity::harm || severity == Severity::strain; }

bool counts_animals(const std::string& rule) {
  return rule.compare(0, 9, "crowding-") == 0 || rule == "territory" || rule == "load" || rule == "nitrate";
}

// Of rules that are equally grave the one that says most comes first: who it harms, then what no number of animals mends, then
// water, then what fewer animals would mend. adult-size repeats what a measure of the tank has said.
int rank_of(const std::string& rule) {
  if (rule == "adult-size" || rule == "group-size") return 9;
  if (counts_animals(rule) || rule == "oxygen" || rule == "kh-low" || rule == "filter") return 5;
  if (rule.compare(0, 6, "water-") == 0) return 4;
  if (rule == "swim-lane" || rule == "tank-length") return 1;
  if (rule.compare(0, 5, "tank-") == 0) return 2;
  if (rule == "lid" || rule == "substrate" || rule == "current") return 3;
  return 0;
}

std::vector<const Species*> species_in(const std::vector<Kept>& stock) {
  std::vector<const Species*> species;
  for (const Kept& kept : stock) species.push_back(kept.species);
  return species;
}

struct Quantity {
  const char* rule;
  Measure measure;
  Window Windows::*window;
  Need Species::WaterNeeds::*need;
};

constexpr std::array<Quantity, 4> quantities{{
    {"water-temperature", Measure::temperature, &Windows::temperature_c, &Species::WaterNeeds::temperature_c},
    {"water-ph", Measure::ph, &Windows::ph, &Species::WaterNeeds::ph},
    {"water-gh", Measure::gh, &Windows::gh_dgh, &Species::WaterNeeds::gh_dgh},
    {"water-kh", Measure::kh, &Windows::kh_dkh, &Species::WaterNeeds::kh_dkh},
}};

/// Spare in parts of what is wanted, at most 1: 0 at the limit itself.
double spare_share(double have, double asked) { return asked > 0 ? std::min(1.0, have / asked - 1) : 1; }

BodyRooms brought_up(BodyRooms bodies, const Plan& plan) {
  update(bodies, plan);
  return bodies;
}

}  // namespace

ShelfSearch::ShelfSearch(const Plan& plan, const Catalog& catalog, BodyRooms known)
    : plan_(plan),
      catalog_(catalog),
      stock_(resolve_stock(plan_, catalog_)),
      volume_(volume_of(plan_)),
      bodies_(brought_up(std::move(known), plan_)),
      room_(room_of(plan_, stock_, volume_, bodies_)),
      largest_(plan_, catalog_, by_id(stock_), volume_, room_, bodies_) {}

std::vector<Kept> ShelfSearch::stock_with(const Species& species, int count) const {
  std::vector<Kept> stock = stock_;
  stock.erase(std::remove_if(stock.begin(), stock.end(), [&](const Kept& kept) { return kept.id == species.id; }), stock.end());
  if (count > 0) stock.push_back(wished_group(species, count));
  return by_id(std::move(stock));
}

Reckoned ShelfSearch::reckoned(const Species& species, int count) {
  return reckon(plan_, stock_with(species, count), volume_, bodies_);
}

std::vector<Finding> ShelfSearch::findings(const Reckoned& all) {
  return findings_of(facts_of(plan_, catalog_, all, bodies_), Found::Keep::findings_at_once);
}

void ShelfSearch::find_limit(const Species& species, const Largest& largest, ShelfAnswer& answer) {
  const int least = std::max(species.life.group.least, 1);
  const Reckoned with_least = reckoned(species, least);
  const std::vector<Finding> found = findings(with_least);
  const auto stops = [&](const Finding& one) {
    return grave(one.severity) &&
           std::find(largest.stopped_by.begin(), largest.stopped_by.end(), one.rule) != largest.stopped_by.end();
  };
  const auto names_it = [&](const Finding& one) {
    return std::find(one.species.begin(), one.species.end(), species.id) != one.species.end();
  };
  const Finding* first = nullptr;
  for (const Finding& one : found) {
    if (!stops(one)) continue;
    const auto key = [&](const Finding& f) { return std::tuple(f.severity, !names_it(f), rank_of(f.rule)); };
    if (!first || key(one) < key(*first)) first = &one;
  }
  if (!first) return;

  ShelfLimit limit{.rule = first->rule, .severity = first->severity, .with = {}, .text = first->text};
  for (const std::string& id : first->species) {
    const auto at = std::find_if(stock_.begin(), stock_.end(), [&](const Kept& kept) { return kept.id == id; });
    if (id != species.id && at != stock_.end()) limit.with.push_back(static_cast<int>(at - stock_.begin()) + 1);
  }
  std::sort(limit.with.begin(), limit.with.end());

  const Facts facts = facts_of(plan_, catalog_, with_least, bodies_);
  const auto measured = [&](const Fit& fit, Measure measure) {
    limit.measure = measure;
    limit.amount = std::max(fit.asked - fit.have, 0.0);
  };
  if (first->rule == "swim-lane") {
    measured(lane_fit(facts, species), Measure::lane);
  } else if (first->rule == "tank-length") {
    const Fit run = empty_run_fit(facts, species), sold = least_length_fit(facts, species);
    if (run.severity && (!sold.severity || *run.severity <= *sold.severity))
      measured(run, Measure::lane);
    else
      measured(sold, Measure::tank_length);
  } else if (first->rule == "tank-width") {
    measured(width_fit(facts, species), Measure::tank_width);
  } else if (first->rule == "tank-height") {
    measured(height_fit(facts, species), Measure::water_height);
  } else if (first->rule == "tank-volume") {
    measured(volume_fit(facts, species), Measure::tank_volume);
  } else if (counts_animals(first->rule)) {
    limit.measure = Measure::count;
    // How many would fit if being too few did not matter.
    for (int count = least - 1; count > 0 && limit.amount == 0; --count) {
      const std::vector<Finding> fewer = findings(reckoned(species, count));
      if (std::none_of(fewer.begin(), fewer.end(), [&](const Finding& one) { return stops(one) && one.rule != "group-size"; }))
        limit.amount = count;
    }
  }
  for (const Quantity& q : quantities) {
    const std::optional<double> now = (with_least.water.*q.window).now;
    const std::optional<Range>& range = (species.water.*q.need).tolerated;
    if (first->rule != q.rule || !now || !range || (*now >= range->low && *now <= range->high)) continue;
    limit.measure = q.measure;
    limit.too_high = *now > range->high;
    limit.amount = limit.too_high ? *now - range->high : range->low - *now;
  }
  answer.first = std::move(limit);
}

double ShelfSearch::worst_margin(const Species& species, const ShelfAnswer& answer) {
  const std::vector<Kept> others = stock_with(species, 0);
  const Windows water = windows_of(plan_, species_in(others));
  double worst = 1, sum = 0;
  int margins = 0;
  const auto add = [&](double share) {
    worst = std::min(worst, share);
    sum += std::clamp(share, -1.0, 1.0);
    ++margins;
  };
  for (const Quantity& q : quantities) {
    const std::optional<double> now = (water.*q.window).now;
    const std::optional<Range>& range = (species.water.*q.need).tolerated;
    if (!now || !range || !(range->high > range->low)) continue;
    add(std::min(*now - range->low, range->high - *now) / ((range->high - range->low) / 2));
  }
  const double lane_cm = lane_needed_cm(species);
  if (lane_cm > 0) {
    double run_cm = 0;
    const std::array<double, 3> depth = demand_of({.species = &species, .id = species.id, .count = 1}).depth;
    const std::size_t main = static_cast<std::size_t>(std::max_element(depth.begin(), depth.end()) - depth.begin());
    run_cm = room_.layers[main].lane_cm;
    add(spare_share(run_cm, lane_cm));
  }
  if (answer.room_for) {
    const int wanted = answer.in_plan > 0 ? 0 : answer.least;
    add(std::clamp(static_cast<double>(*answer.room_for - wanted) / std::max(answer.good, 1), -1.0, 1.0));
  }
  constexpr double mean_weight = 0.01;  // orders kinds whose worst margins are equal
  return worst + (margins > 0 ? mean_weight * sum / margins : 0);
}

ShelfAnswer ShelfSearch::answer(const Species& species) {
  ShelfAnswer answer{.species = species.id, .least = std::max(species.life.group.least, 1)};
  answer.good = std::max(species.life.group.good, answer.least);
  const auto kept = std::find_if(stock_.begin(), stock_.end(), [&](const Kept& one) { return one.id == species.id; });
  if (kept != stock_.end()) answer.in_plan = kept->count;

  const Largest largest = largest_.find(species);
  answer.largest = largest.count;
  answer.stopped_by = largest.stopped_by;
  if (!largest.count) {
    answer.waits_for_kind = std::any_of(stock_.begin(), stock_.end(), [](const Kept& one) { return !one.species; });
    answer.closeness = fits_from;
    return answer;
  }
  const int most = *largest.count;
  answer.room_for = most - answer.in_plan;
  if (most == 0) {
    answer.fit = ShelfFit::over;
    find_limit(species, largest, answer);
  } else if (answer.in_plan > 0) {
    answer.fit = *answer.room_for > 0 ? ShelfFit::spare : *answer.room_for == 0 ? ShelfFit::just : ShelfFit::over;
  } else {
    answer.fit = most > answer.least && most >= answer.good ? ShelfFit::spare : ShelfFit::just;
  }

  const std::vector<Kept> others = stock_with(species, 0);
  if (answer.fit == ShelfFit::spare && answer.in_plan == 0 && !others.empty()) {
    std::vector<const Species*> with = species_in(others);
    const std::optional<Range> before = windows_of(plan_, with).temperature_c.tolerated;
    with.push_back(&species);
    const std::optional<Range> after = windows_of(plan_, with).temperature_c.tolerated;
    if (before && after && before->high - after->high >= window_word_c)
      answer.then_at_most_c = after->high;
    else if (before && after && after->low - before->low >= window_word_c)
      answer.then_at_least_c = after->low;
  }
  const std::array<double, 3> depth = demand_of({.species = &species, .id = species.id, .count = 1}).depth;
  for (std::size_t i = 0; i < 3; ++i) answer.fills += depth[i] * std::max(0.0, 1 - room_.layers[i].crowding.value_or(1));
  const auto like = std::find_if(stock_.begin(), stock_.end(), [&](const Kept& one) {
    return one.species->id != species.id && nearly_doubles(*one.species, species);
  });
  if (like != stock_.end()) answer.much_like = like->id;
  answer.keep_lid_on = species.life.jumps == Jumps::readily && plan_.tank.lid.value_or(false);

  const double margin = worst_margin(species, answer);
  if (answer.fit != ShelfFit::over)
    answer.closeness = std::max(margin, fits_from);
  else
    answer.closeness = std::clamp(margin, -10.0, 0.0) - (answer.first && answer.first->severity == Severity::harm ? 12 : 1);
  return answer;
}

ShelfAnswer shelf_answer(const Plan& plan, const Catalog& catalog, const Species& species) {
  return ShelfSearch(plan, catalog).answer(species);
}

bool nearly_doubles(const Species& one, const Species& other) {
  if (one.life.style != other.life.style) return false;
  const auto genus = [](const Species& species) {
    return std::string_view(species.name.scientific).substr(0, species.name.scientific.find(' '));
  };
  return genus(one) == genus(other) || look_alike(one, other);
}

double ShelfAnswer::usefulness() const {
  if (fit == ShelfFit::over || fit == ShelfFit::unknown) return closeness - 10;
  // A level that is empty counts more than a wide margin; a kind that doubles another, or is there, comes after all that do not.
  constexpr double margin_weight = 0.3, later = 3;
  double useful = fills + margin_weight * std::min(closeness, 1.0);
  if (fit == ShelfFit::just) useful -= 2 * later;
  if (in_plan > 0 || !much_like.empty()) useful -= later;
  return useful;
}

int usual_addition(const Species& species, int in_plan) {
  const int good = std::max({species.life.group.good, species.life.group.least, 1});
  return in_plan < good ? good - std::max(in_plan, 0) : 1;
}

}  // namespace shoalwright
