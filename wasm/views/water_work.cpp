// SPDX-License-Identifier: MIT
#include "views/water_work.h"

#include <algorithm>
#include <cmath>

#include "tank/volume.h"

namespace shoalwright {

namespace {

double to_tenths(double value) { return std::round(value * 10) / 10; }

MixAim aim_of(const WaterWork& work) {
  MixAim aim = planned_aim(work.plan, work.windows);
  switch (work.towards) {
    case Towards::own: break;
    case Towards::middle: aim = middle_aim(work.plan, work.windows); break;
    case Towards::least_ro: aim = least_ro_aim(work.plan, work.windows); break;
    case Towards::one_kind:
      for (const Kept& kept : work.stock)
        if (kept.species != nullptr && kept.id == work.choices.kind) aim = aim_for_kind(work.plan, work.windows, *kept.species);
      break;
  }
  if (work.choices.aim_at) {
    aim.gh_dgh.aim = work.choices.aim_at->gh_dgh;
    aim.kh_dkh.aim = work.choices.aim_at->kh_dkh;
  }
  return aim;
}

}  // namespace

bool has_salt(const Plan& plan, std::string_view id) {
  return std::find(plan.salts.begin(), plan.salts.end(), id) != plan.salts.end();
}

bool has_own_hardness(const Plan& plan) { return plan.water && (plan.water->gh_dgh || plan.water->kh_dkh); }

std::shared_ptr<const WaterWork> water_work(const Look& look, const WaterChoices& choices,
                                            const std::shared_ptr<const WaterWork>& before) {
  const bool same_plan = before != nullptr && before->of == look.plan;
  if (same_plan && before->choices == choices) return before;
  const auto work = std::make_shared<WaterWork>();
  work->of = work->plan = look.plan;
  work->choices = choices;
  if (choices.tap) {
    work->plan.source.gh_dgh = choices.tap->gh_dgh;
    work->plan.source.kh_dkh = choices.tap->kh_dkh;
  }
  work->stock = resolve_stock(work->of, look.catalog);
  work->windows = windows_of(work->plan, look.catalog);
  const bool known_kind = std::any_of(work->stock.begin(), work->stock.end(),
                                      [&](const Kept& kept) { return kept.species != nullptr && kept.id == choices.kind; });
  work->towards = choices.towards;
  if ((choices.towards == Towards::own && !has_own_hardness(look.plan)) || (choices.towards == Towards::one_kind && !known_kind))
    work->towards = Towards::middle;
  work->card = recipe_card(work->plan, aim_of(*work));
  work->usual_ro_fraction = work->card.recipe.ro_fraction;
  if (choices.ro_fraction) take_share(work->plan, *choices.ro_fraction, work->card);
  if (!choices.grams.empty() && work->card.recipe.ro_fraction) {
    std::vector<SaltGrams> by_hand;
    for (const HandGrams& one : choices.grams)
      if (const Salt* salt = find_salt(one.salt); salt != nullptr && has_salt(look.plan, one.salt))
        by_hand.push_back({salt, one.grams, one.grams});
    take_grams(work->plan, *work->card.recipe.ro_fraction, by_hand, work->card);
  }
  if (work->windows.gh_dgh.tolerated && work->windows.kh_dkh.tolerated) {
    const Recipe least = recipe_for(work->plan.source, least_ro_aim(work->plan, work->windows), work->plan.salts);
    const bool inside = std::none_of(least.missed.begin(), least.missed.end(),
                                     [](const Miss& miss) { return miss.quantity != WaterQuantity::ph; });
    if (inside) work->least_ro_fraction = least.ro_fraction;
  }
  work->net_l = volume_of(work->plan).net_l;
  // A drag of the tap would turn the whole catalogue over in every frame; the roads are those of the tap as it was.
  if (same_plan) {
    work->roads = before->roads;
  } else if (std::optional<Roads> found = roads(look.plan, look.catalog)) {
    work->roads = std::make_shared<const Roads>(std::move(*found));
  }
  return work;
}

std::optional<WaterAim> aim_of_bucket(const WaterWork& work) {
  const MixedWater& reached = work.card.weighed;
  if (!reached.gh_dgh && !reached.kh_dkh) return std::nullopt;
  WaterAim aim = work.of.water.value_or(WaterAim{});
  aim.gh_dgh = reached.gh_dgh ? std::optional(to_tenths(*reached.gh_dgh)) : std::nullopt;
  aim.kh_dkh = reached.kh_dkh ? std::optional(to_tenths(*reached.kh_dkh)) : std::nullopt;
  aim.ph = reached.ph_in_tank ? std::optional(to_tenths((reached.ph_in_tank->low + reached.ph_in_tank->high) / 2)) : std::nullopt;
  if (work.card.aim.temperature_c) aim.temperature_c = to_tenths(*work.card.aim.temperature_c);
  return aim;
}

std::size_t steps_to_do(const RecipeCard& card) {
  // The conditioner, the mix where it is known, each salt that is weighed, the warmth.
  const auto salts = static_cast<std::size_t>(
      std::count_if(card.salts.begin(), card.salts.end(), [](const SaltGrams& one) { return one.weighed_g > 0; }));
  const std::size_t steps = 1 + (card.ro_l ? 1 : 0) + salts + 1;
  return std::min(steps, card.says.size());
}

}  // namespace shoalwright
