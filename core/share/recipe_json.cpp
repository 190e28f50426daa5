// SPDX-License-Identifier: MIT
#include "share/recipe_json.h"

#include "share/json_out.h"

namespace shoalwright {

namespace {

const char* key_of(WaterQuantity quantity) {
  switch (quantity) {
    case WaterQuantity::temperature: return "temperature_c";
    case WaterQuantity::ph: return "ph";
    case WaterQuantity::gh: return "gh_dgh";
    case WaterQuantity::kh: return "kh_dkh";
  }
  return "";
}

void range(JsonOut& out, std::string_view key, const std::optional<Range>& range) {
  out.key(key);
  if (range)
    out.begin_list().value(range->low).value(range->high).end_list();
  else
    out.null();
}

void salts(JsonOut& out, const Recipe& recipe, double for_l) {
  out.key("salts_g").begin_object();
  for (const SaltDose& dose : recipe.salts) out.member(dose.salt->id, dose.mg_l * for_l / 1000);
  out.end_object();
}

void reached(JsonOut& out, const MixedWater& water) {
  out.key("reached").begin_object().member("gh_dgh", water.gh_dgh).member("kh_dkh", water.kh_dkh);
  out.member("ph", water.ph_after_standing);
  range(out, "ph_in_tank", water.ph_in_tank);
  out.member("nitrate_mg_l", water.nitrate_mg_l).member("sodium_mg_l", water.sodium_mg_l);
  out.member("potassium_mg_l", water.potassium_mg_l).member("sulphate_mg_l", water.sulphate_mg_l);
  out.member("chloride_mg_l", water.chloride_mg_l).end_object();
}

void way(JsonOut& out, const RecipeCard& card) {
  const GettingThere& way = card.way;
  out.key("inside_after").begin_object().member("gh_dgh", way.gh_inside_after).member("kh_dkh", way.kh_inside_after);
  out.end_object().key("steps").begin_list();
  for (const ChangeStep& step : way.steps) {
    out.begin_object().member("gh_dgh", step.after.gh_dgh).member("kh_dkh", step.after.kh_dkh);
    out.member("ph", step.after.ph).member("temperature_c", step.after.temperature_c);
    out.member("fraction", step.fraction).member("bucket", step.bucket).end_object();
  }
  out.end_list().key("buckets").begin_list();
  for (const Bucket& bucket : way.buckets) {
    out.begin_object().member("strength", bucket.strength).member("changes", bucket.changes);
    out.member("gh_dgh", bucket.recipe.reached.gh_dgh).member("kh_dkh", bucket.recipe.reached.kh_dkh);
    out.member("ro_fraction", bucket.recipe.ro_fraction);
    salts(out, bucket.recipe, card.for_l);
    out.end_object();
  }
  out.end_list();
}

}  // namespace

std::string recipe_json(const RecipeCard& card) {
  const Recipe& recipe = card.recipe;
  JsonOut out;
  out.begin_object().member("ro_fraction", recipe.ro_fraction);
  salts(out, recipe, card.for_l);
  out.member("for_l", card.for_l);
  reached(out, recipe.reached);
  out.key("missed").begin_list();
  for (const Miss& miss : recipe.missed)
    out.begin_object()
        .member("quantity", key_of(miss.quantity))
        .member("by", miss.by)
        .member("says", miss_says(miss))
        .end_object();
  out.end_list().member("changes", card.way.changes);
  out.member("ro_l", card.ro_l).member("tap_l", card.tap_l).member("ro_l_week", card.ro_l_week);
  out.member("ro_l_year", card.ro_l_year);
  range(out, "reject_l", card.reject_l);
  out.key("ro_for").begin_object().member("gh_dgh", recipe.ro_for_gh).member("kh_dkh", recipe.ro_for_kh).end_object();
  out.key("swing").begin_object();
  range(out, "gh_dgh", recipe.swing.gh_dgh);
  range(out, "kh_dkh", recipe.swing.kh_dkh);
  out.end_object();
  way(out, card);
  out.member("says", card.says).end_object();
  return out.text();
}

}  // namespace shoalwright
