// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/buttons.h"
#include "draw/chips.h"
#include "draw/fields.h"
#include "draw/stepper.h"
#include "notebook/say.h"
#include "plan/assumed.h"
#include "plan/defaults.h"
#include "units/text.h"
#include "views/sheet_card.h"
#include "views/water_desk.h"
#include "water/weighing.h"

namespace shoalwright {

namespace {

/// How a salt is asked for and how its row names it.
struct SaltWords {
  std::string_view id, chip, name, kind;
};
constexpr SaltWords salt_words[] = {
    {"calcium-sulphate-dihydrate", "Gypsum", "Calcium sulphate", "gypsum, dihydrate"},
    {"magnesium-sulphate-heptahydrate", "Epsom salt", "Magnesium sulphate", "Epsom salt, heptahydrate"},
    {"sodium-bicarbonate", "Bicarbonate of soda", "Bicarbonate of soda", "sodium"},
    {"potassium-bicarbonate", "Potassium bicarbonate", "Potassium bicarbonate", ""},
    {"magnesium-chloride-hexahydrate", "Magnesium chloride", "Magnesium chloride", "hexahydrate"},
    {"calcium-chloride-dihydrate", "Calcium chloride, dihydrate", "Calcium chloride", "dihydrate"},
    {"calcium-carbonate", "Chalk", "Calcium carbonate", "chalk; dissolves slowly"},
    {"calcium-chloride", "Calcium chloride, anhydrous", "Calcium chloride", "anhydrous"},
};

SaltWords words_of(const Salt& salt) {
  for (const SaltWords& words : salt_words)
    if (words.id == salt.id) return words;
  return {salt.id, salt.name, salt.name, ""};
}

/// What a dose does: "GH +1.4", "GH +0.5, KH +0.5".
std::string effect_of(const Salt& salt, double mg_l, const Measures& measures) {
  const SaltBrings brings = salt_brings(salt, mg_l);
  std::string words;
  const auto say = [&](const char* name, bool can, double by, Hardness of) {
    if (can) words += (words.empty() ? "" : ", ") + std::string(name) + " +" + measures.hardness_figure(by, of);
  };
  say("GH", salt_mg_l_per_dgh(salt).has_value(), brings.gh_dgh, Hardness::gh);
  say("KH", salt_mg_l_per_dkh(salt).has_value(), brings.kh_dkh, Hardness::kh);
  return words;
}

double grams_of(const RecipeCard& card, const Salt& salt) {
  for (const SaltGrams& one : card.salts)
    if (one.salt == &salt) return one.weighed_g;
  return 0;
}

/// From here on all salts are the keeper's, and the share of RO water stands as it is.
void weigh_by_hand(WaterDesk& desk, const Salt& salt, double grams) {
  WaterChoices choices = desk.mine.choices;
  choices.ro_fraction = desk.card().recipe.ro_fraction;
  choices.grams.clear();
  for (const std::string& id : desk.look.plan.salts)
    if (const Salt* one = find_salt(id)) choices.grams.push_back({id, one == &salt ? grams : grams_of(desk.card(), *one)});
  choose(desk, choices);
}

void draw_salt_row(WaterDesk& desk, Stack& stack, const Salt& salt) {
  const Box line = stack.take(38);
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  const RecipeCard& card = desk.card();
  double grams = grams_of(card, salt);
  const double mg_l = card.for_l > 0 ? grams * 1000 / card.for_l : 0;
  const SaltWords words = words_of(salt);
  const std::string effect = effect_of(salt, mg_l, desk.look.measures),
                    second = words.kind.empty() ? effect : effect + "; " + std::string(words.kind);
  // As many decimals as the weight has, so that a finer one than a kitchen scale's is not bent.
  int decimals = grams < weigh_whole_from_g ? 1 : 0;
  while (decimals < 3 && std::abs(grams - number_from(number_text(grams, decimals)).value_or(grams)) > 1e-9) ++decimals;
  const NumberLook look{.unit = "g",
                        .decimals = decimals,
                        .most = 2000,
                        .step = decimals > 1 ? std::pow(10.0, -decimals) : weighing_step_g(grams),
                        .height = 28,
                        .value_width = 54,
                        .enabled = card.recipe.ro_fraction.has_value()};
  const float w = number_width(look);
  if (number_stepper(desk.ui, "water_sheet.grams/" + std::string(salt.id), {line.right() - w, line.y + 5}, grams,
                     std::string(words.name) + ", " + second, look))
    weigh_by_hand(desk, salt, grams);
  const float room = line.w - w - 10;
  draw_text(pen, type::body, {line.x, line.y + 2}, p.ink,
            elided(pen, type::body, text_width(pen, type::body, words.name) > room ? words.chip : words.name, room));
  draw_text(pen, type::axis, {line.x, line.y + 20}, p.ink2, elided(pen, type::axis, second, room));
  draw_rule(pen, line.x, line.bottom(), line.right(), p.line);
}

/// What water the weights give, beside the aim; by hand there is a way back.
void draw_outcome(WaterDesk& desk, Stack& stack) {
  const RecipeCard& card = desk.card();
  if (!card.weighed.gh_dgh || !card.weighed.kh_dkh || desk.look.plan.salts.empty()) return;
  const Measures& m = desk.look.measures;
  const auto both = [&](double gh, double kh) {
    return "GH " + m.hardness_figure(gh, Hardness::gh) + ", KH " + m.hardness_figure(kh, Hardness::kh);
  };
  std::string words = "So weighed: " + both(*card.weighed.gh_dgh, *card.weighed.kh_dkh);
  if (card.aim.gh_dgh.aim && card.aim.kh_dkh.aim) words += "; aim " + both(*card.aim.gh_dgh.aim, *card.aim.kh_dkh.aim);
  const float top = stack.y();
  part_note(desk, stack, words);
  add_spot(desk.ui, "water_sheet.outcome", {stack.box.x, top, stack.box.w, stack.y() - top}, words);
  if (!card.by_hand) return;
  if (button(desk.ui, "water_sheet.to_recipe", {stack.box.x, stack.y()}, "Back to the recipe",
             {.kind = ButtonKind::remedy, .small = true})
          .pressed) {
    WaterChoices choices = desk.mine.choices;
    choices.grams.clear();
    choices.ro_fraction.reset();
    choose(desk, choices);
  }
  stack.skip(34);
}

void draw_hand_salts(WaterDesk& desk, Stack& stack) {
  const Plan& plan = desk.look.plan;
  for (const std::string& id : plan.salts)
    if (const Salt* salt = find_salt(id)) draw_salt_row(desk, stack, *salt);
  stack.skip(6);
  draw_outcome(desk, stack);
  part_note(desk, stack, plan.salts.empty() ? "Salts at hand: none, so mixing is all there is" : "Salts at hand");
  Flow flow{.x = stack.box.x, .y = stack.y(), .width = stack.box.w};
  std::vector<const Salt*> salts;  // those that most keepers have first, then all others that are known
  for (const SaltWords& words : salt_words)
    if (const Salt* salt = find_salt(words.id)) salts.push_back(salt);
  for (const Salt& salt : known_salts())
    if (std::find(salts.begin(), salts.end(), &salt) == salts.end()) salts.push_back(&salt);
  for (const Salt* one : salts) {
    const Salt& salt = *one;
    const SaltWords words = words_of(salt);
    const bool on = has_salt(plan, salt.id);
    const ChipLook look{.tight = true};
    const Box at = flow.take(std::min(chip_width(desk.ui, words.chip, look), stack.box.w));
    if (!chip(desk.ui, "water_sheet.salt/" + std::string(salt.id), at.min(), words.chip, on, look)) continue;
    Plan next = plan;
    if (on)
      std::erase(next.salts, std::string(salt.id));
    else
      next.salts.emplace_back(salt.id);
    decide(next, "/salts");
    const std::string name(words.chip);
    wish(desk, std::move(next), on ? "No " + name + " at hand" : name + " at hand", "");
  }
  stack.skip(flow.height() + 8);
}

/// Calcium to magnesium, where the keeper has both.
void draw_ratio(WaterDesk& desk, Stack& stack) {
  const Plan& plan = desk.look.plan;
  bool calcium = false, magnesium = false;
  for (const std::string& id : plan.salts)
    if (const Salt* salt = find_salt(id)) {
      calcium |= salt->calcium > 0 && !salt->needs_co2;
      magnesium |= salt->magnesium > 0;
    }
  if (!(calcium && magnesium)) return;
  double ratio = plan.ca_mg_ratio.value_or(default_ca_mg_ratio);
  const NumberLook look{.unit = "to 1",
                        .decimals = ratio == std::round(ratio) ? 0 : 1,
                        .least = 0,
                        .most = 20,
                        .step = 1,
                        .height = 28,
                        .value_width = 60};
  const Box box = sheet_row(desk.ui, stack.take(34), "Calcium to magnesium", number_width(look));
  if (!number_stepper(desk.ui, "water_sheet.ratio", {box.right() - number_width(look), box.y}, ratio,
                      "Calcium to magnesium of what is added", look))
    return;
  Plan next = plan;
  next.ca_mg_ratio = ratio;
  decide(next, "/ca_mg_ratio");
  wish(desk, std::move(next), "Calcium to magnesium " + short_text(ratio, 1) + " to 1", "ca_mg_ratio");
}

}  // namespace

std::string short_name(const Salt& salt) {
  std::string name(words_of(salt).chip);
  // In the midst of a sentence; the name of a place keeps its capital.
  if (name.rfind("Epsom", 0) != 0 && !name.empty() && name[0] >= 'A' && name[0] <= 'Z')
    name[0] = static_cast<char>(name[0] - 'A' + 'a');
  return name;
}

void draw_salts(WaterDesk& desk, Stack& stack) {
  draw_hand_salts(desk, stack);
  draw_ratio(desk, stack);
}

}  // namespace shoalwright
