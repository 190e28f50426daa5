// SPDX-License-Identifier: MIT
#include "advice/recipe_card.h"

#include <cmath>

#include "plan/defaults.h"
#include "stocking/stock.h"
#include "tank/volume.h"
#include "water/weighing.h"

namespace shoalwright {

namespace {

double missed_dh(const Recipe& recipe) {
  double sum = 0;
  for (const Miss& miss : recipe.missed)
    if (miss.quantity != WaterQuantity::ph) sum += std::abs(miss.by.value_or(0));
  return sum;
}

}  // namespace

Windows windows_of(const Plan& plan, const Catalog& catalog) {
  std::vector<const Species*> species;
  for (const Kept& kept : resolve_stock(plan, catalog)) species.push_back(kept.species);
  return windows_of(plan, species);
}

namespace {

/// Litres and grams of the card's recipe.
void measure_out(const SourceWater& source, RecipeCard& card) {
  if (card.recipe.ro_fraction) {
    card.ro_l = *card.recipe.ro_fraction * card.for_l;
    card.tap_l = card.for_l - *card.ro_l;
    card.ro_l_week = *card.ro_l * 7 / card.every_days;
    card.ro_l_year = *card.ro_l * 365 / card.every_days;
    card.reject_l = Range{ro_reject_l_per_l.low * *card.ro_l, ro_reject_l_per_l.high * *card.ro_l};
  }
  const std::vector<SaltDose>& doses = card.recipe.salts;
  const std::vector<double> weighed = weighed_g(doses, card.for_l);
  std::vector<SaltDose> of_scale = doses;
  card.salts.clear();
  for (std::size_t i = 0; i < doses.size(); ++i) {
    const double grams = doses[i].mg_l * card.for_l / 1000;
    card.salts.push_back({doses[i].salt, grams, card.by_hand ? grams : weighed[i]});
    if (card.for_l > 0) of_scale[i].mg_l = card.salts[i].weighed_g * 1000 / card.for_l;
  }
  card.weighed = card.recipe.reached;
  if (card.recipe.ro_fraction && !card.by_hand)
    card.weighed = mixed_water(source, *card.recipe.ro_fraction, of_scale, card.aim.temperature_c.value_or(usual_temperature_c));
}

void tell_way(const Plan& plan, RecipeCard& card) {
  card.way = getting_there(plan.source, tank_water_now(plan), card.aim, card.recipe, plan.salts, card.fraction);
  card.says = recipe_says(plan, card);
}

}  // namespace

RecipeCard recipe_card(const Plan& plan, const Catalog& catalog) {
  return recipe_card(plan, planned_aim(plan, windows_of(plan, catalog)));
}

RecipeCard recipe_card(const Plan& plan, const MixAim& aim) {
  RecipeCard card;
  card.aim = aim;
  card.recipe = recipe_for(plan.source, aim, plan.salts);
  const bool changed = plan.upkeep && plan.upkeep->change_fraction > 0;
  card.fraction = changed ? plan.upkeep->change_fraction : default_change_fraction;
  card.every_days = changed ? plan.upkeep->every_days : default_every_days;
  card.for_l = volume_of(plan).net_l * card.fraction;
  measure_out(plan.source, card);
  for (const std::string& id : plan.salts)
    if (!find_salt(id)) card.salts_not_known.push_back(id);
  if (const Recipe usual = recipe_for(plan.source, aim, usual_salts()); missed_dh(usual) < missed_dh(card.recipe) - 0.01)
    card.with_usual_salts = usual;
  tell_way(plan, card);
  return card;
}

void take_share(const Plan& plan, double ro_fraction, RecipeCard& card) {
  card.recipe = recipe_at(plan.source, card.aim, plan.salts, ro_fraction);
  measure_out(plan.source, card);
  tell_way(plan, card);
}

void take_grams(const Plan& plan, double ro_fraction, std::span<const SaltGrams> grams, RecipeCard& card) {
  std::vector<SaltDose> doses;
  if (card.for_l > 0)
    for (const SaltGrams& one : grams) doses.push_back({one.salt, one.grams * 1000 / card.for_l});
  card.by_hand = true;
  card.recipe = recipe_with(plan.source, card.aim, doses, ro_fraction);
  measure_out(plan.source, card);
  tell_way(plan, card);
}

}  // namespace shoalwright
