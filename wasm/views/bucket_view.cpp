// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "app/paper.h"
#include "app/retold.h"
#include "draw/buttons.h"
#include "draw/marks.h"
#include "notebook/say.h"
#include "plan/assumed.h"
#include "units/text.h"
#include "views/water_desk.h"

namespace shoalwright {

namespace {

constexpr float bucket_height = 196;

/// A pail seen from the side: x of its left wall at a share of its height from the rim down; the right one is its mirror.
struct Pail {
  Box box;
  float left(float y) const { return box.x + 0.075f * box.w * (y - box.y) / box.h; }
  float right(float y) const { return box.right() - 0.075f * box.w * (y - box.y) / box.h; }
};

void fill_between(const Pen& pen, const Pail& pail, float top, float bottom, ImU32 colour) {
  if (!(bottom > top)) return;
  pen.dl->AddQuadFilled({pail.left(top), top}, {pail.right(top), top}, {pail.right(bottom), bottom}, {pail.left(bottom), bottom},
                        colour);
}

void draw_pail(WaterDesk& desk, const Box& box) {
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  const RecipeCard& card = desk.card();
  const Pail pail{box};
  // Tap water below, as it is poured first; its share of the height is its share of the litres.
  const float rim = box.y + 16, share = static_cast<float>(card.for_l > 0 ? *card.tap_l / card.for_l : 0);
  const float line = box.bottom() - (box.bottom() - rim) * share;
  const ImU32 pale = mix(p.raised, p.waterTop, 0.45f), deep = p.waterMid;
  fill_between(pen, pail, rim, line, pale);
  fill_between(pen, pail, line, box.bottom(), deep);
  // Strokes say without a colour which part is tap water.
  const float low = box.bottom() - 5, high = line + 6;
  if (low - high > 6)
    for (float x = pail.left(low) + 14; x < box.x + box.w * 0.62f; x += 8)
      pen.dl->AddLine({x, high}, {x - std::min(10.0f, (low - high) * 0.2f), low}, with_alpha(p.ink, 0.3f), 1);
  if (line > rim + 1 && line < box.bottom() - 1) pen.dl->AddLine({pail.left(line), line}, {pail.right(line), line}, p.ink, 1.6f);
  const ImVec2 wall[] = {{pail.left(box.y), box.y},
                         {pail.left(box.bottom()), box.bottom()},
                         {pail.right(box.bottom()), box.bottom()},
                         {pail.right(box.y), box.y}};
  pen.dl->AddPolyline(wall, 4, p.edge, 0, 2.2f);
  const auto name = [&](float top, float bottom, const std::string& words) {
    if (bottom - top >= 22) draw_tip(pen, {box.x + box.w / 2, (top + bottom) / 2 - 10}, words, p.edge, p.ink, Align::centre);
  };
  name(rim, line, desk.litres(*card.ro_l) + " RO");
  name(line, box.bottom(), desk.litres(*card.tap_l) + " tap");
}

float draw_step(WaterDesk& desk, ImVec2 at, float width, int number, const std::string& words) {
  const Pen pen = pen_of(desk.ui);
  const Palette& p = *desk.ui.palette;
  draw_text(pen, semibold(type::body), at, p.ink2, std::to_string(number));
  return draw_wrapped(pen, type::body, {at.x + 18, at.y}, width - 18, p.ink, words) + 5;
}

/// What to do, in order; then what comes of it where it is not what was wanted.
float draw_steps(WaterDesk& desk, ImVec2 at, float width) {
  const RecipeCard& card = desk.card();
  const Measures& measures = desk.look.measures;
  const Pen pen = pen_of(desk.ui);
  float y = at.y;
  const std::size_t steps = steps_to_do(card);
  for (std::size_t i = 0; i < steps; ++i)
    y += draw_step(desk, {at.x, y}, width, static_cast<int>(i) + 1, retold(measures, card.says[i]));
  const auto say = [&](const std::string& words) {
    y += draw_wrapped(pen, type::small, {at.x + 18, y}, width - 18, desk.ui.palette->ink2, words) + 3;
  };
  const Recipe& recipe = card.recipe;
  y += 2;
  for (const Miss& miss : recipe.missed) say(retold(measures, miss_says(miss)));
  const bool missed = std::any_of(recipe.missed.begin(), recipe.missed.end(),
                                  [](const Miss& miss) { return miss.by && miss.quantity != WaterQuantity::ph; });
  if (missed && recipe.ro_for_gh && recipe.ro_for_kh)
    say("Two targets, one knob: GH alone would take " + percent(*recipe.ro_for_gh) + " RO, KH alone " +
        percent(*recipe.ro_for_kh) + ".");
  for (const std::string& id : card.salts_not_known) say("The salt \"" + id + "\" is not known and was left out.");
  return y - at.y;
}

void draw_buttons(WaterDesk& desk, Stack& stack) {
  Ui& ui = desk.ui;
  const RecipeCard& card = desk.card();
  Flow flow{.x = stack.box.x, .y = stack.y(), .width = stack.box.w, .row_height = 30, .gap = 8, .row_gap = 8};
  const auto press = [&](const char* id, std::string_view words, const ButtonLook& look) {
    return button(ui, id, flow.take(button_width(ui, words, look)).min(), words, look).pressed;
  };
  const std::optional<WaterAim> aim = aim_of_bucket(desk.work);
  const bool other = aim && !(desk.look.plan.water == aim);
  if (press("water_sheet.use", "Use this water", {.kind = ButtonKind::primary, .enabled = other})) {
    Plan plan = apply(desk.look.plan, SetAim{aim}, desk.look.catalog);
    const std::string name = "Use " + desk.litres(*card.ro_l) + " RO and " + desk.litres(*card.tap_l) + " tap";
    wish(desk, std::move(plan), name, "");
    desk.out.push_back(Tell{name, "Undo"});
  }
  if (card.ro_l && press("water_sheet.print", "Print the recipe", {.kind = ButtonKind::secondary}))
    desk.out.push_back(PrintPage{recipe_paper(desk.look, card, steps_to_do(card), first_day(desk))});
  if (press("water_sheet.back", "Back to tap", {.kind = ButtonKind::quiet, .enabled = desk.look.plan.water.has_value()})) {
    wish(desk, SetAim{std::nullopt});
    desk.out.push_back(Tell{"The tank runs on the tap", "Undo"});
  }
  if (card.with_usual_salts &&
      press("water_sheet.usual_salts", "Take gypsum, Epsom salt and soda", {.kind = ButtonKind::remedy})) {
    Plan plan = desk.look.plan;
    for (const std::string& id : usual_salts())
      if (std::find(plan.salts.begin(), plan.salts.end(), id) == plan.salts.end()) plan.salts.push_back(id);
    decide(plan, "/salts");
    wish(desk, std::move(plan), "Gypsum, Epsom salt and soda at hand", "");
  }
  stack.skip(flow.height() + 12);
}

}  // namespace

void draw_bucket(WaterDesk& desk, Stack& stack) {
  const RecipeCard& card = desk.card();
  const bool known = card.ro_l.has_value();
  part_heading(
      desk, stack, "The bucket",
      desk.litres(card.for_l) + " in all, every " + short_text(card.every_days, 1) + (card.every_days == 1 ? " day" : " days"));
  stack.skip(8);
  const float top = stack.y(), x = stack.box.x;
  // Beside the pail where the words have room, else under it.
  const bool beside = stack.box.w >= 350;
  const float pail_w = !known ? 0.0f : beside ? std::min(190.0f, stack.box.w * 0.36f) : std::min(190.0f, stack.box.w);
  if (known) {
    const Box pail{x + 2, top, pail_w - 4, bucket_height};
    draw_pail(desk, pail);
    add_spot(desk.ui, "water_sheet.bucket", pail,
             "The bucket: " + desk.litres(*card.ro_l) + " RO water on " + desk.litres(*card.tap_l) + " of tap water");
  }
  if (beside && known) {
    const float words = draw_steps(desk, {x + pail_w + 18, top}, stack.box.w - pail_w - 18);
    stack.skip(std::max(bucket_height, words) + 12);
  } else {
    if (known) stack.skip(bucket_height + 12);
    stack.skip(draw_steps(desk, {x, stack.y()}, stack.box.w) + 8);
  }
  draw_buttons(desk, stack);
  part_note(
      desk, stack,
      "Never add acid to lower pH. Weigh salts, dissolve them in a jug, add them slowly. Where your test kit says otherwise, "
      "the kit is right.");
}

}  // namespace shoalwright
