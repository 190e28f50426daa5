// SPDX-License-Identifier: MIT
#include "views/water_sheet_view.h"

#include <algorithm>
#include <cmath>

#include "app/say.h"
#include "draw/buttons.h"
#include "draw/panels.h"
#include "views/pane.h"
#include "views/sheet_card.h"
#include "views/water_desk.h"

namespace shoalwright {

namespace {

constexpr float tabs_from = 720;    // narrower, the strip at the top has no tabs
constexpr float pad = 16, bar = 8;  // bar: what the scroll bar takes of the right margin

void draw_sentence(WaterDesk& desk, Stack& stack) {
  const std::string& sentence = desk.mine.sentence;
  if (sentence.empty()) return;
  draw_sentence(desk.ui, "water_sheet.sentence", stack.take(sentence_height(pen_of(desk.ui), sentence, stack.box.w), 8),
                sentence);
}

/// The way out, over the top right corner of what comes first there.
void draw_close(WaterDesk& desk, ImVec2 top_right) {
  if (icon_button(desk.ui, "water_sheet.close", {top_right.x - 34, top_right.y}, Icon::close, "Back to the tank", "Esc").pressed)
    desk.out.push_back(ShowSheet{Sheet::none});
  desk.free_right = 34;
}

void draw_water_findings(WaterDesk& desk, Stack& stack) {
  const Told shown = told_shown(desk.look);
  const bool any = std::any_of(shown.assessment.findings.begin(), shown.assessment.findings.end(),
                               [](const Finding& one) { return section_of(one) == Section::water; });
  if (!any) return;
  part_heading(desk, stack, "What to know", "of the water as the plan has it", "as the plan has it");
  Pane pane{desk.ui, desk.look, shown, told_now(desk.look), desk.mine.findings, desk.out};
  pane.x = stack.box.x;
  pane.y = stack.y() - 4;  // the first card's rule is the heading's
  pane.w = stack.box.w;
  draw_findings(pane, Section::water);
  stack.at = pane.y - stack.box.y + 8;
}

void draw_right(WaterDesk& desk, Stack& stack) {
  draw_water_you_get(desk, stack);
  stack.skip(12);
  draw_roads(desk, stack);
  draw_way(desk, stack);
  draw_water_findings(desk, stack);
}

/// What lies in a column between its margins.
Stack inside(const Column& column) { return {{column.content.x + pad, column.content.y + 8, column.content.w - 2 * pad, 0}}; }

void draw_columns(WaterDesk& desk, Box box) {
  Ui& ui = desk.ui;
  const Palette& p = *ui.palette;
  const Box left = box.cut_left(std::floor(std::clamp(box.w * 0.236f, 268.0f, 380.0f)));
  const Box right = box.cut_right(std::floor(std::clamp(box.w * 0.48f, 350.0f, 620.0f)));
  Column column = begin_column(ui, "water_sheet.left", left, p.panel, true);
  Stack stack = inside(column);
  draw_sentence(desk, stack);
  draw_water_inputs(desk, stack);
  draw_water_care(desk, stack);
  end_column(ui, column, stack.at + 24);

  column = begin_column(ui, "water_sheet.middle", box, p.ground, true);
  stack = inside(column);
  draw_mix_chart(desk, stack);
  stack.skip(8);
  draw_bucket(desk, stack);
  end_column(ui, column, stack.at + 24);

  column = begin_column(ui, "water_sheet.right", right, p.panel, true);
  stack = inside(column);
  draw_close(desk, {stack.box.right() + bar, stack.y() - 2});
  draw_right(desk, stack);
  end_column(ui, column, stack.at + 24);
  const Pen pen = pen_of(ui);
  draw_rule_down(pen, left.right(), left.y, left.bottom(), p.line);
  draw_rule_down(pen, right.x, right.y, right.bottom(), p.line);
}

/// One below the other where there is no room side by side: what is decided first, its outcome, care last.
void draw_one_column(WaterDesk& desk, const Box& box) {
  Ui& ui = desk.ui;
  constexpr float most = 680;
  Column column = begin_column(ui, "water_sheet.all", box, ui.palette->panel, true);
  Stack stack = inside(column);
  const float spare = std::max(0.0f, stack.box.w - most);
  stack.box.x += std::floor(spare / 2);
  stack.box.w -= spare;
  draw_close(desk, {stack.box.right() + bar, stack.y() - 2});
  draw_sentence(desk, stack);
  draw_water_inputs(desk, stack);
  draw_mix_chart(desk, stack);
  stack.skip(8);
  draw_bucket(desk, stack);
  stack.skip(12);
  draw_right(desk, stack);
  stack.skip(8);
  draw_water_care(desk, stack);
  end_column(ui, column, stack.at + 24);
}

}  // namespace

void draw_water_sheet(Ui& ui, const Look& look, const Box& box, WaterSheetState& mine, Actions& out) {
  if (!mine.begun && !ui.ring_id_before.empty()) ui.focus_wanted = "water_sheet.close";
  mine.begun = true;
  mine.work = water_work(look, mine.choices, mine.work);
  const std::shared_ptr<const WaterWork> work = mine.work;
  WaterDesk desk{ui, look, mine, out, *work};
  add_spot(ui, "water_sheet", box, "Water and care");
  if (box.w >= 900)
    draw_columns(desk, box);
  else
    draw_one_column(desk, box);
  for (const Action& action : out)
    if (const ShowSheet* show = std::get_if<ShowSheet>(&action); show != nullptr && show->sheet != Sheet::water) {
      if (box.w >= tabs_from && !ui.ring_id_before.empty() && ui.focus_wanted.empty()) ui.focus_wanted = "top.tab/tank";
      mine = {};
      break;
    }
}

}  // namespace shoalwright
