// SPDX-License-Identifier: MIT
#include "views/top_view.h"

#include <algorithm>
#include <cmath>
#include <iterator>

#include "draw/buttons.h"
#include "draw/fields.h"
#include "draw/marks.h"
#include "draw/menus.h"
#include "draw/tooltips.h"
#include "edit/command.h"
#include "platform/platform.h"
#include "tank/glass.h"
#include "tank/volume.h"
#include "views/units_menu.h"

namespace shoalwright {

namespace {

std::string size_words(const Look& look) {
  const Tank outside = outside_of(look.shown.tank);
  Tank bare = outside;
  bare.glass_mm = 0;
  return look.measures.size(inside_length_cm(bare), inside_width_cm(bare), outside.height_cm) + ", " +
         look.measures.volume(look.shown_assessment.volume.net_l) + " net";
}

constexpr std::string_view tab_words[] = {"Tank", "Water"};
constexpr Sheet tab_sheets[] = {Sheet::none, Sheet::water};
constexpr std::string_view tab_ids[] = {"top.tab/tank", "top.tab/water"};

bool is_water(const Look& look) { return look.sheet == Sheet::water; }

/// The pages of a plan. A strip with no room for them has them in its menu.
void draw_tabs(Ui& ui, const Look& look, ImVec2 at, float height, Actions& out) {
  for (std::size_t i = 0; i < std::size(tab_sheets); ++i) {
    if (tab(ui, tab_ids[i], at, height, tab_words[i], is_water(look) == (tab_sheets[i] == Sheet::water)))
      out.push_back(ShowSheet{tab_sheets[i]});
    at.x += tab_width(ui, tab_words[i]) + 4;
  }
}

/// Width of the name's field within `room`.
float name_width(const Pen& pen, const Look& look, float room) {
  const float wanted = text_width(pen, semibold(type::lead), look.plan.name.empty() ? "Name this plan" : look.plan.name) + 24;
  return std::clamp(wanted, std::min(160.0f, room), room);
}

void draw_name(Ui& ui, const Look& look, const Box& box, Actions& out) {
  const Type t = semibold(type::lead);
  std::string name = look.plan.name;
  const Box field{box.x - 4, box.y, name_width(pen_of(ui), look, box.w), 24};
  const FieldAnswer answer = text_field(ui, "top.name", field, name, "Name of the plan",
                                        {.placeholder = "Name this plan", .bare = true, .type = t, .most_bytes = 120});
  if (!answer.done || name == look.plan.name) return;
  const Command rename = Rename{name};
  out.push_back(EditPlan{apply(look.plan, rename, look.catalog), name_of(rename, look.plan, look.catalog), join_of(rename)});
}

void draw_size(Ui& ui, const Look& look, const Box& box, Actions& out) {
  const Pen pen = pen_of(ui);
  const std::string words = elided(pen, type::small, size_words(look), box.w);
  const Box line{box.x, box.y, text_width(pen, type::small, words), 16};
  const ItemLook of_item{.exact_across = true};
  const Item of = item(ui, "top.size", line, "Tank " + words, of_item);
  const ImU32 ink = eased_colour(ui, "top.size", ui.palette->ink2, ui.palette->act, of.hovered);
  draw_text(pen, type::small, line.min(), ink, words);
  if (of.hovered) draw_rule(pen, line.x, line.bottom() - 1, line.right(), ink);
  if (of.ring) draw_ring(ui, line, of_item);
  tooltip(ui, line, of, "Choose the tank");
  if (of.pressed) out.push_back(ShowSheet{Sheet::tank});
}

void draw_units(Ui& ui, const Look& look, const Box& box, std::string_view words, TopState& mine, Actions& out) {
  if (button_in(ui, "top.units", box, words, {.kind = ButtonKind::quiet, .chevron = true, .tooltip = "Units"}).pressed) {
    open_menu(ui, "top.units/menu");
    mine.units_wanted = true;
  }
  if (mine.units_wanted && platform::have_rest()) draw_units_menu(ui, look, box, out);
}

void draw_theme(Ui& ui, const Look& look, ImVec2 at, Actions& out) {
  const bool dark = ui.palette == &palette(Theme::dark);
  if (!icon_button(ui, "top.theme", at, dark ? Icon::sun : Icon::moon, dark ? "Light" : "Dark").pressed) return;
  Preferences preferences = look.preferences;
  preferences.theme = dark ? ThemeChoice::light : ThemeChoice::dark;
  out.push_back(SetPreferences{preferences});
}

void draw_file(Ui& ui, const Look& look, const Box& box, bool words, Actions& out) {
  const ButtonLook button_look{
      .icon = words ? std::nullopt : std::optional(Icon::folder), .chevron = words, .tooltip = words ? "" : "File"};
  if (button_in(ui, "top.file", box, words ? "File" : "", button_look).pressed) open_menu(ui, "top.file/menu");
  if (!begin_menu(ui, "top.file/menu", box, 228, words ? 190.0f : 256.0f)) return;
  if (!words) {
    for (std::size_t i = 0; i < std::size(tab_sheets); ++i)
      if (menu_row(ui, tab_ids[i], tab_words[i], {.ticked = is_water(look) == (tab_sheets[i] == Sheet::water)}))
        out.push_back(ShowSheet{tab_sheets[i]});
    menu_line(ui);
  }
  if (menu_row(ui, "top.file/new", "New plan")) out.push_back(NewPlan{});
  if (menu_row(ui, "top.file/open", "Open a file…", {.key = "Ctrl O"})) out.push_back(OpenPlan{});
  if (menu_row(ui, "top.file/save", "Save as file", {.key = "Ctrl S"})) out.push_back(SavePlan{});
  menu_line(ui);
  if (menu_row(ui, "top.file/own", "A kind of your own…")) out.push_back(WriteSpecies{});
  menu_line(ui);
  if (menu_row(ui, "top.file/demo", "Open the demo")) out.push_back(OpenDemo{});
  end_menu(ui);
}

/// What undo or redo would do, behind its name.
std::string with_step(std::string_view what, const std::string& step) {
  return std::string(what) + (step.empty() ? "" : ": " + step);
}

}  // namespace

void draw_top(Ui& ui, const Look& look, const Box& box, TopState& mine, Actions& out) {
  const Pen pen = pen_of(ui);
  const Palette& p = *ui.palette;
  draw_panel(pen, box, p.panel, 0, 0);
  draw_rule(pen, box.x, box.bottom() - 1, box.right(), p.line);
  const bool roomy = box.w >= 720, tight = box.w < 480;
  const float edge = tight ? 8 : 16, gap = tight ? 2 : 4;
  draw_emblem(pen, {box.x + edge, box.y + 13});

  // Dealt out from the right, used from the left: the Tab key goes as the eye does.
  const std::string_view units =
      roomy ? (look.preferences.us_units ? "°F, in, gal" : "°C, cm, L") : (look.preferences.us_units ? "°F" : "°C");
  const ButtonLook share{.kind = ButtonKind::primary, .icon = Icon::share, .tooltip = roomy ? "" : "Share"};
  const ButtonLook file{.icon = roomy ? std::nullopt : std::optional(Icon::folder), .chevron = roomy};
  Row row{.box = {box.x + edge, box.y, box.w - 2 * edge, box.h - 1}, .gap = gap};
  const Box share_box = row.take_right(button_width(ui, roomy ? "Share" : "", share), 30);
  row.at_right += roomy ? 4 : 0;
  const Box file_box = row.take_right(button_width(ui, roomy ? "File" : "", file), 30);
  const Box theme_box = row.take_right(34, 30);
  const Box units_box =
      row.take_right(button_width(ui, units, {.kind = ButtonKind::quiet, .chevron = true}) - (tight ? 10 : 0), 30);
  const Box redo_box = row.take_right(34, 30);
  const Box undo_box = row.take_right(34, 30);

  float tabs = 0;
  for (const std::string_view words : tab_words) tabs += roomy ? tab_width(ui, words) + 4 : 0;
  const float left = box.x + edge + 26 + (tight ? 6 : 10), room = std::max(40.0f, undo_box.x - 8 - left - tabs);
  draw_name(ui, look, {left, box.y + 4, std::min(room, 420.0f), 24}, out);
  draw_size(ui, look, {left, box.y + 28, room, 16}, out);
  if (roomy) {
    const float words = std::max(name_width(pen, look, std::min(room, 420.0f)),
                                 std::min(room, text_width(pen, type::small, size_words(look))) + 12);
    draw_tabs(ui, look, {std::floor(left + std::min(words, room)), box.y}, box.h - 1, out);
  }

  const std::string undo = undo_name(look.history), redo = redo_name(look.history);
  if (icon_button(ui, "top.undo", undo_box.min(), Icon::undo, with_step("Undo", undo), "Ctrl Z", look.history.at > 0).pressed)
    out.push_back(Undo{});
  const bool can_redo = look.history.at + 1 < look.history.steps.size();
  if (icon_button(ui, "top.redo", redo_box.min(), Icon::redo, with_step("Redo", redo), "Ctrl Shift Z", can_redo).pressed)
    out.push_back(Redo{});
  draw_units(ui, look, units_box, units, mine, out);
  draw_theme(ui, look, theme_box.min(), out);
  draw_file(ui, look, file_box, roomy, out);
  if (button_in(ui, "top.share", share_box, roomy ? "Share" : "", share).pressed) out.push_back(ShareLink{});
}

}  // namespace shoalwright
