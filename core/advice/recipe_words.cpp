// SPDX-License-Identifier: MIT
#include <cmath>

#include "advice/recipe_card.h"
#include "notebook/say.h"

namespace shoalwright {

namespace {

std::string litres(double l) { return amount(l, l < 100 ? 1 : 0, "L"); }
std::string grams(double g) { return amount(g, 3, "g"); }  // as many decimals as it was weighed to
std::string degrees(double dh) { return amount(dh, 1, "°dH"); }

std::string conditioner(const Plan& plan, double for_l) {
  const char* what = to_condition(plan.source.disinfectant);
  if (!what)
    return "The tap is said to hold no chlorine. If that is not certain, stir in a conditioner that treats chloramine, for all " +
           litres(for_l) + ".";
  return "Stir in a conditioner that treats " + std::string(what) + ", for all " + litres(for_l) +
         ", as its label says. Standing is not enough.";
}

std::string mix(const RecipeCard& card) {
  if (!(*card.ro_l > 0)) return "Take " + litres(card.for_l) + " of tap water.";
  if (!(*card.tap_l > 0)) return "Take " + litres(card.for_l) + " of RO water, no tap water.";
  return "Mix " + litres(*card.ro_l) + " RO and " + litres(*card.tap_l) + " tap.";
}

const char* name_of(WaterQuantity quantity) {
  switch (quantity) {
    case WaterQuantity::temperature: return "temperature";
    case WaterQuantity::ph: return "pH";
    case WaterQuantity::gh: return "GH";
    case WaterQuantity::kh: return "KH";
  }
  return "";
}

void say_two_targets(const Recipe& recipe, std::vector<std::string>& says) {
  const bool both = recipe.ro_for_gh && recipe.ro_for_kh;
  for (const Miss& miss : recipe.missed)
    if (both && miss.by && miss.quantity != WaterQuantity::ph) {
      says.push_back("Two targets, one knob: GH alone would take " + percent(*recipe.ro_for_gh) + " RO water, KH alone " +
                     percent(*recipe.ro_for_kh) + ".");
      return;
    }
}

void say_way(const RecipeCard& card, std::vector<std::string>& says) {
  const GettingThere& way = card.way;
  if (!way.changes) return;
  if (*way.changes == 0)
    says.push_back("The tank is there already.");
  else if (way.buckets.size() > 1)
    says.push_back("Go step by step: " + std::to_string(*way.changes) + " changes, the first with weaker buckets.");
  else
    says.push_back(std::to_string(*way.changes) + (*way.changes == 1 ? " change" : " changes") + " of up to " +
                   litres(card.for_l) + " bring the tank there.");
}

}  // namespace

std::string miss_says(const Miss& miss) {
  const std::string name = name_of(miss.quantity);
  if (!miss.by) {
    if (miss.quantity == WaterQuantity::ph) return "pH cannot be told: the tap's KH is not known.";
    return "The tap's " + name + " is not known. Test it first.";
  }
  const bool ph = miss.quantity == WaterQuantity::ph;
  return name + (ph ? " stays " : " comes out ") + (ph ? amount(std::abs(*miss.by), 1, "") : degrees(std::abs(*miss.by))) +
         (*miss.by > 0 ? " above" : " below") + " the aim.";
}

const char* to_condition(Disinfectant disinfectant) {
  switch (disinfectant) {
    case Disinfectant::none: return nullptr;
    case Disinfectant::chlorine: return "chlorine";
    case Disinfectant::chloramine:
    case Disinfectant::unknown: break;
  }
  return "chloramine";
}

std::vector<std::string> recipe_says(const Plan& plan, const RecipeCard& card) {
  const Recipe& recipe = card.recipe;
  std::vector<std::string> says{conditioner(plan, card.for_l)};
  if (card.ro_l) says.push_back(mix(card));
  for (const SaltGrams& dose : card.salts)
    if (dose.weighed_g > 0)
      says.push_back("Dissolve " + grams(dose.weighed_g) + " " + std::string(dose.salt->name) +
                     (dose.salt->needs_co2 ? " some days ahead: it needs CO2 and goes slowly." : "."));
  says.push_back("Bring it to " + (card.aim.temperature_c ? amount(*card.aim.temperature_c, 1, "°C") : "the tank's warmth") +
                 ", then let it in slowly.");
  if (card.weighed.gh_dgh && card.weighed.kh_dkh)
    says.push_back("It has GH " + amount(*card.weighed.gh_dgh, 1, "") + " and KH " + degrees(*card.weighed.kh_dkh) + ".");
  if (recipe.reached.ph_in_tank)
    says.push_back("pH will follow: about " + span_of(recipe.reached.ph_in_tank->low, recipe.reached.ph_in_tank->high, 1, "") +
                   " at the usual CO2 of a tank. Do not add acid.");
  for (const Miss& miss : recipe.missed) says.push_back(miss_says(miss));
  say_two_targets(recipe, says);
  if (card.with_usual_salts) says.push_back("Gypsum, Epsom salt and bicarbonate of soda would bring it nearer.");
  if (recipe.swing.gh_dgh && recipe.swing.kh_dkh)
    says.push_back("If the tap swings by " + percent(tap_swing_share) + ", GH comes to " +
                   span_of(recipe.swing.gh_dgh->low, recipe.swing.gh_dgh->high, 1, "") + " and KH to " +
                   span_of(recipe.swing.kh_dkh->low, recipe.swing.kh_dkh->high, 1, "°dH") + ".");
  say_way(card, says);
  if (card.reject_l && *card.ro_l > 0)
    says.push_back("Making that RO water sends about " + span_of(card.reject_l->low, card.reject_l->high, 0, "L") +
                   " to the drain.");
  for (const std::string& id : card.salts_not_known) says.push_back("The salt \"" + id + "\" is not known and was left out.");
  return says;
}

}  // namespace shoalwright
