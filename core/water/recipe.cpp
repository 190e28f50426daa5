// SPDX-License-Identifier: MIT
#include "water/recipe.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "water/carbonate.h"
#include "water/held.h"

namespace shoalwright {

namespace {

/// Two mixes that differ by less are alike: far under anything that can be measured, over what rounding does.
constexpr double alike = 1e-11;

enum class Sort { calcium, magnesium, bicarbonate, lime };

std::optional<Sort> sort_of(const Salt& salt) {
  if (salt.needs_co2) return Sort::lime;
  if (salt.calcium > 0) return Sort::calcium;
  if (salt.magnesium > 0) return Sort::magnesium;
  if (salt.bicarbonate > 0) return Sort::bicarbonate;
  return std::nullopt;
}

double mg_l_per_degree(const Salt& salt) {
  const std::optional<double> for_gh = salt_mg_l_per_dgh(salt);
  return for_gh ? *for_gh : salt_mg_l_per_dkh(salt).value_or(0);
}

/// The lightest salt of each sort that the keeper has.
struct AtHand {
  const Salt* calcium = nullptr;
  const Salt* magnesium = nullptr;
  const Salt* bicarbonate = nullptr;
  const Salt* lime = nullptr;

  const Salt*& of(Sort sort) {
    switch (sort) {
      case Sort::calcium: return calcium;
      case Sort::magnesium: return magnesium;
      case Sort::bicarbonate: return bicarbonate;
      case Sort::lime: break;
    }
    return lime;
  }
};

AtHand at_hand(std::span<const std::string> ids) {
  AtHand have;
  for (const std::string& id : ids) {
    const Salt* salt = find_salt(id);
    const std::optional<Sort> sort = salt ? sort_of(*salt) : std::nullopt;
    if (!sort) continue;
    const Salt*& best = have.of(*sort);
    if (!best || mg_l_per_degree(*salt) < mg_l_per_degree(*best)) best = salt;
  }
  return have;
}

/// One quantity as the programme sees it.
struct Axis {
  bool counts = false;  ///< the tap's value is known and something is aimed at
  double tap = 0;
  Range target, limit;  ///< what is aimed at; beyond what it harms
  double width = 1;
  bool can_raise = false;  ///< by a salt that raises nothing else

