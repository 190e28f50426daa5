// SPDX-License-Identifier: MIT
#include "views/losses_view.h"

#include <string>

#include "draw/buttons.h"
#include "draw/menus.h"
#include "edit/losses.h"
#include "platform/platform.h"

namespace shoalwright {

void losses_menu(Ui& ui, const Look& look, const Kept& kept, Actions& out) {
  const int lost = open_losses(look.plan, look.catalog, kept.id);
  if (kept.have == 0 && lost == 0) return;
  const int step = menu_stepper(ui, "stock.lost", "Of them lost", std::to_string(lost), lost > 0, kept.have > 0);
  if (step == 0) return;
  out.push_back(EditPlan{.plan = with_loss(look.plan, look.catalog, kept.id, step, platform::today()),
                         .name = name_of_loss(look.plan, look.catalog, kept.id, step),
                         .join = "lost " + kept.id});
}

float draw_losses(Ui& ui, const Look& look, const Box& box, const Kept& kept, Actions& out) {
  const int lost = open_losses(look.plan, look.catalog, kept.id);
  if (lost == 0) return 0;
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  constexpr float indent = 28;
  const float x = box.x + indent, width = box.w - indent;
  const std::string left = std::to_string(kept.count) + " of " + std::to_string(kept.count + lost) + " left";
  float y = box.y;
  draw_text(pen, medium(type::small), {x, y}, p.ink, left);
  y += 17;
  y += draw_wrapped(pen, type::axis, {x, y}, width, p.ink2,
                    "Read the water and look at the others first; let three quiet weeks pass before new ones come.");
  y += 5;
  struct Choice {
    LossAnswer answer;
    const char* id;
    std::string words;
  };
  const Choice choices[] = {{LossAnswer::top_up, "/top_up", "Top up to " + std::to_string(kept.count + lost)},
                            {LossAnswer::run_out, "/run_out", "Let it run out"},
                            {LossAnswer::re_home, "/re_home", "Re-home " + std::to_string(kept.count)}};
  const std::string id = "stock.loss/" + kept.id;
  const ButtonLook look_of{.kind = ButtonKind::secondary, .small = true};
  Flow flow{.x = x, .y = y, .width = width};
  for (const Choice& way : choices) {
    const Box at = flow.take(button_width(ui, way.words, look_of));
    if (!button_in(ui, id + way.id, at, way.words, look_of).pressed) continue;
    const std::string name = name_of(way.answer, look.plan, look.catalog, kept.id);
    out.push_back(EditPlan{.plan = with_answer(look.plan, look.catalog, kept.id, way.answer), .name = name, .join = ""});
    out.push_back(Tell{name, "Undo"});
  }
  y += flow.height() + 8;
  add_spot(ui, id, {box.x, box.y, box.w, y - box.y}, left);
  return y - box.y;
}

}  // namespace shoalwright
