// SPDX-License-Identifier: MIT
#include "views/assessment_view.h"

#include <algorithm>

#include "app/retold.h"
#include "draw/geometry.h"
#include "draw/icons.h"
#include "draw/marks.h"
#include "platform/platform.h"
#include "views/pane.h"

namespace shoalwright {

namespace {

constexpr float banner_height = 40, foot_height = 36;

/// "If you drop 8 here", with the dash that stands for the plan as it is.
void draw_banner(Ui& ui, const Look& look, const Box& box) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_panel(pen, box, p.actSoft, 0, 0);
  float x = box.x + 16;
  const float middle = box.y + box.h / 2;
  if (look.held) {
    draw_plate(pen, look.held->number, {x + 8, middle});
    x += 24;
  }
  const std::string_view as_now = "as it is now";
  const float right = box.right() - 16 - text_width(pen, type::small, as_now);
  const ImVec2 dash[] = {{right - 24, middle}, {right - 6, middle}};
  draw_text(pen, semibold(type::body), {x, middle - 9}, p.ink,
            elided(pen, semibold(type::body), look.previewing, right - 34 - x));
  dashed_line(pen.dl, dash, dash_as_it_is(), p.ink, 1.6f);
  draw_text(pen, type::small, {right, middle - 8}, p.ink2, as_now);
  draw_rule(pen, box.x, box.bottom() - 1, box.right(), p.line);
  add_spot(ui, "assessment.previewing", box, look.previewing);
}

/// What lies out of sight and must not be missed: the first section with a Fix, else with a Strain.
struct Below {
  Section section = Section::company;
  std::string words;
};

const char* name_of(Section section) {
  switch (section) {
    case Section::water: return "Water";
    case Section::room: return "Room";
    case Section::load: return "Load";
    case Section::air: return "Air";
    case Section::company: return "Company";
  }
  return "";
}

std::optional<Below> below_of(const Pane& pane, float fold_y) {
  for (const Severity severity : {Severity::harm, Severity::strain}) {
    const auto first = std::find_if(pane.loud.begin(), pane.loud.end(),
                                    [&](const Pane::Loud& one) { return one.severity == severity && one.y + 40 > fold_y; });
    if (first == pane.loud.end()) continue;
    const auto count = std::count_if(pane.loud.begin(), pane.loud.end(), [&](const Pane::Loud& one) {
      return one.severity == severity && one.section == first->section;
    });
    const std::string many = std::to_string(count);
    return Below{first->section,
                 std::string(name_of(first->section)) + ": " +
                     (severity == Severity::harm ? many + " to fix" : many + (count == 1 ? " strain" : " strains"))};
  }
  return std::nullopt;
}

bool draw_below(Ui& ui, const Box& box, const Below& below) {
  const Item of = item(ui, "assessment.below", box, below.words + ". Shows it", {.ring = Ring::inside, .exact = true});
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_panel(pen, box, of.hovered ? mix(p.raised, p.callSoft, 0.6f) : p.raised, 0, 0);
  draw_rule(pen, box.x, box.y, box.right(), p.line);
  const float y = box.y + (box.h - 18) / 2;
  draw_text(pen, semibold(type::body), {box.x + 16, y}, p.call, below.words);
  draw_icon(pen, Icon::chevron, {box.right() - 32, box.y + box.h / 2 - 8}, 16, p.call);
  if (of.ring) draw_ring(ui, box, {.ring = Ring::inside});
  return of.pressed;
}

void draw_cautions(Pane& pane) {
  const Pen pen = pen_of(pane.ui);
  const Palette& p = *pane.ui.palette;
  draw_rule(pen, pane.x - 16, pane.y, pane.x + pane.w + 16, p.line);
  pane.y += 12;
  const float top = pane.y;
  draw_text(pen, semibold(type::small), pane.at(), p.ink2, "Take care");
  pane.y += 20;
  for (const std::string& caution : pane.now.assessment.cautions)
    pane.y += draw_wrapped(pen, type::small, pane.at(), pane.w, p.ink2, retold(pane.look.measures, caution)) + 6;
  add_spot(pane.ui, "cautions", {pane.x, top, pane.w, pane.y - top}, "Take care");
  pane.y += 8;
}

}  // namespace

void draw_assessment(Ui& ui, const Look& look, const Box& box, AssessmentState& mine, Actions& out) {
  draw_panel(pen_of(ui), box, ui.palette->panel, 0, 0);
  Box rest = box;
  // What is only pointed at is told over the column, so that the button stays under the pointer.
  const bool lasts = look.held || look.age != Age::grown;
  if (look.is_previewing() && lasts) draw_banner(ui, look, rest.cut_top(banner_height));
  const bool had_foot = mine.foot;
  const Box foot = had_foot ? rest.cut_bottom(foot_height) : Box{};

  Column column = begin_column(ui, "assessment", rest, ui.palette->panel, true);
  Pane pane{.ui = ui,
            .look = look,
            .shown = told_shown(look),
            .now = told_now(look),
            .mine = mine,
            .out = out,
            .x = column.content.x + 16,
            .y = column.content.y,
            .w = column.content.w - 32};
  if (platform::rest_is_here()) draw_mend(pane);
  draw_water_section(pane);
  draw_room_section(pane);
  draw_load_section(pane);
  draw_air_section(pane);
  draw_company_section(pane);
  draw_cautions(pane);
  const std::optional<Below> below = below_of(pane, box.bottom());
  end_column(ui, column, pane.y - column.content.y);

  if (look.is_previewing() && !lasts) {
    const Box over{box.x, box.y, box.w, banner_height};
    Column top = begin_column(ui, "assessment.told", over, ui.palette->actSoft);
    draw_banner(ui, look, over);
    end_column(ui, top, 0);
  }

  mine.foot = below.has_value();
  if (had_foot && below && draw_below(ui, foot, *below)) mine.scroll_to = id_of(below->section);
  draw_rule_down(pen_of(ui), box.x, box.y, box.bottom(), ui.palette->line);
}

}  // namespace shoalwright