  double raised_to(double bare) const { return can_raise ? std::max(bare, target.low) : bare; }
};

double distance(double value, const Range& range) { return std::max({range.low - value, value - range.high, 0.0}); }

/// A tap that lies inside already is left as it is.
Range with_in_hand(const Range& window, double tap) {
  const double in_hand = std::min(edge_in_hand_dh, (window.high - window.low) / 2);
  Range target{window.low > 0 ? window.low + in_hand : window.low, window.high - in_hand};
  if (is_within(tap, window)) target = {std::min(target.low, tap), std::max(target.high, tap)};
  return target;
}

Axis axis_of(const std::optional<double>& tap, const AxisAim& aim, double usual_width, bool can_raise) {
  Axis axis;
  if (!(tap && *tap >= 0) || !(aim.aim || aim.window)) return axis;
  axis.counts = true;
  axis.tap = *tap;
  axis.can_raise = can_raise;
  axis.target = aim.aim ? Range{*aim.aim, *aim.aim} : with_in_hand(*aim.window, *tap);
  axis.limit = axis.target;
  if (aim.window) {
    axis.limit = {std::min(aim.window->low, axis.target.low), std::max(aim.window->high, axis.target.high)};
    axis.width = aim.window->high - aim.window->low;
  }
  if (!(aim.window && axis.width > 0)) axis.width = usual_width;
  return axis;
}

/// A mix before the salts that raise one quantity alone: share of tap water, and degrees of both from lime.
struct Corner {
  double tap_share = 1, lime_dh = 0;
};

/// tap_share x `x` + lime_dh x `l` = `is`.
struct Line {
  double x = 0, l = 0, is = 0;
};

struct Programme {
  Axis gh, kh;
  bool lime = false;
  std::optional<double> fixed_share;
};

void add_lines(const Axis& axis, std::vector<Line>& lines) {
  if (!axis.counts) return;
  for (const double at : {axis.target.low, axis.target.high, axis.limit.low, axis.limit.high}) lines.push_back({axis.tap, 1, at});
}

/// Where the goals may have their best: all points at which two of their lines cross, and the ends.
std::vector<Corner> corners_of(const Programme& p) {
  std::vector<Line> lines{{0, 1, 0}};  // no lime
  if (p.fixed_share) {
    lines.push_back({1, 0, *p.fixed_share});
  } else {
    lines.push_back({1, 0, 0});
    lines.push_back({1, 0, 1});
  }
  add_lines(p.gh, lines);
  add_lines(p.kh, lines);
  std::vector<Corner> corners;
  for (std::size_t a = 0; a < lines.size(); ++a)
    for (std::size_t b = a + 1; b < lines.size(); ++b) {
      const Line &one = lines[a], &other = lines[b];
      const double determinant = one.x * other.l - other.x * one.l;
      if (!(std::abs(determinant) > alike)) continue;
      Corner corner{(one.is * other.l - other.is * one.l) / determinant, (one.x * other.is - other.x * one.is) / determinant};
      if (p.fixed_share) {
        if (!(std::abs(corner.tap_share - *p.fixed_share) <= alike)) continue;
        corner.tap_share = *p.fixed_share;
      }
      if (!(corner.tap_share >= -alike && corner.tap_share <= 1 + alike && corner.lime_dh >= -alike)) continue;
      if (!p.lime && !(corner.lime_dh <= alike)) continue;
      corner.tap_share = held_within(corner.tap_share, {0, 1});
      corner.lime_dh = p.lime ? std::max(corner.lime_dh, 0.0) : 0;
      corners.push_back(corner);
    }
  return corners;
}

double of_axis(const Axis& axis, const Corner& corner, Range Axis::*range) {
  if (!axis.counts) return 0;
  return distance(axis.raised_to(corner.tap_share * axis.tap + corner.lime_dh), axis.*range) / axis.width;
}

/// Keeps those corners that are best by one goal, smaller being better.
template <class Goal>
void keep_best(std::vector<Corner>& corners, Goal goal) {
  double best = goal(corners.front());
  for (const Corner& corner : corners) best = std::min(best, goal(corner));
  corners.erase(std::remove_if(corners.begin(), corners.end(), [&](const Corner& c) { return !(goal(c) <= best + alike); }),
                corners.end());
}

Corner solved(const Programme& p) {
  std::vector<Corner> corners = corners_of(p);  // never empty: no lime crosses both ends, or the fixed share
  keep_best(corners, [&](const Corner& c) { return of_axis(p.gh, c, &Axis::limit) + of_axis(p.kh, c, &Axis::limit); });
  keep_best(corners, [&](const Corner& c) { return of_axis(p.gh, c, &Axis::target) + of_axis(p.kh, c, &Axis::target); });
  keep_best(corners, [](const Corner& c) { return c.lime_dh; });
  keep_best(corners, [](const Corner& c) { return -c.tap_share; });
  return corners.front();
}

double still_to_add(const Axis& axis, const Corner& corner) {
  if (!axis.counts) return 0;
  const double bare = corner.tap_share * axis.tap + corner.lime_dh;
  return axis.raised_to(bare) - bare;
}

void add(Recipe& recipe, const Salt* salt, double degrees) {
  if (!salt || !(degrees > alike)) return;
  recipe.salts.push_back({salt, degrees * mg_l_per_degree(*salt)});
  recipe.slow = recipe.slow || salt->needs_co2;
}

/// GH from calcium and magnesium so that with the calcium of the lime they stand in the ratio, as near as can be.
void add_gh(Recipe& recipe, const AtHand& have, double gh_dgh, double lime_dh, double ratio) {
  double magnesium = have.magnesium ? gh_dgh : 0;
  if (have.calcium && have.magnesium) magnesium = std::min(gh_dgh, (gh_dgh + lime_dh) / (1 + ratio));
  add(recipe, have.calcium, gh_dgh - magnesium);
  add(recipe, have.magnesium, magnesium);
}

void sort_as_given(Recipe& recipe, std::span<const std::string> ids) {
  const auto place = [&](const SaltDose& dose) {
    return std::find_if(ids.begin(), ids.end(), [&](const std::string& id) { return id == dose.salt->id; }) - ids.begin();
  };
  std::sort(recipe.salts.begin(), recipe.salts.end(), [&](const SaltDose& a, const SaltDose& b) { return place(a) < place(b); });
}

double off(double value, const Range& range) {
  if (value < range.low) return value - range.low;
  return value > range.high ? value - range.high : 0;
}

/// Where nothing at all is known of the tap its values are what is missed, whatever is aimed at.
void tell_hardness(Recipe& recipe, WaterQuantity quantity, const std::optional<double>& reached, const AxisAim& aim) {
  if (!aim.aim && !aim.window && recipe.ro_fraction) return;
  if (!reached) {
    recipe.missed.push_back({quantity, std::nullopt});
    return;
  }
  const double by = off(*reached, aim.aim ? Range{*aim.aim, *aim.aim} : *aim.window);
  if (!(std::abs(by) <= alike)) recipe.missed.push_back({quantity, by});
}

/// pH is what KH and CO2 make of it: missed where no CO2 from outdoor air up to the most that is safe would give it.
void tell_ph(Recipe& recipe, const MixAim& aim) {
  if (!aim.ph.aim && !aim.ph.window) return;
  if (!recipe.reached.kh_dkh) {
    recipe.missed.push_back({WaterQuantity::ph, std::nullopt});
    return;
  }
  const CarbonateWater water{aim.temperature_c.value_or(usual_temperature_c), *recipe.reached.kh_dkh, recipe.reached.gh_dgh};
  const Range reach{ph_with_co2(water, aim.most_co2_mg_l), ph_in_air(water, co2_outdoors_atm)};
  const Range wished = aim.ph.aim ? Range{*aim.ph.aim, *aim.ph.aim} : *aim.ph.window;
  if (reach.low > wished.high)
    recipe.missed.push_back({WaterQuantity::ph, reach.low - wished.high});
  else if (reach.high < wished.low)
    recipe.missed.push_back({WaterQuantity::ph, reach.high - wished.low});
}

std::optional<double> ro_alone(const Axis& axis) {
  if (!axis.counts || !(axis.target.high <= axis.tap && axis.tap > 0)) return std::nullopt;
  return held_within(1 - axis.target.high / axis.tap, {0, 1});
}

/// What the recipe as it stands comes to, and what it misses.
void tell_outcome(Recipe& recipe, const SourceWater& tap, const MixAim& aim) {
  if (recipe.ro_fraction) {
    recipe.reached = mixed_water(tap, *recipe.ro_fraction, recipe.salts, aim.temperature_c.value_or(usual_temperature_c));
    recipe.swing = tap_swing(tap, *recipe.ro_fraction, recipe.salts, tap_swing_share);
  }
  tell_hardness(recipe, WaterQuantity::gh, recipe.reached.gh_dgh, aim.gh_dgh);
  tell_hardness(recipe, WaterQuantity::kh, recipe.reached.kh_dkh, aim.kh_dkh);
  tell_ph(recipe, aim);
}

Recipe recipe_of(const SourceWater& tap, const MixAim& aim, std::span<const std::string> ids, std::optional<double> ro_fraction) {
  Recipe recipe;
  const AtHand have = at_hand(ids);
  Programme p;
  p.gh = axis_of(tap.gh_dgh, aim.gh_dgh, usual_gh_window_dgh, have.calcium || have.magnesium);
  p.kh = axis_of(tap.kh_dkh, aim.kh_dkh, usual_kh_window_dkh, have.bicarbonate);
  p.lime = have.lime;
  if (ro_fraction) p.fixed_share = 1 - held_within(*ro_fraction, {0, 1});
  if (tap.gh_dgh || tap.kh_dkh) {
    const Corner corner = solved(p);
    recipe.ro_fraction = 1 - corner.tap_share;
    add_gh(recipe, have, still_to_add(p.gh, corner), corner.lime_dh, std::max(aim.ca_mg_ratio, 0.0));
    add(recipe, have.bicarbonate, still_to_add(p.kh, corner));
    add(recipe, have.lime, corner.lime_dh);
    sort_as_given(recipe, ids);
  }
  tell_outcome(recipe, tap, aim);
  recipe.ro_for_gh = ro_alone(p.gh);
  recipe.ro_for_kh = ro_alone(p.kh);
  return recipe;
}

}  // namespace

Recipe recipe_for(const SourceWater& tap, const MixAim& aim, std::span<const std::string> salts) {
  return recipe_of(tap, aim, salts, std::nullopt);
}

Recipe recipe_at(const SourceWater& tap, const MixAim& aim, std::span<const std::string> salts, double ro_fraction) {
  return recipe_of(tap, aim, salts, ro_fraction);
}

Recipe recipe_with(const SourceWater& tap, const MixAim& aim, std::span<const SaltDose> doses, double ro_fraction) {
  Recipe recipe;
  if (tap.gh_dgh || tap.kh_dkh) {
    recipe.ro_fraction = held_within(ro_fraction, {0, 1});
    for (const SaltDose& dose : doses) {
      if (dose.salt == nullptr || !(dose.mg_l > 0)) continue;
      recipe.salts.push_back(dose);
      recipe.slow = recipe.slow || dose.salt->needs_co2;
    }
  }
  tell_outcome(recipe, tap, aim);
  recipe.ro_for_gh = ro_alone(axis_of(tap.gh_dgh, aim.gh_dgh, usual_gh_window_dgh, false));
  recipe.ro_for_kh = ro_alone(axis_of(tap.kh_dkh, aim.kh_dkh, usual_kh_window_dkh, false));
  return recipe;
}

std::span<const std::string> usual_salts() {
  static const std::array<std::string, 3> three{"calcium-sulphate-dihydrate", "magnesium-sulphate-heptahydrate",
                                                "sodium-bicarbonate"};
  return three;
}

}  // namespace shoalwright
