// SPDX-License-Identifier: MIT
#include "water/getting_there.h"

#include <algorithm>
#include <cmath>

#include "water/blend.h"
#include "water/carbonate.h"

namespace shoalwright {

namespace {

constexpr int most_changes = 200;  // years; nobody goes on for longer
/// A step longer than its limit by no more than this is as long but for rounding, degrees.
constexpr double rounding = 1e-9;

/// The tank on its way: everything known.
struct Now {
  double temperature_c = 25, gh_dgh = 0, kh_dkh = 0, co2_mg_l = 0;

  CarbonateWater water() const { return {temperature_c, kh_dkh, gh_dgh}; }
  double ph() const { return ph_with_co2(water(), co2_mg_l); }
};

/// What a bucket holds.
struct Fresh {
  double gh_dgh = 0, kh_dkh = 0;
};

Now after_change(const Now& tank, const Fresh& fresh, double fraction, double temperature_c) {
  Now after = tank;
  after.temperature_c = temperature_c;
  after.gh_dgh = mixed(fraction, fresh.gh_dgh, tank.gh_dgh);
  after.kh_dkh = mixed(fraction, fresh.kh_dkh, tank.kh_dkh);
  return after;
}

/// The largest pH step: at once, before any CO2 has come or gone, and later at the CO2 that the tank holds.
double ph_step(const Now& tank, const Fresh& fresh, double fraction) {
  const Now later = after_change(tank, fresh, fraction, tank.temperature_c);
  const Conserved old_water = conserved_with_co2(tank.water(), tank.co2_mg_l),
                  new_water = conserved_in_air({tank.temperature_c, fresh.kh_dkh, fresh.gh_dgh}, co2_indoors_atm);
  const double at_once = ph_closed(mixed(fraction, new_water, old_water), tank.temperature_c);
  return std::max(std::abs(at_once - tank.ph()), std::abs(later.ph() - tank.ph()));
}

double hardness_limit(double now_dh) { return std::max(change_most_share * now_dh, change_always_dh); }

bool shocks(const Now& tank, const Fresh& fresh, double fraction) {
  return !(fraction * std::abs(fresh.gh_dgh - tank.gh_dgh) <= hardness_limit(tank.gh_dgh) + rounding &&
           fraction * std::abs(fresh.kh_dkh - tank.kh_dkh) <= hardness_limit(tank.kh_dkh) + rounding &&
           ph_step(tank, fresh, fraction) <= change_most_ph);
}

/// Share of a step in hardness that one change may take, 0 to 1.
double hardness_share(const Now& tank, const Fresh& fresh, double fraction) {
  const auto share = [&](double now, double then) {
    const double step = fraction * std::abs(then - now), limit = hardness_limit(now);
    return step > limit ? limit / step : 1;
  };
  return std::min(share(tank.gh_dgh, fresh.gh_dgh), share(tank.kh_dkh, fresh.kh_dkh));
}

/// The largest value up to `high` that shocks nobody, where less never shocks more. `high` itself nearly always: the search is
/// for pH, in water with next to no KH.
template <class Shocks>
double largest_gentle(double high, Shocks shocks_at) {
  if (!shocks_at(high)) return high;
  double low = 0;
  for (int halving = 0; halving < 30; ++halving) {
    const double middle = (low + high) / 2;
    (shocks_at(middle) ? high : low) = middle;
  }
  return low;
}

/// The largest part of `fraction` that shocks nobody.
double gentle_fraction(const Now& tank, const Fresh& fresh, double fraction) {
  return largest_gentle(fraction * hardness_share(tank, fresh, fraction), [&](double f) { return shocks(tank, fresh, f); });
}

double away(const Now& tank, const Fresh& goal) {
  return std::abs(tank.gh_dgh - goal.gh_dgh) + std::abs(tank.kh_dkh - goal.kh_dkh);
}

/// How much nearer to the goal a change comes, degrees of both.
double progress(const Now& tank, const Fresh& fresh, double fraction, const Fresh& goal) {
  return away(tank, goal) - away(after_change(tank, fresh, fraction, tank.temperature_c), goal);
}

Fresh on_the_way(const Now& tank, const Fresh& goal, double strength) {
  return {mixed(strength, goal.gh_dgh, tank.gh_dgh), mixed(strength, goal.kh_dkh, tank.kh_dkh)};
}

/// The strongest mix of tank water and goal that shocks nobody at changes of that size.
double gentle_strength(const Now& tank, const Fresh& goal, double fraction) {
  return largest_gentle(hardness_share(tank, goal, fraction),
                        [&](double strength) { return shocks(tank, on_the_way(tank, goal, strength), fraction); });
}

struct Choice {
  double strength = 1, fraction = 0;
  Recipe recipe;
  Fresh fresh;
};

/// A full-strength bucket where it shocks nobody; else one part of the way, as it can really be mixed; where that hardly moves
/// the tank, less of a full one.
Choice choose(const SourceWater& tap, const MixAim& aim, const Recipe& recipe, std::span<const std::string> salts,
              const Now& tank, const Fresh& goal, double fraction) {
  if (!shocks(tank, goal, fraction)) return {1, fraction, recipe, goal};
  const double smaller = gentle_fraction(tank, goal, fraction), strength = gentle_strength(tank, goal, fraction);
  const Fresh wished = on_the_way(tank, goal, strength);
  MixAim part = aim;
  part.gh_dgh = {wished.gh_dgh, std::nullopt};
  part.kh_dkh = {wished.kh_dkh, std::nullopt};
  part.ph = {};
  Recipe weaker = recipe_for(tap, part, salts);
  const Fresh fresh{weaker.reached.gh_dgh.value_or(goal.gh_dgh), weaker.reached.kh_dkh.value_or(goal.kh_dkh)};
  if (!shocks(tank, fresh, fraction) && progress(tank, fresh, fraction, goal) >= progress(tank, goal, smaller, goal) / 2)
    return {strength, fraction, std::move(weaker), fresh};
  return {1, smaller, recipe, goal};
}

/// Inside to the step in which hardness is told: what heads for an edge comes ever nearer and never quite there.
bool inside(double value, const Range& window) {
  return value >= window.low - edge_in_hand_dh && value <= window.high + edge_in_hand_dh;
}

bool arrived(double value, double goal, const AxisAim& aim) {
  const double low = std::min(goal, aim.aim.value_or(goal)), high = std::max(goal, aim.aim.value_or(goal));
  if (!(value >= low - arrived_dh && value <= high + arrived_dh)) return false;
  return !aim.window || inside(value, *aim.window) || !inside(goal, *aim.window);
}

void note_inside(std::optional<int>& after, double value, const AxisAim& aim, int changes) {
  if (!after && aim.window && inside(value, *aim.window)) after = changes;
}

TankWater told(const Now& tank) { return {tank.temperature_c, tank.ph(), tank.gh_dgh, tank.kh_dkh}; }

/// Which place the bucket has in the list, put there when it is new.
int place_of(std::vector<Bucket>& list, const Choice& choice) {
  for (std::size_t i = 0; i < list.size(); ++i)
    if (list[i].strength == choice.strength && list[i].recipe == choice.recipe) return static_cast<int>(i);
  list.push_back({.strength = choice.strength, .recipe = choice.recipe, .changes = 0});
  return static_cast<int>(list.size()) - 1;
}

}  // namespace

TankWater tank_water_now(const Plan& plan) {
  const Measured measured = plan.measured.value_or(Measured{});
  const auto either = [](const std::optional<double>& read, const std::optional<double>& tap) { return read ? read : tap; };
  return {measured.temperature_c, measured.ph, either(measured.gh_dgh, plan.source.gh_dgh),
          either(measured.kh_dkh, plan.source.kh_dkh)};
}

GettingThere getting_there(const SourceWater& tap, const TankWater& now, const MixAim& aim, const Recipe& recipe,
                           std::span<const std::string> salts, double fraction) {
  GettingThere way;
  way.now = now;
  if (!(now.gh_dgh && now.kh_dkh && recipe.reached.gh_dgh && recipe.reached.kh_dkh && fraction > 0 && fraction <= 1)) return way;
  const double aim_c = aim.temperature_c.value_or(now.temperature_c.value_or(usual_temperature_c));
  Now tank{now.temperature_c.value_or(aim_c), *now.gh_dgh, *now.kh_dkh, 0};
  // Where nobody has measured pH the CO2 of tanks is taken; in water softer than its pH says, what the air alone leaves in it.
  const double usual_co2 = (usual_tank_co2_mg_l.low + usual_tank_co2_mg_l.high) / 2;
  tank.co2_mg_l =
      now.ph ? std::max(co2_at_ph_mg_l(tank.water(), *now.ph), co2_in_air_mg_l(tank.temperature_c, co2_outdoors_atm)) : usual_co2;
  way.now = told(tank);
  const Fresh goal{*recipe.reached.gh_dgh, *recipe.reached.kh_dkh};
  for (int done = 0; done <= most_changes; ++done) {
    note_inside(way.gh_inside_after, tank.gh_dgh, aim.gh_dgh, done);
    note_inside(way.kh_inside_after, tank.kh_dkh, aim.kh_dkh, done);
    if (arrived(tank.gh_dgh, goal.gh_dgh, aim.gh_dgh) && arrived(tank.kh_dkh, goal.kh_dkh, aim.kh_dkh)) {
      way.changes = done;
      break;
    }
    const Choice choice = choose(tap, aim, recipe, salts, tank, goal, fraction);
    if (done == most_changes || !(progress(tank, choice.fresh, choice.fraction, goal) > 0)) break;
    const double warmer = std::clamp(aim_c - tank.temperature_c, -change_most_temperature_c, change_most_temperature_c);
    const Now after = after_change(tank, choice.fresh, choice.fraction, tank.temperature_c + warmer);
    way.most_gh_dgh = std::max(way.most_gh_dgh, std::abs(after.gh_dgh - tank.gh_dgh));
    way.most_kh_dkh = std::max(way.most_kh_dkh, std::abs(after.kh_dkh - tank.kh_dkh));
    way.most_ph = std::max(way.most_ph, ph_step(tank, choice.fresh, choice.fraction));
    const int place = place_of(way.buckets, choice);
    ++way.buckets[static_cast<std::size_t>(place)].changes;
    way.steps.push_back({told(after), choice.fraction, place});
    tank = after;
  }
  return way;
}

}  // namespace shoalwright
